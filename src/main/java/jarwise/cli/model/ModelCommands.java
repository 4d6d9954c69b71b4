package jarwise.cli.model;

import jarwise.cli.option.CommandEntry;
import java.util.List;

/** The commands of this package. */
public final class ModelCommands {

    private ModelCommands() {}

    /** {@return them, in the order of the list of commands} */
    public static List<CommandEntry> entries() {
        return List.of(
                new CommandEntry(
                        "compare",
                        "where there are more, and how many times as many",
                        CompareCommand::new),
                new CommandEntry(
                        "regress",
                        "what the counts depend on, and how strongly",
                        RegressCommand::new),
                new CommandEntry(
                        "efficacy",
                        "what share a treatment took, with an honest interval",
                        EfficacyCommand::new));
    }
}
