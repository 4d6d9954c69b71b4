package jarwise.stats.count;

import jarwise.base.InvalidInput;

/** The k that may be taken as known: any number above 0, or infinite for Poisson counts. */
public final class GivenK {

    /**
     * From here on the counts are Poisson: with means up to a billion the variance differs from the
     * mean by a hundred-billionth.
     */
    private static final double POISSON_FROM = 1e20;

    /** Under it every k gives the density the same distribution. */
    private static final double LEAST_THAT_MATTERS = 1e-100;

    private GivenK() {}

    /**
     * Whether a k may be taken as known.
     *
     * @param k any number
     * @return true above 0, and for infinity
     */
    public static boolean isAllowed(double k) {
        return k > 0;
    }

    /**
     * Returns {@code k} if it may be taken as known.
     *
     * @param k dispersion
     * @return {@code k}
     * @throws InvalidInput if it is not above 0
     */
    public static double require(double k) {
        if (isAllowed(k)) {
            return k;
        }
        throw new InvalidInput(
                ("k is %s; it must be above 0, or Inf for Poisson."
                                + " Maybe leave it out: then it is estimated.")
                        .formatted(k));
    }

    /**
     * Whether counts with this k are Poisson in all the digits there are.
     *
     * @param k dispersion, above 0; may be infinite
     * @return true from 1e20 on
     */
    public static boolean isPoisson(double k) {
        return k >= POISSON_FROM;
    }

    /**
     * A k with which the likelihood has the same shape along the density, and no number under way
     * is too large or too small.
     *
     * <p>For k towards 0 the likelihood is k to the power of the number of finds, times a function
     * of the density alone that is flat above the density k.
     *
     * @param k dispersion, above 0; may be infinite
     * @return {@code k}, 1e-100 where it is smaller, infinity where the counts are Poisson
     */
    public static double forShape(double k) {
        return isPoisson(k) ? Double.POSITIVE_INFINITY : Math.max(k, LEAST_THAT_MATTERS);
    }
}
