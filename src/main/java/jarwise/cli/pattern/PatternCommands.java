package jarwise.cli.pattern;

import jarwise.cli.option.CommandEntry;
import java.util.List;

/** The commands about patterns in a sheet of counts. */
public final class PatternCommands {

    private PatternCommands() {}

    /** {@return the commands, in the order of the list} */
    public static List<CommandEntry> entries() {
        return List.of(
                new CommandEntry(
                        "dispersion",
                        "how clumped the counts are, in the indices in use",
                        DispersionCommand::new),
                new CommandEntry(
                        "spread",
                        "where on the map of benches, and whether it spreads",
                        SpreadCommand::new),
                new CommandEntry(
                        "growth",
                        "how fast the density grows, and when it passes a threshold",
                        GrowthCommand::new),
                new CommandEntry(
                        "calibrate",
                        "what one method finds of what another one finds",
                        CalibrateCommand::new));
    }
}
