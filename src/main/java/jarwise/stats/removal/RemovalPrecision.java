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
        return Math.sqrt(total * (1 - left) * left / fallOff(p, washes));
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
        return q * p * Math.sqrt((1 - left) / (total * q * fallOff(p, washes)));
    }

    /**
     * (1 − q^s)² − (p s)² q^(s − 1). Both terms are nearly the same where little comes off; there
     * the sum over washes of cosh(j ln q) − 1, j counted from the middle wash, keeps the digits.
     */
    private static double fallOff(double p, int washes) {
        double q = 1 - p;
        if (p > 0.1) {
            double off = 1 - Math.pow(q, washes);
            return off * off - p * p * washes * washes * Math.pow(q, washes - 1.0);
        }
        double rate = Math.log1p(-p);
        double excess = 0;
        for (int i = 0; i < washes; i++) {
            double half = Math.sinh((i - (washes - 1) / 2.0) * rate / 2);
            excess += 2 * half * half;
        }
        return p * p * Math.exp((washes - 1) * rate) * excess * (excess + 2 * washes);
    }
}
