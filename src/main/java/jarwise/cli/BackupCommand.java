package jarwise.cli;

import jarwise.cli.option.DataOptions;
import jarwise.usecase.BackUp;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise backup}: a checked copy of all data, beside a running server. */
@Command(name = "backup", description = "Copies all data into one file and checks the copy.")
public final class BackupCommand implements Callable<Integer> {

    private final PrintStream out;
    private final InstantSource clock;

    @Mixin private final DataOptions data;

    @Option(names = "--out", paramLabel = "FILE", description = "the copy; must not be there yet")
    @Nullable Path target;

    /**
     * Makes the command.
     *
     * @param out where the answer goes
     * @param usualAddress where the data lie when no option says
     */
    public BackupCommand(PrintStream out, String usualAddress, InstantSource clock) {
        this.out = out;
        this.data = new DataOptions(usualAddress);
        this.clock = clock;
    }

    @Override
    public Integer call() {
        BackUp.Done done =
                new BackUp(clock).run(data.address, Path.of("."), Optional.ofNullable(target));
        out.printf("Copied %d events to %s; the copy was checked.%n", done.events(), done.file());
        return Commands.DONE;
    }
}
