package jarwise.stats.dispersion;

import org.hipparchus.special.Gamma;

/**
 * A statistic with its upper tail in the chi-squared distribution.
 *
 * @param statistic 0 or more
 * @param degreesOfFreedom 1 or more
 * @param pValue chance of this statistic or a larger one, in [0, 1]
 */
public record ChiSquaredTest(double statistic, long degreesOfFreedom, double pValue) {

    static ChiSquaredTest of(double statistic, long degreesOfFreedom) {
        double upperTail = Gamma.regularizedGammaQ(0.5 * degreesOfFreedom, 0.5 * statistic);
        return new ChiSquaredTest(statistic, degreesOfFreedom, upperTail);
    }
}
