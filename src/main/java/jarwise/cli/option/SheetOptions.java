package jarwise.cli.option;

import jarwise.usecase.SheetRequest;
import jarwise.wire.sheet.SheetSelection;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The options of every command that reads a sheet of counts; mixed into each. */
public final class SheetOptions {

    @Parameters(paramLabel = "SHEET", description = "CSV (UTF-8) or .xlsx with a header row")
    public Path sheet = Path.of("");

    @Mixin private final ColumnOptions columns = new ColumnOptions();

    @Option(
            names = "--where",
            split = ",",
            paramLabel = "COLUMN=VALUE",
            description = "keep these rows only; a column given twice keeps either value")
    public List<String> where = List.of();

    @Option(names = "--per-sample", description = "add up the rows of one sample")
    public boolean perSample;

    @Option(
            names = "--fill-zeros",
            description = "a stage without a row in a sample that was read counts as zero")
    public boolean fillZeros;

    /** {@return the sheet to read, its rows grouped by these columns} */
    public SheetRequest request(List<String> by) {
        return new SheetRequest(
                sheet,
                Optional.ofNullable(columns.worksheet),
                columns.renames,
                columns.countColumns,
                Optional.ofNullable(columns.frequency),
                new SheetSelection(Conditions.of(where), by, perSample, fillZeros));
    }
}
