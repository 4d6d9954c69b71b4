package jarwise.cli.pattern;

import jarwise.cli.Commands;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.SheetOptions;
import jarwise.usecase.ReadSheet;
import jarwise.usecase.pattern.DescribeDispersion;
import jarwise.wire.sheet.GroupedRows;
import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise dispersion SHEET}: how clumped are they? */
@Command(
        name = "dispersion",
        description = "How clumped are they, and how does the variance go with the mean?")
public final class DispersionCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final SheetOptions sheet = new SheetOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--by",
            split = ",",
            paramLabel = "COLUMN",
            description = "indices for each value of these columns, and regressions over them")
    List<String> by = List.of();

    /** Makes the command. */
    public DispersionCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        GroupedRows rows = ReadSheet.run(sheet.request(by));
        DescribeDispersion described = DescribeDispersion.run(rows);
        DispersionAnswer.of(described, rows.notes()).answer().print(out, answer.json);
        return Commands.DONE;
    }
}
