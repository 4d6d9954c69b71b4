package jarwise.cli.option;

import picocli.CommandLine.Option;

/** Options of every command that gives an answer; mixed into each. */
public final class AnswerOptions {

    @Option(names = "--json", description = "print one JSON object and nothing else")
    public boolean json;
}
