package jarwise.bench;

import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import jarwise.stats.regression.RegressionFit;
import jarwise.stats.sequential.CountedSamples;
import jarwise.stats.sequential.PresenceAbsence;
import jarwise.stats.sequential.SequentialOutcome;
import jarwise.stats.sequential.SequentialPlan;
import jarwise.stats.sequential.WaldDesign;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Single operations of the engine, warm, from arrays in memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class Operations {

    /** Half the 95 % quantile of chi-squared with one degree of freedom, doubled. */
    private static final double CUT = 3.841458820694124;

    private static final int[] COUNTS = {0, 3, 1, 0, 12, 0, 2, 0, 0, 5, 1, 0};
    private static final int[] UNITS = {8, 10, 12, 6, 14, 9, 10, 11, 7, 10, 13, 8};

    private final List<Observation> equal = jars(true);
    private final List<Observation> unequal = jars(false);
    private final List<Observation> empty = Collections.nCopies(12, Observation.of(0, 10));
    private final DensityEstimator plain = DensityEstimator.standard().withActionThreshold(0.3);
    private final DensityEstimator measured =
            plain.withDetection(
                    new Detection(
                            DetectionShare.measured(18, 24), DetectionShare.measured(46, 50)));
    private final SequentialPlan counted = plan(new CountedSamples(0.8), 1);
    private final SequentialPlan tens = plan(new CountedSamples(0.8), 10);
    private final SequentialPlan present =
            new SequentialPlan(
                    new WaldDesign(new PresenceAbsence(), 0.1, 0.25, 0.1, 0.1, 1), 1, 60);

    private static List<Observation> jars(boolean same) {
        return IntStream.range(0, COUNTS.length)
                .mapToObj(i -> Observation.of(COUNTS[i], same ? 10 : UNITS[i]))
                .toList();
    }

    private static SequentialPlan plan(CountedSamples model, double units) {
        return new SequentialPlan(new WaldDesign(model, 1, 2, 0.1, 0.1, units), 1, 60);
    }

    /** Rows of a regression, drawn once. */
    @State(Scope.Benchmark)
    public static class Covariate {
        private final MillionRows rows = new MillionRows(1_000_000, true);
    }

    /** The same with factors only. */
    @State(Scope.Benchmark)
    public static class Factors {
        private final MillionRows rows = new MillionRows(1_000_000, false);
    }

    /** A fit of 1,000 rows. */
    @State(Scope.Benchmark)
    public static class Thousand {
        private final RegressionFit fit = new MillionRows(1000, true).fit();
    }

    @Benchmark
    public DensityEstimate intervalOf12Jars() {
        return plain.estimate(equal);
    }

    @Benchmark
    public DensityEstimate intervalOf12UnequalJars() {
        return plain.estimate(unequal);
    }

    @Benchmark
    public DensityEstimate intervalWithMeasuredShares() {
        return measured.estimate(unequal);
    }

    @Benchmark
    public DensityEstimate boundOf12EmptyJars() {
        return plain.estimate(empty);
    }

    @Benchmark
    public double outcomesOfCounts() {
        return outcomes(counted);
    }

    @Benchmark
    public double outcomesOfTenUnitSamples() {
        return outcomes(tens);
    }

    @Benchmark
    public double outcomesOfPresence() {
        return outcomes(present);
    }

    private static double outcomes(SequentialPlan plan) {
        double sum = 0;
        for (double density : plan.usualDensities()) {
            SequentialOutcome outcome = plan.outcome(density);
            sum += outcome.averageSampleNumber() + outcome.probabilityBelow();
        }
        return sum;
    }

    @Benchmark
    public double profileLimits(Thousand thousand) {
        return IntStream.range(0, MillionRows.COEFFICIENTS)
                .parallel()
                .mapToObj(j -> thousand.fit.limits(thousand.fit.only(j), CUT))
                .mapToDouble(limits -> limits.lower().orElse(0))
                .sum();
    }

    @Benchmark
    public RegressionFit regressionWithCovariate(Covariate covariate) {
        return covariate.rows.fit();
    }

    @Benchmark
    public RegressionFit regressionWithFactors(Factors factors) {
        return factors.rows.fit();
    }
}
