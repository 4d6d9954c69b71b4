package jarwise.cli.option;

import java.io.PrintStream;
import java.util.concurrent.Callable;
import java.util.function.Function;

/**
 * A command in the list of commands.
 *
 * @param name what is typed
 * @param summary one line for the list
 * @param made makes the command, which prints its answer to the stream it is given and returns the
 *     exit code; its class carries the option parser's annotations
 */
public record CommandEntry(
        String name, String summary, Function<PrintStream, Callable<Integer>> made) {}
