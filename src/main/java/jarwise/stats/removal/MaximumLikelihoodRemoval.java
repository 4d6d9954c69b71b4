package jarwise.stats.removal;

import java.util.OptionalDouble;

/**
 * The total at which what came off is most likely, for any real total, with profile limits: the
 * totals whose log-likelihood, the share fitted anew at each, is within half a chi-squared quantile
 * of the largest.
 *
 * <p>There is a maximum only if the likelihood comes down to its limit for endless totals, which is
 * so if 2 X is above s (T − 1) − T. Where the limit itself is within the cut, the upper limit is
 * endless.
 *
 * <p><b>Source.</b> Moran (1951), <i>Biometrika</i> 38:307-311; Schnute (1983), <i>Canadian Journal
 * of Fisheries and Aquatic Sciences</i> 40:2153-2169. Reference values: {@code
 * reference/removal/maximum-likelihood.csv}, {@code brook-trout.csv}.
 */
final class MaximumLikelihoodRemoval {

    private MaximumLikelihoodRemoval() {}

    static RemovalEstimate estimate(RemovalCatches catches, double confidenceLevel) {
        TotalProfile profile = TotalProfile.of(ConstantShare.of(catches));
        if (profile.estimate().isEmpty()) {
            return RemovalEstimate.none(RemovalMethod.ML, catches, confidenceLevel);
        }
        double total = profile.estimate().getAsDouble();
        return new RemovalEstimate(
                RemovalMethod.ML,
                confidenceLevel,
                OptionalDouble.of(total),
                OptionalDouble.empty(),
                profile.lower(confidenceLevel),
                profile.upper(confidenceLevel),
                OptionalDouble.of(RemovalMethod.share(catches, total)),
                RemovalFit.of(catches));
    }
}
