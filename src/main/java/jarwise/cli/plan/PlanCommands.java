package jarwise.cli.plan;

import jarwise.cli.option.CommandEntry;
import java.util.List;

/** The commands that plan a round. */
public final class PlanCommands {

    private PlanCommands() {}

    /** {@return each with its name, in the order of the list} */
    public static List<CommandEntry> entries() {
        return List.of(
                new CommandEntry(
                        "plan detect",
                        "how many samples find it, if it is there",
                        PlanDetectCommand::new),
                new CommandEntry(
                        "plan estimate",
                        "how many samples for a wanted precision",
                        PlanEstimateCommand::new),
                new CommandEntry(
                        "plan allocate",
                        "how many samples from which part of the crop",
                        PlanAllocateCommand::new),
                new CommandEntry(
                        "plan compare",
                        "what a trial of a treatment could tell, before spraying",
                        PlanCompareCommand::new),
                new CommandEntry(
                        "plan decide",
                        "at which totals counting may stop, and how often that is right",
                        PlanDecideCommand::new),
                new CommandEntry(
                        "plan precision-line",
                        "at which totals the mean is known well enough",
                        PlanPrecisionLineCommand::new));
    }
}
