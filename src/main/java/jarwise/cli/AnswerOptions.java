package jarwise.cli;

import picocli.CommandLine.Option;

/** Options of every command that gives an answer; mixed into each. */
final class AnswerOptions {

    @Option(names = "--json", description = "print one JSON object and nothing else")
    boolean json;
}
