package jarwise.cli;

import jarwise.base.InvalidInput;
import jarwise.usecase.SheetRequest;
import jarwise.wire.sheet.SheetSelection;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The options of every command that reads a sheet of counts; mixed into each. */
final class SheetOptions {

    @Parameters(paramLabel = "SHEET", description = "CSV (UTF-8) or .xlsx with a header row")
    Path sheet = Path.of("");

    @Option(
            names = "--worksheet",
            paramLabel = "NAME",
            description = "worksheet of a workbook; else the first")
    @Nullable String worksheet;

    @Option(
            names = "--map",
            split = ",",
            paramLabel = "KNOWN=COLUMN",
            description = "which column is meant by a known name, such as count=TICKS")
    Map<String, String> renames = new LinkedHashMap<>();

    @Option(
            names = "--count-columns",
            split = ",",
            paramLabel = "COLUMN",
            description = "wide sheets: columns that hold the counts of one stage each")
    List<String> countColumns = List.of();

    @Option(
            names = "--frequency",
            paramLabel = "COLUMN",
            description = "column that says for how many samples a row stands")
    @Nullable String frequency;

    @Option(
            names = "--where",
            split = ",",
            paramLabel = "COLUMN=VALUE",
            description = "keep these rows only; a column given twice keeps either value")
    List<String> where = List.of();

    @Option(names = "--per-sample", description = "add up the rows of one sample")
    boolean perSample;

    @Option(
            names = "--fill-zeros",
            description = "a stage without a row in a sample that was read counts as zero")
    boolean fillZeros;

    SheetRequest request(List<String> by) {
        return new SheetRequest(
                sheet,
                Optional.ofNullable(worksheet),
                renames,
                countColumns,
                Optional.ofNullable(frequency),
                new SheetSelection(conditions(), by, perSample, fillZeros));
    }

    /** Takes {@code stage=larva,adult,bench=3} as stage larva or adult, and bench 3. */
    private Map<String, Set<String>> conditions() {
        Map<String, Set<String>> conditions = new LinkedHashMap<>();
        String column = "";
        for (String part : where) {
            int equals = part.indexOf('=');
            if (equals == 0 || (equals < 0 && column.isEmpty())) {
                throw new InvalidInput(
                        ("--where is \"%s\"; COLUMN=VALUE is allowed."
                                        + " Maybe: --where stage=larva")
                                .formatted(part));
            }
            column = equals < 0 ? column : part.substring(0, equals).strip();
            String value = part.substring(equals + 1).strip();
            conditions.computeIfAbsent(column, c -> new LinkedHashSet<>()).add(value);
        }
        return conditions;
    }
}
