package jarwise.cli.pattern;

import jarwise.cli.Commands;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.cli.option.SheetOptions;
import jarwise.usecase.pattern.GrowthOptions;
import jarwise.usecase.pattern.JudgeGrowth;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise growth SHEET}: how fast does it grow? */
@Command(
        name = "growth",
        description = "How fast does it grow, and when will it be above a threshold?")
public final class GrowthCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final SheetOptions sheet = new SheetOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--rounds",
            paramLabel = "N",
            description = "how many of the last days of sampling to use; 4 by default")
    int rounds = 4;

    @Option(
            names = "--degree-days",
            paramLabel = "COLUMN",
            description = "column with degree-days, to be used for time instead of days")
    @Nullable String degreeDays;

    @Option(
            names = "--threshold",
            paramLabel = "DENSITY",
            converter = Numbers.Positive.class,
            description = "density to be watched for, per sampling unit")
    @Nullable Double threshold;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "level of the intervals, 0.95 by default")
    double confidence = 0.95;

    /** Makes the command. */
    public GrowthCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        GrowthOptions options =
                new GrowthOptions(
                        rounds,
                        Optional.ofNullable(degreeDays),
                        threshold == null ? OptionalDouble.empty() : OptionalDouble.of(threshold),
                        confidence);
        JudgeGrowth growth = JudgeGrowth.run(sheet.request(List.of()), options);
        new GrowthAnswer(growth, options).answer().print(out, answer.json);
        return Commands.DONE;
    }
}
