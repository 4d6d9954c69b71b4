package jarwise.stats.subsample;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.Arrays;

/**
 * How many per growing point, if jars hold different numbers of them?
 *
 * <pre>
 *   R = Σ y / Σ x,   variance = (1 − n/N) / (n x̄²) · Σ (y − R x)² / (n − 1)
 * </pre>
 *
 * <p>A figure that needs no distribution; the density with an honest interval for few jars is the
 * one of the estimator. The jackknife's variance stands beside it.
 *
 * <p><b>Source.</b> Cochran (1977), <i>Sampling Techniques</i>, ch. 6 (from memory). Reference
 * values: {@code reference/subsample/ratio.csv}.
 *
 * @param estimate individuals per unit
 * @param standardError its standard error
 * @param jackknifeVariance variance by leaving out one sample at a time, without correction for N
 */
public record RatioPerUnit(double estimate, double standardError, double jackknifeVariance) {

    /**
     * The ratio of counts to units.
     *
     * @param units units in each sample x, above 0, 2 or more samples
     * @param counts individuals in each sample y, 0 or more, as many as {@code units}
     * @param samplesInAll samples that could be taken N, no fewer than were taken; may be infinite
     * @return the ratio
     * @throws InvalidInput if a number is out of range or the arrays differ in length
     */
    public static RatioPerUnit of(double[] units, double[] counts, double samplesInAll) {
        int n = units.length;
        Require.atLeast("samples", n, 2);
        if (counts.length != n || !(samplesInAll >= n)) {
            throw new InvalidInput(
                    ("%d units, %d counts, %s samples in all; there must be as many counts as"
                                    + " units, and no more than samples in all.")
                            .formatted(n, counts.length, samplesInAll));
        }
        Arrays.stream(units).forEach(x -> Require.positive("units", x));
        Arrays.stream(counts).forEach(y -> Require.notNegative("count", y));
        double allUnits = Arrays.stream(units).sum();
        double allCounts = Arrays.stream(counts).sum();
        double ratio = allCounts / allUnits;
        double[] residuals = new double[n];
        double[] leftOut = new double[n];
        for (int i = 0; i < n; i++) {
            residuals[i] = counts[i] - ratio * units[i];
            leftOut[i] = (allCounts - counts[i]) / (allUnits - units[i]);
        }
        double meanUnits = allUnits / n;
        double variance =
                (1 - n / samplesInAll)
                        * TwoStageSample.variance(residuals, 0)
                        / (n * meanUnits * meanUnits);
        double mean = Arrays.stream(leftOut).average().orElseThrow();
        double jackknife = TwoStageSample.variance(leftOut, mean) * (n - 1.0) * (n - 1.0) / n;
        return new RatioPerUnit(ratio, Math.sqrt(variance), jackknife);
    }
}
