package jarwise.bench;

import static java.util.stream.Collectors.averagingDouble;

import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.Samples;
import jarwise.stats.count.CountData;
import jarwise.stats.count.DensityProfile;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * How often does the default interval cover the true mean, and how long is it beside the profile
 * interval that is cut at the square of Student's t?
 *
 * <p>A set without a find counts as covered if the true mean is at or under the one-sided bound.
 * Lengths are medians of ln(upper / lower) over sets where both intervals have both limits. The
 * same seed gives the same table on any number of cores.
 */
public final class CoverageStudy {

    private static final int CHUNK = 250;
    private static final double LEVEL = 0.95;

    /** One true mean per jar, one true k, one number of jars. */
    public record Design(double mean, double k, int jars) {}

    /** What one set of jars gave: default interval, profile interval. */
    record Outcome(double lower, double upper, double profileLower, double profileUpper) {

        boolean isZero() {
            return lower == 0;
        }

        double length() {
            return Math.log(upper / lower);
        }

        double profileLength() {
            return Math.log(profileUpper / profileLower);
        }

        boolean comparable() {
            return lower > 0
                    && profileLower > 0
                    && Double.isFinite(upper)
                    && Double.isFinite(profileUpper);
        }
    }

    /** One row of the table. */
    public record Row(
            Design design,
            double coverage,
            double profileCoverage,
            double length,
            double profileLength,
            double shareWithoutFind) {

        double monteCarloError(int sets) {
            return Math.sqrt(coverage * (1 - coverage) / sets);
        }
    }

    private final DensityEstimator estimator;

    public CoverageStudy(DensityEstimator estimator) {
        this.estimator = estimator.withConfidenceLevel(LEVEL);
    }

    /** The designs of docs/methods.md. */
    public static List<Design> designs() {
        List<Design> designs = new ArrayList<>();
        for (double mean : new double[] {0.3, 2, 10}) {
            for (double k : new double[] {0.3, 1, 3}) {
                for (int jars : new int[] {4, 8, 12, 20}) {
                    designs.add(new Design(mean, k, jars));
                }
            }
        }
        return designs;
    }

    public Row run(Design design, int sets, long seed) {
        Map<List<Long>, Outcome> known = new ConcurrentHashMap<>();
        int chunks = (sets + CHUNK - 1) / CHUNK;
        List<Outcome> outcomes =
                IntStream.range(0, chunks)
                        .parallel()
                        .mapToObj(c -> chunk(design, c, sets, seed, known))
                        .flatMap(List::stream)
                        .toList();
        List<Outcome> comparable = outcomes.stream().filter(Outcome::comparable).toList();
        return new Row(
                design,
                share(outcomes, o -> design.mean() >= o.lower() && design.mean() <= o.upper()),
                share(
                        outcomes,
                        o ->
                                design.mean() >= o.profileLower()
                                        && design.mean() <= o.profileUpper()),
                median(comparable.stream().map(Outcome::length).toList()),
                median(comparable.stream().map(Outcome::profileLength).toList()),
                share(outcomes, Outcome::isZero));
    }

    private List<Outcome> chunk(
            Design design, int chunk, int sets, long seed, Map<List<Long>, Outcome> known) {
        SeededRandom random = new SeededRandom(seed + 1_000_003L * chunk + design.hashCode());
        NegativeBinomial perJar = new NegativeBinomial(design.mean(), design.k());
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = chunk * CHUNK; i < Math.min(sets, (chunk + 1) * CHUNK); i++) {
            List<Observation> jars = Samples.drawn(random, design.jars(), 1, perJar);
            List<Long> counts = jars.stream().map(Observation::individuals).sorted().toList();
            outcomes.add(known.computeIfAbsent(counts, c -> outcome(jars)));
        }
        return outcomes;
    }

    private Outcome outcome(List<Observation> jars) {
        DensityEstimate estimate = estimator.estimate(jars);
        double upper = estimate.upper().orElse(Double.POSITIVE_INFINITY);
        if (estimate.individuals() == 0) {
            return new Outcome(0, upper, 0, upper);
        }
        double t =
                new TDistribution(jars.size() - 1).inverseCumulativeProbability(0.5 * (1 + LEVEL));
        DensityProfile profile = DensityProfile.of(CountData.of(jars));
        return new Outcome(
                estimate.lower(),
                upper,
                profile.lower(t * t),
                profile.upper(t * t).orElse(Double.POSITIVE_INFINITY));
    }

    private static double share(List<Outcome> outcomes, Predicate<Outcome> condition) {
        return (double) outcomes.stream().filter(condition).count() / outcomes.size();
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted(Comparator.naturalOrder()).toList();
        return sorted.isEmpty() ? Double.NaN : sorted.get(sorted.size() / 2);
    }

    /**
     * Prints the table. Arguments: sets per design (10,000), seed (1). With {@code efficacy} before
     * them, the table of {@link EfficacyCoverage}.
     */
    public static void main(String[] arguments) {
        if (arguments.length > 0 && arguments[0].equals("efficacy")) {
            EfficacyCoverage.print(arguments);
            return;
        }
        int sets = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        CoverageStudy study = new CoverageStudy(DensityEstimator.standard());
        System.out.printf(
                "%d sets a design, seed %d%nmean   k   jars  coverage  ± error  t² profile  length "
                        + " t² profile  no find%n",
                sets, seed);
        List<Row> rows = new ArrayList<>();
        for (Design design : designs()) {
            Row row = study.run(design, sets, seed);
            rows.add(row);
            System.out.printf(
                    "%4.1f  %.1f  %4d  %7.2f %%  %5.2f %%  %8.2f %%  %6.3f  %10.3f  %5.1f %%%n",
                    design.mean(),
                    design.k(),
                    design.jars(),
                    100 * row.coverage(),
                    100 * row.monteCarloError(sets),
                    100 * row.profileCoverage(),
                    row.length(),
                    row.profileLength(),
                    100 * row.shareWithoutFind());
        }
        System.out.printf(
                "lowest %.2f %%, mean %.2f %%; t² profile lowest %.2f %%, mean %.2f %%;"
                        + " shorter in %d of %d designs, mean length %.3f against %.3f%n",
                100 * rows.stream().mapToDouble(Row::coverage).min().orElse(0),
                100 * rows.stream().collect(averagingDouble(Row::coverage)),
                100 * rows.stream().mapToDouble(Row::profileCoverage).min().orElse(0),
                100 * rows.stream().collect(averagingDouble(Row::profileCoverage)),
                rows.stream().filter(r -> r.length() < r.profileLength()).count(),
                rows.size(),
                rows.stream().collect(averagingDouble(Row::length)),
                rows.stream().collect(averagingDouble(Row::profileLength)));
    }
}
