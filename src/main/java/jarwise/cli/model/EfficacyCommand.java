package jarwise.cli.model;

import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.cli.option.SheetOptions;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.efficacy.EfficacyInterval;
import jarwise.usecase.ReadSheet;
import jarwise.usecase.model.ColumnValue;
import jarwise.usecase.model.EstimateEfficacy;
import jarwise.usecase.model.TrialQuestion;
import jarwise.wire.sheet.GroupedRows;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code jarwise efficacy SHEET}: what share did the treatment take, and how sure is that? */
@Command(
        name = "efficacy",
        description = "What share did the treatment take, and how sure is that?")
public final class EfficacyCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final SheetOptions sheet = new SheetOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--treated",
            required = true,
            paramLabel = "COLUMN=VALUE",
            converter = Pair.class,
            description = "rows of the treated benches")
    ColumnValue treated = new ColumnValue("", "");

    @Option(
            names = "--after",
            required = true,
            paramLabel = "COLUMN=VALUE",
            converter = Pair.class,
            description = "rows from after the treatment")
    ColumnValue after = new ColumnValue("", "");

    @Option(
            names = "--check",
            paramLabel = "COLUMN=VALUE",
            converter = Pair.class,
            description = "rows of the check; else the other value, if there are just two")
    @Nullable ColumnValue check;

    @Option(
            names = "--before",
            paramLabel = "COLUMN=VALUE",
            converter = Pair.class,
            description = "rows from before; else the other value, if there are just two")
    @Nullable ColumnValue before;

    @Option(
            names = "--by",
            split = ",",
            paramLabel = "COLUMN",
            description = "one efficacy for each value of these columns, say stage")
    List<String> by = List.of();

    @Option(
            names = "--block",
            paramLabel = "COLUMN",
            description = "benches with a level of their own; two or more in each arm")
    @Nullable String block;

    @Option(
            names = "--interval",
            paramLabel = "METHOD",
            description = "calibrated (default) or profile")
    EfficacyInterval interval = EfficacyInterval.CALIBRATED;

    @Option(
            names = "--target",
            paramLabel = "SHARE",
            converter = Numbers.Fraction.class,
            description = "efficacy wanted, 0.8 by default")
    double target = 0.8;

    /** Prints its answer to the stream it is given. */
    public EfficacyCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        TrialQuestion question =
                new TrialQuestion(
                        treated,
                        after,
                        Optional.ofNullable(check),
                        Optional.ofNullable(before),
                        by,
                        Optional.ofNullable(block));
        EfficacyEstimator estimator =
                EfficacyEstimator.standard().withInterval(interval).withTarget(target);
        GroupedRows rows = ReadSheet.run(sheet.request(question.columns()));
        EstimateEfficacy.Done done = new EstimateEfficacy(question, estimator).run(rows);
        EfficacyAnswer.of(estimator, done, rows.notes()).answer().print(out, answer.json);
        return 0;
    }

    /** Reads COLUMN=VALUE. */
    static final class Pair implements ITypeConverter<ColumnValue> {

        @Override
        public ColumnValue convert(String text) {
            int equals = text.indexOf('=');
            if (equals > 0 && equals < text.length() - 1) {
                return new ColumnValue(
                        text.substring(0, equals).strip(), text.substring(equals + 1).strip());
            }
            throw new TypeConversionException(
                    "it is \"%s\"; COLUMN=VALUE is allowed. Maybe time=after".formatted(text));
        }
    }
}
