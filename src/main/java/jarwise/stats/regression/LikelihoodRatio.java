package jarwise.stats.regression;

import org.hipparchus.special.Gamma;

/**
 * A likelihood-ratio test.
 *
 * @param statistic twice the difference of the log-likelihoods, 0 or more
 * @param degreesOfFreedom coefficients that the smaller model lacks
 * @param pValue chance of at least this statistic if the smaller model holds
 */
public record LikelihoodRatio(double statistic, int degreesOfFreedom, double pValue) {

    /**
     * Does the smaller model do as well?
     *
     * <p><b>Assumes</b> enough samples for the statistic to be near chi-squared; with few jars the
     * test finds differences a little too often. k is fitted in both models.
     *
     * <p><b>Source.</b> Wilks (1938), <i>Annals of Mathematical Statistics</i> 9:60-62 (from
     * memory). Reference values: {@code reference/regression}.
     *
     * @param statistic twice the difference of the log-likelihoods; a negative one, rounding, is 0
     * @param degreesOfFreedom coefficients more in the larger model, at least 1
     * @return the test
     */
    public static LikelihoodRatio of(double statistic, int degreesOfFreedom) {
        double positive = Math.max(0, statistic);
        double pValue =
                positive == 0 ? 1 : Gamma.regularizedGammaQ(0.5 * degreesOfFreedom, 0.5 * positive);
        return new LikelihoodRatio(positive, degreesOfFreedom, pValue);
    }

    /**
     * Does the smaller model do as well?
     *
     * @param larger fit of the larger model
     * @param smaller fit of a model within it
     * @return the test
     */
    public static LikelihoodRatio between(RegressionFit larger, RegressionFit smaller) {
        int fewer = larger.coefficients().size() - smaller.coefficients().size();
        return of(2 * (larger.logLikelihood() - smaller.logLikelihood()), fewer);
    }
}
