package jarwise.stats.count;

import jarwise.base.InvalidInput;

/**
 * The k that may be taken as known: from {@value #LEAST} to {@value #MOST}, or infinite for Poisson
 * counts.
 *
 * <p>Under the least k, not one jar in a thousand holds anything and the limits say nothing about
 * the density any more; over the most, no count tells k from infinity. In between limits are held
 * to plain sums in the tests.
 */
public final class GivenK {

    /** The smallest finite k. */
    public static final double LEAST = 1e-4;

    /** The largest finite k. */
    public static final double MOST = 1e6;

    private GivenK() {}

    /**
     * Whether a k may be taken as known.
     *
     * @param k any number
     * @return true from the least to the most, and for infinity
     */
    public static boolean isAllowed(double k) {
        return (k >= LEAST && k <= MOST) || k == Double.POSITIVE_INFINITY;
    }

    /**
     * Returns {@code k} if it may be taken as known.
     *
     * @param k dispersion
     * @return {@code k}
     * @throws InvalidInput if it is out of range or NaN
     */
    public static double require(double k) {
        if (isAllowed(k)) {
            return k;
        }
        throw new InvalidInput(
                ("k is %s; it must be 0.0001 to 1000000, or Inf for Poisson."
                                + " Maybe leave it out: then it is estimated.")
                        .formatted(k));
    }
}
