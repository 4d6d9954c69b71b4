package jarwise.cli.plan;

import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.plan.ComparisonOutlook;
import jarwise.plan.ComparisonPlan;
import jarwise.stats.efficacy.EfficacyEstimator;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import java.util.function.IntConsumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code jarwise plan compare}: before spraying, what could this trial tell? */
@Command(name = "plan compare", description = "Before spraying: what could this trial tell?")
public final class PlanCompareCommand implements Callable<Integer> {

    static final int TRIALS = 1000;

    private static final long QUIET_NANOSECONDS = 1_000_000_000L;

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--before",
            required = true,
            paramLabel = "DENSITY",
            converter = Numbers.Positive.class,
            description = "insects per sampling unit before the treatment")
    double before;

    @Option(
            names = "--efficacy",
            required = true,
            paramLabel = "SHARE",
            converter = Efficacy.class,
            description = "true efficacy, at most 1: what would the trial say of it?")
    double efficacy;

    @Option(
            names = "--k",
            required = true,
            paramLabel = "K",
            converter = Numbers.Dispersion.class,
            description = "clumping of one jar, or Inf for none")
    double k;

    @Option(
            names = "--per-arm",
            required = true,
            paramLabel = "JARS",
            converter = Numbers.Whole.class,
            description = "jars in each arm, before and again after; up to 1000")
    long perArm;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            converter = Numbers.Positive.class,
            description = "sampling units in one jar, 1 by default")
    double units = 1;

    @Option(
            names = "--check-change",
            paramLabel = "FACTOR",
            converter = Numbers.Positive.class,
            description = "density on the check after over before, 1 by default")
    double checkChange = 1;

    @Option(
            names = "--target",
            paramLabel = "SHARE",
            converter = Numbers.Fraction.class,
            description = "efficacy wanted, 0.8 by default")
    double target = 0.8;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "level of the interval, 0.95 by default")
    double confidence = 0.95;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            description = "of the simulation, 1 by default")
    long seed = 1;

    /** Prints its answer to the stream it is given. */
    public PlanCompareCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        int jars = (int) Math.min(perArm, Integer.MAX_VALUE);
        ComparisonPlan plan = new ComparisonPlan(before, efficacy, k, jars, units, checkChange);
        EfficacyEstimator estimator =
                EfficacyEstimator.standard().withTarget(target).withConfidenceLevel(confidence);
        ComparisonOutlook outlook = plan.outlook(estimator, TRIALS, seed, progress());
        new CompareAnswer(plan, estimator, outlook, seed).answer().print(out, answer.json);
        return 0;
    }

    /** Says how far it is once it has taken a second. */
    private static IntConsumer progress() {
        long start = System.nanoTime();
        return done -> {
            if (done % 250 == 0 && System.nanoTime() - start > QUIET_NANOSECONDS) {
                System.err.printf("%d of %d trials drawn%n", done, TRIALS);
            }
        };
    }

    /** A number at most 1, above −100. */
    static final class Efficacy implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            try {
                double value = Double.parseDouble(text);
                if (value > -100 && value <= 1) {
                    return value;
                }
            } catch (NumberFormatException e) {
                // said below
            }
            throw new TypeConversionException(
                    "it is \"%s\"; a number above -100 and at most 1 is allowed. Maybe 0.8"
                            .formatted(text));
        }
    }
}
