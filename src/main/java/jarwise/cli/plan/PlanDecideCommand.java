package jarwise.cli.plan;

import jarwise.base.InvalidInput;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.stats.sequential.CountedSamples;
import jarwise.stats.sequential.PresenceAbsence;
import jarwise.stats.sequential.SampleModel;
import jarwise.stats.sequential.SequentialPlan;
import jarwise.stats.sequential.WaldDesign;
import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise plan decide}: at which totals may I stop counting? */
@Command(name = "plan decide", description = "At which totals may I stop counting?")
public final class PlanDecideCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--low",
            required = true,
            paramLabel = "DENSITY",
            converter = Numbers.Positive.class,
            description = "density that is harmless, per sampling unit")
    double low;

    @Option(
            names = "--high",
            required = true,
            paramLabel = "DENSITY",
            converter = Numbers.Positive.class,
            description = "density that calls for control, per sampling unit")
    double high;

    @Option(
            names = "--k",
            paramLabel = "K",
            converter = Numbers.Dispersion.class,
            description = "clumping of one sample, or Inf for none")
    @Nullable Double k;

    @Option(names = "--poisson", description = "counts that do not clump")
    boolean poisson;

    @Option(
            names = "--binomial",
            description = "samples at or over a tally threshold; densities are their proportions")
    boolean binomial;

    @Option(
            names = "--alpha",
            required = true,
            paramLabel = "RISK",
            description = "risk of \"above\" at the low density, below 0.5")
    double alpha;

    @Option(
            names = "--beta",
            required = true,
            paramLabel = "RISK",
            description = "risk of \"below\" at the high density, below 0.5")
    double beta;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            converter = Numbers.Positive.class,
            description = "sampling units in one sample, 1 by default")
    double units = 1;

    @Option(
            names = "--min-samples",
            paramLabel = "SAMPLES",
            converter = Numbers.Whole.class,
            description = "samples before which nothing is decided, 1 by default")
    long minSamples = 1;

    @Option(
            names = "--max-samples",
            paramLabel = "SAMPLES",
            converter = Numbers.Whole.class,
            description = "samples after which it ends undecided, 60 by default")
    long maxSamples = 60;

    @Option(
            names = "--densities",
            split = ",",
            paramLabel = "DENSITY",
            description = "true densities at which to work the plan out; 41 by default")
    List<Double> densities = List.of();

    @Option(
            names = "--true-k",
            paramLabel = "K",
            converter = Numbers.Dispersion.class,
            description = "work the plan out for another k than the lines are drawn for")
    @Nullable Double trueK;

    /** Prints its answer to the stream it is given. */
    public PlanDecideCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        SampleModel model = model();
        WaldDesign design = new WaldDesign(model, low, high, alpha, beta, units);
        SequentialPlan plan = new SequentialPlan(design, (int) minSamples, (int) maxSamples);
        DecideAnswer.of(plan, truth(model), densities).answer().print(out, answer.json);
        return 0;
    }

    private SampleModel model() {
        long given = Stream.of(k != null, poisson, binomial).filter(said -> said).count();
        if (given != 1) {
            throw new InvalidInput(
                    ("%d of --k, --poisson and --binomial are given; exactly one is needed: how"
                                    + " the counts are spread. Maybe --k 0.8")
                            .formatted(given));
        }
        if (binomial) {
            return new PresenceAbsence();
        }
        return k == null ? CountedSamples.POISSON : new CountedSamples(k);
    }

    private SampleModel truth(SampleModel model) {
        if (trueK == null) {
            return model;
        }
        if (binomial) {
            throw new InvalidInput(
                    "--true-k is %s; with --binomial there is no k. Maybe leave --true-k out."
                            .formatted(trueK));
        }
        return new CountedSamples(trueK);
    }
}
