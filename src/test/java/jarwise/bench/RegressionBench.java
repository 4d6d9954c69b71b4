package jarwise.bench;

import jarwise.stats.count.SimulatedCounts;
import jarwise.stats.regression.Coefficient;
import jarwise.stats.regression.ModelFrame;
import jarwise.stats.regression.NegativeBinomialRegression;
import jarwise.stats.regression.RegressionFit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Time of a regression: a million rows with and without a covariate, from arrays in memory, and the
 * profile limits of eight coefficients at a thousand rows.
 */
public final class RegressionBench {

    private static final int MANY = 1_000_000;
    private static final int COEFFICIENTS = 8;
    private static final double CUT = 3.841458820694124;
    private static final int ROUNDS = 7;

    private RegressionBench() {}

    /** Starts; takes about a minute. */
    public static void main(String[] arguments) {
        Rows covariate = rows(MANY, true);
        Rows factors = rows(MANY, false);
        Rows few = rows(1000, true);
        print("1,000,000 rows, 8 coefficients, one a covariate", 440, () -> fit(covariate));
        print("1,000,000 rows, 8 coefficients, factors only", 88, () -> fit(factors));
        RegressionFit fit = fit(few);
        print("profile limits of 8 coefficients, 1,000 rows", 10.5, () -> limits(fit));
    }

    @SuppressWarnings("ArrayRecordComponent") // made once and only read
    private record Rows(double[] design, double[] exposure, long[] counts) {}

    /** An intercept, seven levels of two factors; the last column a covariate if wanted. */
    private static Rows rows(int number, boolean covariate) {
        SimulatedCounts drawn = new SimulatedCounts(5);
        double[] design = new double[number * COEFFICIENTS];
        double[] exposure = new double[number];
        long[] counts = new long[number];
        for (int row = 0; row < number; row++) {
            int at = row * COEFFICIENTS;
            design[at] = 1;
            int first = drawn.below(5);
            int second = drawn.below(3);
            if (first > 0) {
                design[at + first] = 1;
            }
            if (second > 0) {
                design[at + 4 + second] = 1;
            }
            design[at + 7] = covariate ? drawn.uniform() : drawn.below(2);
            exposure[row] = 10;
            double log = -1 + 0.2 * first - 0.3 * second + 0.5 * design[at + 7];
            counts[row] = drawn.negativeBinomial(10 * Math.exp(log), 0.8);
        }
        return new Rows(design, exposure, counts);
    }

    private static RegressionFit fit(Rows rows) {
        List<Coefficient> coefficients =
                IntStream.range(0, COEFFICIENTS)
                        .mapToObj(j -> new Coefficient("x" + j, Optional.empty()))
                        .toList();
        return NegativeBinomialRegression.fit(
                ModelFrame.ofRows(coefficients, rows.design(), rows.exposure(), rows.counts()));
    }

    private static double limits(RegressionFit fit) {
        return IntStream.range(0, COEFFICIENTS)
                .parallel()
                .mapToObj(j -> fit.limits(fit.only(j), CUT))
                .mapToDouble(limits -> limits.lower().orElse(0))
                .sum();
    }

    /** The first rounds warm the machine up; the median of the others is told. */
    private static void print(String what, double target, Supplier<?> work) {
        double[] millis = new double[ROUNDS];
        for (int round = -3; round < ROUNDS; round++) {
            long start = System.nanoTime();
            Object answer = work.get();
            double took = (System.nanoTime() - start) / 1e6;
            if (round >= 0 && answer != null) {
                millis[round] = took;
            }
        }
        Arrays.sort(millis);
        System.out.printf("%-50s %9.2f ms, aim %6.1f ms%n", what, millis[ROUNDS / 2], target);
    }
}
