package jarwise.cli.model;

import jarwise.base.InvalidInput;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.SheetOptions;
import jarwise.stats.comparison.LevelComparison;
import jarwise.usecase.ReadSheet;
import jarwise.usecase.model.ModelSheet;
import jarwise.wire.sheet.GroupedRows;
import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise compare SHEET}: where are there more, and how many times as many? */
@Command(name = "compare", description = "Where are there more, and how many times as many?")
final class CompareCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final SheetOptions sheet = new SheetOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--by",
            required = true,
            paramLabel = "COLUMN",
            description = "the column whose values are compared")
    String by = "";

    @Option(
            names = "--block",
            split = ",",
            paramLabel = "COLUMN",
            description = "columns whose effect is allowed for, such as bench")
    List<String> blocks = List.of();

    CompareCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        List<String> columns = Stream.concat(Stream.of(by), blocks.stream()).toList();
        if (columns.stream().distinct().count() < columns.size()) {
            throw new InvalidInput(
                    ("The columns are \"%s\"; each may be named once. Maybe --block was meant to be"
                                    + " another.")
                            .formatted(String.join(",", columns)));
        }
        GroupedRows rows = ReadSheet.run(sheet.request(columns));
        LevelComparison comparison =
                LevelComparison.of(ModelSheet.rows(rows), by, blocks, Cuts.OF_95_PERCENT);
        new CompareAnswer(comparison, by, rows.notes()).answer().print(out, answer.json);
        return 0;
    }
}
