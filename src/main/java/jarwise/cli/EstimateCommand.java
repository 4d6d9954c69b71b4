package jarwise.cli;

import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.cli.option.SheetOptions;
import jarwise.decision.VerdictLimits;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import jarwise.stats.estimate.IntervalMethod;
import jarwise.usecase.EstimateSheet;
import jarwise.usecase.GroupEstimate;
import jarwise.usecase.ReadSheet;
import jarwise.wire.sheet.GroupedRows;
import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise estimate SHEET}: how many per sampling unit, and how sure is that? */
@Command(
        name = "estimate",
        description = "How many are there per sampling unit, and how sure is that?")
final class EstimateCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final SheetOptions sheet = new SheetOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--by",
            split = ",",
            paramLabel = "COLUMN",
            description = "one estimate for each value of these columns")
    List<String> by = List.of();

    @Option(
            names = "--interval",
            paramLabel = "METHOD",
            description = "integrated (default) or profile")
    IntervalMethod interval = IntervalMethod.INTEGRATED;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "level of the interval, 0.95 by default")
    double confidence = 0.95;

    @Option(
            names = "--k",
            paramLabel = "K",
            converter = Numbers.Dispersion.class,
            description = "dispersion of the samples if it is known, or Inf for Poisson")
    @Nullable Double k;

    @Option(
            names = "--efficiency",
            paramLabel = "SHARE",
            converter = Numbers.Share.class,
            description = "share that the wash brings out: 0.6, or found/known such as 18/24")
    DetectionShare efficiency = DetectionShare.known(1);

    @Option(
            names = "--sensitivity",
            paramLabel = "SHARE",
            converter = Numbers.Share.class,
            description = "share on the filter that the reader finds: 0.9, or found/known")
    DetectionShare sensitivity = DetectionShare.known(1);

    @Option(
            names = "--threshold",
            paramLabel = "DENSITY",
            converter = Numbers.Positive.class,
            description = "action threshold per sampling unit, for a verdict")
    @Nullable Double threshold;

    EstimateCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        DensityEstimator estimator = estimator();
        GroupedRows rows = ReadSheet.run(sheet.request(by));
        List<GroupEstimate> groups = new EstimateSheet(estimator, VerdictLimits.STANDARD).run(rows);
        EstimateAnswer answered = EstimateAnswer.of(estimator, groups, rows.notes());
        answered.answer().print(out, answer.json);
        return Commands.DONE;
    }

    private DensityEstimator estimator() {
        DensityEstimator estimator =
                DensityEstimator.standard()
                        .withMethod(interval)
                        .withConfidenceLevel(confidence)
                        .withDetection(new Detection(efficiency, sensitivity));
        if (k != null) {
            estimator = estimator.withGivenK(k);
        }
        return threshold == null ? estimator : estimator.withActionThreshold(threshold);
    }
}
