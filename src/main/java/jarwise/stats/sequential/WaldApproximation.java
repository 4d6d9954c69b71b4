package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.numeric.Roots;

/**
 * Wald's approximations to the operating characteristic and the average sample number.
 *
 * <p>They take the cumulative count to end on a stop line and never beyond it, and know of no least
 * or largest number of samples. With s the number other than 0 for which E(exp(s·(y − slope))) = 1:
 *
 * <pre>
 *   L   = (exp(s·upper) − 1) / (exp(s·upper) − exp(s·lower))
 *   ASN = (L·lower + (1 − L)·upper) / (mean − slope)
 * </pre>
 *
 * <p>lower and upper are the intercepts. Where the mean is the slope, s is 0 and the limits are L =
 * upper/(upper − lower), ASN = −lower·upper/variance.
 *
 * <p>At the two densities of the design L is 1 − alpha and beta. The exact errors are as a rule
 * smaller and the exact sample numbers larger: by 15 to 38 % in the plans of {@code
 * reference/sequential/outcome.csv}.
 *
 * <p><b>Source.</b> Wald (1947), <i>Sequential Analysis</i>, app. A (from memory). Reference
 * values: {@code reference/sequential/wald-approximation.csv}.
 *
 * @param probabilityBelow approximate operating characteristic
 * @param averageSampleNumber approximate average sample number
 */
public record WaldApproximation(double probabilityBelow, double averageSampleNumber) {

    private static final double FARTHEST = 1e6;
    private static final double AS_GOOD_AS_EQUAL = 1e-8;

    /**
     * The approximations at a true mean.
     *
     * @param design the design
     * @param truth how counts really are spread
     * @param mean true mean per sample, 0 or more
     * @return the approximations
     * @throws InvalidInput if the mean is out of range
     */
    static WaldApproximation of(WaldDesign design, SampleModel truth, double mean) {
        truth.requireMean("density", mean);
        double lower = design.lowerIntercept();
        double upper = design.upperIntercept();
        double slope = design.slope();
        if (truth.variance(mean) == 0) {
            // every sample adds the same, so the line ahead is reached for certain
            return mean < slope
                    ? new WaldApproximation(1, lower / (mean - slope))
                    : new WaldApproximation(0, upper / (mean - slope));
        }
        double perIndividual = design.evidencePerIndividual();
        double s = perIndividual * root(truth, mean, slope, perIndividual);
        if (Math.abs(s * (upper - lower)) < AS_GOOD_AS_EQUAL) {
            return new WaldApproximation(
                    upper / (upper - lower), -lower * upper / truth.variance(mean));
        }
        double below = below(s, lower, upper);
        double count = below * lower + (1 - below) * upper;
        return new WaldApproximation(below, count / (mean - slope));
    }

    private static double below(double s, double lower, double upper) {
        if (s > 0) {
            return Math.expm1(-s * upper) / Math.expm1(-s * (upper - lower));
        }
        return Math.exp(-s * lower) * (Math.expm1(s * upper) / Math.expm1(s * (upper - lower)));
    }

    /** Where the cumulants over s meet the slope; s in units of the evidence per individual. */
    private static double root(SampleModel truth, double mean, double slope, double unit) {
        if (mean == slope) {
            return 0;
        }
        double end = truth.largestArgument(mean) / unit;
        double limit = mean > slope ? -FARTHEST : Math.min(FARTHEST, end * (1 - 1e-15));
        double step = mean > slope ? -Math.min(1, end / 2) : Math.min(1, end / 2);
        return Roots.walkingFrom(h -> gap(truth, mean, slope, h * unit), 0, step, limit)
                .orElse(limit);
    }

    /** Rises with s. */
    private static double gap(SampleModel truth, double mean, double slope, double s) {
        double value = s == 0 ? mean - slope : truth.cumulants(mean, s) / s - slope;
        return Math.max(-Double.MAX_VALUE, Math.min(Double.MAX_VALUE, value));
    }
}
