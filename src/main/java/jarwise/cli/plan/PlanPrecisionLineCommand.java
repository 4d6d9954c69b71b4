package jarwise.cli.plan;

import jarwise.base.InvalidInput;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.stats.sequential.GreenLine;
import jarwise.stats.sequential.KunoLine;
import jarwise.stats.sequential.StopLines;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise plan precision-line}: when is the mean known well enough to stop? */
@Command(name = "plan precision-line", description = "When is the mean known well enough to stop?")
public final class PlanPrecisionLineCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--precision",
            required = true,
            paramLabel = "SHARE",
            converter = Numbers.Positive.class,
            description = "wanted standard error as a share of the mean, below 1")
    double precision;

    @Option(
            names = "--taylor",
            paramLabel = "A,B",
            converter = TwoNumbers.Read.class,
            description = "a and b of Taylor's power law: Green's line")
    @Nullable TwoNumbers taylor;

    @Option(
            names = "--iwao",
            paramLabel = "ALPHA,BETA",
            converter = TwoNumbers.Read.class,
            description = "alpha and beta of Iwao's regression: Kuno's line")
    @Nullable TwoNumbers iwao;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            converter = Numbers.Positive.class,
            description = "sampling units in one sample, 1 by default")
    double units = 1;

    @Option(
            names = "--max-samples",
            paramLabel = "SAMPLES",
            converter = Numbers.Whole.class,
            description = "largest number of samples, 60 by default")
    long maxSamples = 60;

    /** Prints its answer to the stream it is given. */
    public PlanPrecisionLineCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        if (maxSamples > StopLines.MOST_SAMPLES) {
            throw new InvalidInput(
                    "--max-samples is %d; at most %d is allowed. Maybe 60."
                            .formatted(maxSamples, StopLines.MOST_SAMPLES));
        }
        line().answer(units, (int) maxSamples).print(out, answer.json);
        return 0;
    }

    private PrecisionLineAnswer line() {
        if (taylor != null && iwao == null) {
            return PrecisionLineAnswer.of(
                    new GreenLine(taylor.first(), taylor.second(), precision));
        }
        if (iwao != null && taylor == null) {
            return PrecisionLineAnswer.of(new KunoLine(iwao.first(), iwao.second(), precision));
        }
        throw new InvalidInput(
                ("%s of --taylor and --iwao are given; exactly one is needed: how the variance"
                                + " goes with the mean. Maybe --taylor 2.6,1.5")
                        .formatted(taylor == null ? "None" : "Both"));
    }
}
