package jarwise;

import jarwise.cli.Commands;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Builds every object once and connects them. */
public final class App {

    private App() {}

    /**
     * Starts the command named by the first argument.
     *
     * @param args command and options
     */
    public static void main(String[] args) {
        boolean trace = "1".equals(System.getenv("JARWISE_TRACE"));
        int code =
                Commands.computing(trace)
                        .run(args, stream(FileDescriptor.out), stream(FileDescriptor.err));
        if (code != Commands.DONE) {
            System.exit(code);
        }
    }

    /** UTF-8 whatever the platform thinks. */
    private static PrintStream stream(FileDescriptor to) {
        return new PrintStream(new FileOutputStream(to), false, StandardCharsets.UTF_8);
    }
}
