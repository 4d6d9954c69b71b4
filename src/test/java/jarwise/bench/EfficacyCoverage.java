package jarwise.bench;

import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.count.Observation;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.efficacy.EfficacyLimits;
import jarwise.stats.efficacy.EfficacyTrial;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How often do the limits of an efficacy cover the true one? Jars of 6 to 14 growing points; a
 * trial with an empty group counts by the boundary rule, a limit that is not there being endless.
 */
public final class EfficacyCoverage {

    private static final int CHUNK = 250;

    private EfficacyCoverage() {}

    /** Densities and jars of check before, check after, treated before, treated after; and k. */
    public record Design(List<Double> densities, double k, List<Integer> jars) {

        static Design of(double k, double[] densities, int... jars) {
            return new Design(
                    Arrays.stream(densities).boxed().toList(),
                    k,
                    IntStream.range(0, 4).mapToObj(g -> jars[g % jars.length]).toList());
        }

        double efficacy() {
            return 1 - densities.get(3) / densities.get(2) * (densities.get(0) / densities.get(1));
        }
    }

    /** Shares of trials: covered, true value under the lower limit, over the upper one, empty. */
    public record Row(double coverage, double under, double over, double withEmptyGroup) {}

    /** The designs of docs/methods.md. */
    public static List<Design> designs() {
        double[] some = {0.9, 1.1, 0.9, 0.18};
        double[] many = {2, 2.5, 2, 0.3};
        return List.of(
                Design.of(0.8, some, 6),
                Design.of(0.8, some, 12),
                Design.of(0.8, some, 30),
                Design.of(2, some, 12),
                Design.of(0.5, many, 12),
                Design.of(0.8, some, 6, 6, 12, 12),
                Design.of(0.8, some, 4, 6, 8, 16),
                Design.of(0.5, many, 8, 12, 6, 20));
    }

    public static Row run(EfficacyEstimator estimator, Design design, int trials, long seed) {
        int chunks = (trials + CHUNK - 1) / CHUNK;
        int[] counts =
                IntStream.range(0, chunks)
                        .parallel()
                        .mapToObj(c -> chunk(estimator, design, c, trials, seed))
                        .reduce(new int[3], EfficacyCoverage::sum);
        return new Row(
                1 - (double) (counts[0] + counts[1]) / trials,
                (double) counts[0] / trials,
                (double) counts[1] / trials,
                (double) counts[2] / trials);
    }

    private static int[] sum(int[] a, int[] b) {
        return IntStream.range(0, a.length).map(i -> a[i] + b[i]).toArray();
    }

    private static int[] chunk(
            EfficacyEstimator estimator, Design design, int chunk, int trials, long seed) {
        SeededRandom random = new SeededRandom(seed + 1_000_003L * chunk + design.hashCode());
        int[] counts = new int[3];
        for (int i = chunk * CHUNK; i < Math.min(trials, (chunk + 1) * CHUNK); i++) {
            List<List<Observation>> groups = new ArrayList<>();
            for (int g = 0; g < 4; g++) {
                groups.add(drawn(random, design, g));
            }
            EfficacyLimits limits =
                    estimator.limits(
                            EfficacyTrial.of(
                                    groups.get(2), groups.get(3), groups.get(0), groups.get(1)));
            double truth = design.efficacy();
            counts[0] += truth < limits.lower().orElse(Double.NEGATIVE_INFINITY) ? 1 : 0;
            counts[1] += truth > limits.upper().orElse(Double.POSITIVE_INFINITY) ? 1 : 0;
            counts[2] += groups.stream().anyMatch(EfficacyCoverage::isEmpty) ? 1 : 0;
        }
        return counts;
    }

    private static boolean isEmpty(List<Observation> jars) {
        return jars.stream().allMatch(jar -> jar.individuals() == 0);
    }

    private static List<Observation> drawn(SeededRandom random, Design design, int group) {
        List<Observation> jars = new ArrayList<>();
        for (int i = 0; i < design.jars().get(group); i++) {
            double units = 6 + random.below(9);
            double mean = units * design.densities().get(group);
            jars.add(Observation.of(random.count(new NegativeBinomial(mean, design.k())), units));
        }
        return jars;
    }

    /** Prints the table. Arguments: a word, trials per design (10,000), seed (1). */
    static void print(String[] arguments) {
        int trials = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 10_000;
        long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
        System.out.printf("%d trials a design, seed %d%n", trials, seed);
        for (Design design : designs()) {
            Row row = run(EfficacyEstimator.standard(), design, trials, seed);
            System.out.printf(
                    "%s: %.2f %% ± %.2f (under %.2f, over %.2f), empty group %.2f %%%n",
                    design,
                    100 * row.coverage(),
                    100 * Math.sqrt(row.coverage() * (1 - row.coverage()) / trials),
                    100 * row.under(),
                    100 * row.over(),
                    100 * row.withEmptyGroup());
        }
    }
}
