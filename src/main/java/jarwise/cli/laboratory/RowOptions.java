package jarwise.cli.laboratory;

import jarwise.cli.option.Conditions;
import jarwise.usecase.laboratory.NumbersRequest;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which rows of a sheet of named columns to read; mixed into each command that has one. */
final class RowOptions {

    @Option(
            names = "--worksheet",
            paramLabel = "NAME",
            description = "worksheet of a workbook; else the first")
    @Nullable String worksheet;

    @Option(
            names = "--where",
            split = ",",
            paramLabel = "COLUMN=VALUE",
            description = "keep these rows only; a column given twice keeps either value")
    List<String> where = List.of();

    NumbersRequest request(Path sheet, List<String> by) {
        return new NumbersRequest(sheet, Optional.ofNullable(worksheet), by, Conditions.of(where));
    }
}
