package jarwise.stats.growth;

import jarwise.numeric.Quantiles;
import jarwise.stats.regression.ProfileLimits;
import jarwise.stats.regression.RegressionFit;
import java.util.OptionalDouble;
import org.hipparchus.special.Gamma;

/**
 * A rate, or the logarithm of a density, read from a trend.
 *
 * @param estimate most likely value; empty where the likelihood rises without end
 * @param standardError expected information, k taken as known; empty with the estimate
 * @param lower lower profile limit; empty where the samples set none
 * @param upper upper profile limit; empty where the samples set none
 * @param pValue of the likelihood-ratio test against 0, k fitted anew
 */
public record TrendFigure(
        OptionalDouble estimate,
        OptionalDouble standardError,
        OptionalDouble lower,
        OptionalDouble upper,
        double pValue) {

    static TrendFigure of(RegressionFit fit, double[] contrast, double confidenceLevel) {
        ProfileLimits limits = fit.limits(contrast, Quantiles.chiSquared(confidenceLevel));
        return new TrendFigure(
                fit.estimate(contrast),
                fit.standardError(contrast),
                limits.lower(),
                limits.upper(),
                pValue(fit, contrast, 0));
    }

    static double pValue(RegressionFit fit, double[] contrast, double value) {
        return Gamma.regularizedGammaQ(0.5, 0.5 * fit.deviance(contrast, value));
    }
}
