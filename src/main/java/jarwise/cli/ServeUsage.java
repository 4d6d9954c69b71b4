package jarwise.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/**
 * What {@code jarwise help serve} and {@code help demo} tell. The options themselves are read
 * without this parser, which would make the first page wait.
 */
@Command(
        description =
                "Shows the pages in the browser of this computer, at the address that it prints;"
                        + " Ctrl+C stops it.")
public final class ServeUsage implements Callable<Integer> {

    @Option(
            names = {"--data", "--database"},
            paramLabel = "DIR|ADDRESS",
            description = "data folder, or address of a PostgreSQL database")
    @Nullable String address;

    @Option(
            names = "--port",
            paramLabel = "N",
            description =
                    "0 to 65535, 0 for any free one; 7007 or the next free one if it is not said")
    @Nullable Integer port;

    @Override
    public Integer call() {
        return Commands.WRONG_INPUT;
    }
}
