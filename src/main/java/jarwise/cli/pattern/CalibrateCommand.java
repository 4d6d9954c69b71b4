package jarwise.cli.pattern;

import jarwise.base.InvalidInput;
import jarwise.cli.Commands;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.cli.option.SheetOptions;
import jarwise.usecase.pattern.CalibrationOptions;
import jarwise.usecase.pattern.CompareMethods;
import java.io.PrintStream;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise calibrate SHEET}: what does one method find of what another one finds? */
@Command(
        name = "calibrate",
        description = "What does a cheaper method find of what another one finds?")
public final class CalibrateCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final SheetOptions sheet = new SheetOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--pair",
            split = ",",
            paramLabel = "METHOD",
            description = "the method to judge and the one to judge it by; tap,wash by default")
    List<String> pair = List.of("tap", "wash");

    @Option(
            names = "--by",
            split = ",",
            paramLabel = "COLUMN",
            description = "one ratio for each value of these columns, such as stage")
    List<String> by = List.of();

    @Option(
            names = "--samples",
            paramLabel = "N",
            converter = Numbers.Positive.class,
            description = "samples of the second method to find the equal effort for; 8 by default")
    double samples = 8;

    @Option(
            names = "--threshold",
            paramLabel = "DENSITY",
            converter = Numbers.Positive.class,
            description = "density by the second method at which it matters")
    @Nullable Double threshold;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "level of the intervals, 0.95 by default")
    double confidence = 0.95;

    /** Makes the command. */
    public CalibrateCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        if (pair.size() != 2) {
            throw new InvalidInput(
                    "--pair names %d methods; 2 are needed. Maybe: --pair tap,wash"
                            .formatted(pair.size()));
        }
        CalibrationOptions options =
                new CalibrationOptions(
                        pair.get(0),
                        pair.get(1),
                        samples,
                        threshold == null ? OptionalDouble.empty() : OptionalDouble.of(threshold),
                        confidence);
        CompareMethods compared = CompareMethods.run(sheet.request(by), options);
        new CalibrateAnswer(compared, options).answer().print(out, answer.json);
        return Commands.DONE;
    }
}
