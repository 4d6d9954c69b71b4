package jarwise.cli.plan;

import jarwise.base.InvalidInput;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.stats.detect.ClumpedDetection;
import jarwise.stats.detect.CorrelatedLot;
import jarwise.stats.detect.FiniteLot;
import jarwise.stats.detect.LargeLot;
import jarwise.stats.detect.LargeLot.Form;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import java.io.PrintStream;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise plan detect}: how many samples find it, if it is there? */
@Command(name = "plan detect", description = "How many samples find it, if it is there?")
public final class PlanDetectCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--density",
            paramLabel = "DENSITY",
            converter = Numbers.Positive.class,
            description = "insects per sampling unit that should not go unnoticed")
    @Nullable Double density;

    @Option(
            names = "--k",
            paramLabel = "K",
            converter = Numbers.Dispersion.class,
            description = "with --density: clumping of one sample, or Inf for none")
    @Nullable Double k;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            converter = Numbers.Positive.class,
            description = "with --density: sampling units in one sample, 1 by default")
    @Nullable Double units;

    @Option(
            names = "--lot",
            paramLabel = "UNITS",
            converter = Numbers.Whole.class,
            description = "units in the lot; leave it out for a lot much larger than the sample")
    @Nullable Long lot;

    @Option(
            names = "--infested",
            paramLabel = "NUMBER|SHARE",
            converter = Numbers.Positive.class,
            description = "infested units that should not go unnoticed, or their share below 1")
    @Nullable Double infested;

    @Option(
            names = "--method",
            paramLabel = "METHOD",
            description = "large lots: binomial (default) or poisson")
    @Nullable Form method;

    @Option(
            names = "--correlation",
            paramLabel = "RHO",
            converter = Numbers.Positive.class,
            description = "large lots whose infested units come together: beta-binomial")
    @Nullable Double correlation;

    @Option(
            names = "--efficiency",
            paramLabel = "SHARE",
            converter = Numbers.Share.class,
            description = "share that is found where it is: 0.6, or found/known such as 18/24")
    DetectionShare efficiency = DetectionShare.known(1);

    @Option(
            names = "--sensitivity",
            paramLabel = "SHARE",
            converter = Numbers.Share.class,
            description = "with --density: share on the filter that the reader finds")
    @Nullable DetectionShare sensitivity;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "wanted chance of a find, 0.95 by default")
    double confidence = 0.95;

    /** Prints its answer to the stream it is given. */
    public PlanDetectCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        detectAnswer().answer().print(out, answer.json);
        return 0;
    }

    private DetectAnswer detectAnswer() {
        if (density != null) {
            refuse("--lot", lot, "--infested");
            refuse("--infested", infested, "--lot");
            refuse("--method", method, "--infested");
            refuse("--correlation", correlation, "--infested");
            return DetectAnswer.of(clumped(density), confidence);
        }
        if (infested == null) {
            throw new InvalidInput(
                    "Neither --density nor --infested is given; one of them is needed. Maybe:"
                            + " --density 0.1 --k 0.5, or --infested 0.01");
        }
        refuse("--k", k, "--density");
        refuse("--units", units, "--density");
        refuse("--sensitivity", sensitivity, "--density");
        return lot == null ? large(infested) : finite(lot, infested);
    }

    private static void refuse(String option, @Nullable Object value, String goesWith) {
        if (value != null) {
            throw new InvalidInput(
                    ("%s is given; it goes with %s, which is not what is asked here."
                                    + " Maybe leave %s out.")
                            .formatted(option, goesWith, option));
        }
    }

    private ClumpedDetection clumped(double wanted) {
        if (k == null) {
            throw new InvalidInput(
                    "--k is not given; --density needs it: the clumping of one sample, or Inf for"
                            + " none. Maybe --k 0.5");
        }
        DetectionShare seen = sensitivity == null ? DetectionShare.known(1) : sensitivity;
        return new ClumpedDetection(
                wanted, units == null ? 1 : units, k, new Detection(efficiency, seen));
    }

    private DetectAnswer finite(long lotSize, double number) {
        refuse("--method", method, "a lot without --lot");
        refuse("--correlation", correlation, "a lot without --lot");
        long infestedUnits = number < 1 ? FiniteLot.infestedUnits(lotSize, number) : whole(number);
        return DetectAnswer.of(new FiniteLot(lotSize, infestedUnits, efficiency), confidence);
    }

    private static long whole(double number) {
        if (number == Math.rint(number) && number <= FiniteLot.LARGEST_LOT) {
            return (long) number;
        }
        throw new InvalidInput(
                ("--infested is %s; a whole number of units up to the lot, or a share below 1, is"
                                + " allowed. Maybe 1")
                        .formatted(number));
    }

    private DetectAnswer large(double proportion) {
        if (correlation != null) {
            refuse("--method", method, "--infested without --correlation");
            return DetectAnswer.of(
                    new CorrelatedLot(proportion, correlation, efficiency),
                    "beta-binomial",
                    confidence);
        }
        Form form = method == null ? Form.BINOMIAL : method;
        return DetectAnswer.of(
                new LargeLot(proportion, efficiency, form),
                form.name().toLowerCase(Locale.ROOT),
                confidence);
    }
}
