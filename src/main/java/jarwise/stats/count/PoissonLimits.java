package jarwise.stats.count;

import jarwise.base.Require;
import jarwise.numeric.Quantiles;

/**
 * Between which means lies a Poisson count?
 *
 * @param lower lower limit of the mean; 0 for a count of 0
 * @param upper upper limit of the mean
 */
public record PoissonLimits(double lower, double upper) {

    private static final long MOST = 1_000_000_000_000L;

    /**
     * Exact limits of the mean of a Poisson count, each with the chance (1 − level) / 2 beyond it.
     *
     * <p><b>Assumes</b> no clumping: for insects in jars these limits are too narrow. For counts of
     * independent events, and to compare with.
     *
     * <p><b>Source.</b> Garwood (1936), <i>Biometrika</i> 28:437-442 (from memory). Reference
     * values: {@code reference/poisson-limits/*.csv}.
     *
     * @param count the count, 0 to 1,000,000,000,000
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return the limits
     * @throws jarwise.base.InvalidInput if a number is out of range
     */
    public static PoissonLimits of(long count, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        Require.atLeast("count", count, 0);
        Require.atLeast("1000000000000 − count", MOST - count, 0);
        double tail = 0.5 * (1 - confidenceLevel);
        return new PoissonLimits(
                count == 0 ? 0 : Quantiles.gamma((double) count, tail),
                count == 0 ? -Math.log(tail) : Quantiles.gammaAbove(count + 1.0, tail));
    }
}
