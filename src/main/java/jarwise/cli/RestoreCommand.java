package jarwise.cli;

import jarwise.cli.option.DataOptions;
import jarwise.usecase.Restore;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** {@code jarwise restore COPY}: a checked copy takes the place of the data. */
@Command(
        name = "restore",
        description = "Puts a copy in the place of the data, which are moved aside.")
public final class RestoreCommand implements Callable<Integer> {

    private final PrintStream out;
    private final InstantSource clock;

    @Parameters(paramLabel = "COPY", description = "a file that backup wrote")
    Path copy = Path.of("");

    @Mixin private final DataOptions data;

    /**
     * Makes the command.
     *
     * @param out where the answer goes
     * @param usualAddress where the data lie when no option says
     */
    public RestoreCommand(PrintStream out, String usualAddress, InstantSource clock) {
        this.out = out;
        this.data = new DataOptions(usualAddress);
        this.clock = clock;
    }

    @Override
    public Integer call() {
        Optional<Path> aside = new Restore(clock).run(copy, data.address);
        out.printf("%s is now the data at %s.%n", copy, data.address);
        aside.ifPresent(file -> out.printf("What was there before is kept as %s.%n", file));
        return Commands.DONE;
    }
}
