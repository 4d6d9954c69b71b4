package jarwise.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A command run in this process: what it printed, what it refused, how it ended. */
public record CommandRun(int code, String out, String err) {

    public static CommandRun of(String... args) {
        return of(Commands.computing(false), args);
    }

    public static CommandRun of(Commands commands, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = commands.run(args, printing(out), printing(err));
        return new CommandRun(
                code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    public JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PrintStream printing(ByteArrayOutputStream to) {
        return new PrintStream(to, false, StandardCharsets.UTF_8);
    }
}
