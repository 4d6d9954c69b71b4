/**
 * The command line: parse, call one use case, print. Each command is one small class and one line
 * in {@link jarwise.cli.Commands}; only the command that is asked for is built.
 */
@NullMarked
package jarwise.cli;

import org.jspecify.annotations.NullMarked;
