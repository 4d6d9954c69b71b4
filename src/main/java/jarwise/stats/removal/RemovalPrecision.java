package jarwise.stats.removal;

import jarwise.base.Require;

/** How sure a total from repeat washes is: before washing, to plan, and after. */
public final class RemovalPrecision {

    private RemovalPrecision() {}

    /**
     * How far off is the total likely to be after so many washes?
     *
     * <pre>
     *   variance = N (1 − q^s) q^s / ((1 − q^s)² − (p s)² q^(s − 1)),  q = 1 − p
     * </pre>
     *
     * <p><b>Assumes</b> one share for all washes, and numbers large enough for the normal
     * distribution. Errs on the short side where the share falls from wash to wash; Zippin (1958)
     * advises some 1.2 times the standard error then.
     *
     * <p><b>Source.</b> Zippin (1956, 1958); Seber (2002), eq. 7.23. Reference values: {@code
     * reference/removal/zippin.csv}, {@code electrofishing-precision.csv}.
     *
     * @param total individuals on the material, N, above 0
     * @param removalProbability share that one wash brings off of those still there, p, in (0, 1]
     * @param washes how many washes, s, 2 or more
     * @return standard error of the total in individuals; 0 if each wash brings off everything
     * @throws jarwise.base.InvalidInput if a number is out of range
     */
    public static double standardError(double total, double removalProbability, int washes) {
        Require.positive("total", total);
        Require.share("removalProbability", removalProbability);
        Require.atLeast("washes", washes, 2);
        double p = removalProbability;
        double left = Math.pow(1 - p, washes);
        double denominator =
                (1 - left) * (1 - left) - p * p * washes * washes * Math.pow(1 - p, washes - 1.0);
        return Math.sqrt(total * (1 - left) * left / denominator);
    }

    /**
     * The standard error of the share, for the same washes and under the same assumptions.
     *
     * <pre>
     *   variance = (q p)² (1 − q^s) / (N (q (1 − q^s)² − (p s)² q^s))
     * </pre>
     *
     * @param total individuals on the material, N, above 0
     * @param removalProbability share that one wash brings off of those still there, p, in (0, 1]
     * @param washes how many washes, s, 2 or more
     * @return standard error of the share; 0 where the share is 1
     * @throws jarwise.base.InvalidInput if a number is out of range
     */
    public static double standardErrorOfShare(double total, double removalProbability, int washes) {
        Require.positive("total", total);
        Require.share("removalProbability", removalProbability);
        Require.atLeast("washes", washes, 2);
        double p = removalProbability;
        double q = 1 - p;
        if (q == 0) {
            return 0;
        }
        double left = Math.pow(q, washes);
        double denominator = total * (q * (1 - left) * (1 - left) - p * p * washes * washes * left);
        return q * p * Math.sqrt((1 - left) / denominator);
    }
}
