package jarwise.cli;

import picocli.CommandLine.Option;

/** Every command tells its options. */
final class HelpOption {

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "tell the options")
    boolean help;
}
