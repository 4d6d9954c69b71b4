package jarwise.cli.option;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What the columns of a sheet mean; mixed into each command that reads one. */
public final class ColumnOptions {

    @Option(
            names = "--worksheet",
            paramLabel = "NAME",
            description = "worksheet of a workbook; else the first")
    public @Nullable String worksheet;

    @Option(
            names = "--map",
            split = ",",
            paramLabel = "KNOWN=COLUMN",
            description = "which column is meant by a known name, such as count=TICKS")
    public Map<String, String> renames = new LinkedHashMap<>();

    @Option(
            names = "--count-columns",
            split = ",",
            paramLabel = "COLUMN",
            description = "wide sheets: columns that hold the counts of one stage each")
    public List<String> countColumns = List.of();

    @Option(
            names = "--frequency",
            paramLabel = "COLUMN",
            description = "column that says for how many samples a row stands")
    public @Nullable String frequency;
}
