package jarwise.stats.dispersion;

import jarwise.numeric.Quantiles;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A straight line through points by ordinary least squares.
 *
 * @param intercept height at 0, with its error
 * @param slope rise per unit, with its error
 * @param rSquared share of the variance that the line explains; empty if there is none to explain
 */
record StraightLine(LineConstant intercept, LineConstant slope, OptionalDouble rSquared) {

    private static final double CONFIDENCE_LEVEL = 0.95;

    /** The line through 3 or more points; empty if all stand over the same place. */
    static Optional<StraightLine> through(double[] x, double[] y) {
        double meanX = Arrays.stream(x).average().orElseThrow();
        double meanY = Arrays.stream(y).average().orElseThrow();
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (int i = 0; i < x.length; i++) {
            sxx += (x[i] - meanX) * (x[i] - meanX);
            sxy += (x[i] - meanX) * (y[i] - meanY);
            syy += (y[i] - meanY) * (y[i] - meanY);
        }
        // differences that are rounding alone carry no line
        if (sxx <= 1e-24 * x.length * Math.max(1, meanX * meanX)) {
            return Optional.empty();
        }
        double slope = sxy / sxx;
        double intercept = meanY - slope * meanX;
        double residual = 0;
        for (int i = 0; i < x.length; i++) {
            residual += Math.pow(y[i] - intercept - slope * x[i], 2);
        }
        int degreesOfFreedom = x.length - 2;
        double variance = residual / degreesOfFreedom;
        double t = Quantiles.student(CONFIDENCE_LEVEL, degreesOfFreedom);
        double errorIntercept = Math.sqrt(variance * (1.0 / x.length + meanX * meanX / sxx));
        return Optional.of(
                new StraightLine(
                        LineConstant.of(intercept, errorIntercept, t),
                        LineConstant.of(slope, Math.sqrt(variance / sxx), t),
                        syy > 0 ? OptionalDouble.of(1 - residual / syy) : OptionalDouble.empty()));
    }
}
