package jarwise.stats.count;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.Quantiles;

/**
 * Share of samples with at least one find.
 *
 * @param estimate positive samples over all samples, in [0, 1]
 * @param lower lower limit, in [0, 1]; 0 if no sample is positive
 * @param upper upper limit, in [0, 1]; 1 if all are
 */
public record ProportionPositive(double estimate, double lower, double upper) {

    /**
     * In what share of such samples is there at least one?
     *
     * <p>Clopper and Pearson's exact limits, each with the chance (1 − level) / 2 beyond it: the
     * shares at which so many positive samples or more, and so many or fewer, would have that
     * chance.
     *
     * <p><b>Assumes</b> independent random samples of the same size; a share per jar says nothing
     * about jars with more growing points in them. Errs on the long side.
     *
     * <p><b>Source.</b> Clopper and Pearson (1934), <i>Biometrika</i> 26:404-413 (from memory).
     * Reference values: {@code reference/proportion-positive/clopper-pearson.csv}.
     *
     * @param positiveSamples samples with a find, 0 to {@code sampleSize}
     * @param sampleSize all samples, 1 or more
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return share with limits
     * @throws InvalidInput if a number is out of range
     */
    public static ProportionPositive of(
            int positiveSamples, int sampleSize, double confidenceLevel) {
        Require.atLeast("sampleSize", sampleSize, 1);
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        if (!(positiveSamples >= 0 && positiveSamples <= sampleSize)) {
            throw new InvalidInput(
                    "positiveSamples is %d; it must be 0 to %d."
                            .formatted(positiveSamples, sampleSize));
        }
        double tail = 0.5 * (1 - confidenceLevel);
        int missed = sampleSize - positiveSamples;
        return new ProportionPositive(
                (double) positiveSamples / sampleSize,
                positiveSamples == 0 ? 0 : Quantiles.beta(positiveSamples, missed + 1.0, tail),
                missed == 0 ? 1 : 1 - Quantiles.beta(missed, positiveSamples + 1.0, tail));
    }
}
