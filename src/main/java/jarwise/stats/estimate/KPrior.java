package jarwise.stats.estimate;

import jarwise.base.Require;

/**
 * What is known of k before the samples are counted: ln k is normal.
 *
 * @param medianK k that is as likely exceeded as not; above 0
 * @param logSpread standard deviation of ln k; above 0 and at most 5
 */
public record KPrior(double medianK, double logSpread) {

    private static final KPrior STANDARD = new KPrior(0.5, 2);

    /** Checks both numbers. */
    public KPrior {
        Require.positive("medianK", medianK);
        Require.between("logSpread", logSpread, 0, Math.nextUp(5.0));
    }

    /**
     * What to take where a site has no history: ln k ~ N(ln 0.5, 2²), which puts 95 % between k
     * 0.01 and 25. Our choice, no source; the coverage study says how it does.
     *
     * @return that prior
     */
    public static KPrior standard() {
        return STANDARD;
    }

    /** {@return natural logarithm of the density of ln k, without its constant} */
    double logWeight(double logK) {
        double z = (logK - Math.log(medianK)) / logSpread;
        return -0.5 * z * z;
    }
}
