package jarwise.cli.option;

import picocli.CommandLine.Option;

/** Where the data lie; mixed into each command that reads or writes them. */
public final class DataOptions {

    @Option(
            names = {"--data", "--database"},
            paramLabel = "DIR|ADDRESS",
            description = "data folder, or address of a PostgreSQL database")
    public String address;

    /** The usual address holds where no option says another. */
    public DataOptions(String usual) {
        this.address = usual;
    }
}
