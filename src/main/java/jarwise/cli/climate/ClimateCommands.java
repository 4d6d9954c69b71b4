package jarwise.cli.climate;

import jarwise.cli.option.CommandEntry;
import java.util.List;

/** The commands that read a temperature log. */
public final class ClimateCommands {

    private ClimateCommands() {}

    /** {@return each with its line for the list} */
    public static List<CommandEntry> entries() {
        return List.of(
                new CommandEntry(
                        "degree-days",
                        "heat for development in a temperature log",
                        DegreeDaysCommand::new),
                new CommandEntry(
                        "window",
                        "when to treat again, after the eggs have hatched",
                        WindowCommand::new));
    }
}
