package jarwise.cli;

import picocli.CommandLine.Option;

/** Where the data lie; mixed into each command that reads or writes them. */
final class DataOptions {

    @Option(
            names = {"--data", "--database"},
            paramLabel = "DIR|ADDRESS",
            description = "data folder, or address of a PostgreSQL database")
    String address;

    /** The usual address holds where no option says another. */
    DataOptions(String usual) {
        this.address = usual;
    }
}
