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
                        + " with --lan also to phones that were let in. Ctrl+C stops it.")
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

    @Option(
            names = "--lan",
            description =
                    "also over https in the local network, with a certificate made on the spot;"
                            + " the page of devices says how to let a phone in")
    boolean lan;

    @Option(
            names = "--lan-port",
            paramLabel = "N",
            description =
                    "port for https; the next one is for first contact over plain http; 7443 and"
                            + " 7444, or the next free ones, if it is not said")
    @Nullable Integer lanPort;

    @Option(
            names = "--certificate",
            paramLabel = "FILE",
            description = "a certificate of your own instead, PEM, the server's first; with --key")
    @Nullable String certificate;

    @Option(
            names = "--key",
            paramLabel = "FILE",
            description = "its private key, PEM, EC or RSA, without a password")
    @Nullable String key;

    @Override
    public Integer call() {
        return Commands.WRONG_INPUT;
    }
}
