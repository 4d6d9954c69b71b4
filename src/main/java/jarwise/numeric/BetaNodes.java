package jarwise.numeric;

import jarwise.base.Require;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * Points and weights that average a smooth function over a Beta distribution.
 *
 * <p>Evenly spaced points on the scale ln(q / (1 − q)), on which the density falls off like an
 * exponential at both ends, so that the plain sum converges faster than any power of the step.
 *
 * <p><b>Source.</b> Trefethen and Weideman (2014), <i>SIAM Review</i> 56:385-458, on the
 * trapezoidal rule (from memory); checked in the tests against moments of the distribution.
 */
public final class BetaNodes {

    private static final double NEGLIGIBLE = -27; // logarithm, against the highest point
    private static final double BELOW_TAIL = -20; // logarithm, against the tail
    private static final double PLAIN_TAIL = -6; // logarithm; below it features are narrower
    private static final double WIDEST_STEP = 0.6;

    /** A share known this well beside what is averaged is one point: relative error below 1e-6. */
    private static final double ONE_POINT_WIDTH = 1e-3;

    private final double[] logShare;
    private final double[] weight;

    private BetaNodes(double[] logShare, double[] weight) {
        this.logShare = logShare;
        this.weight = weight;
    }

    /**
     * Points for a Beta distribution.
     *
     * @param a first shape, above 0
     * @param b second shape, above 0
     * @param finest how fast the functions to be averaged can change, as the standard deviation of
     *     their narrowest feature on the scale ln q; above 0
     * @param tail smallest average, against the largest value of the function, that must be right;
     *     in (0, 1]
     * @return the points
     */
    public static BetaNodes of(double a, double b, double finest, double tail) {
        Require.positive("a", a);
        Require.positive("b", b);
        double logTail = Math.log(tail);
        double floor = Math.min(NEGLIGIBLE, logTail + BELOW_TAIL);
        return spread(a, b, finest / Math.max(1, logTail / PLAIN_TAIL), floor);
    }

    private static BetaNodes spread(double a, double b, double finest, double floor) {
        double widthOfLog = Math.sqrt(Math.max(0, Gamma.trigamma(a) - Gamma.trigamma(a + b)));
        if (widthOfLog <= ONE_POINT_WIDTH * finest) {
            return new BetaNodes(new double[] {Math.log(a / (a + b))}, new double[] {1});
        }
        double ownWidth = Math.sqrt(Gamma.trigamma(a) + Gamma.trigamma(b));
        double centre = Math.log(a / b);
        double coarse = Math.min(WIDEST_STEP, 0.5 * ownWidth);
        double lowest = centre - coarse * steps(a, b, -coarse, floor);
        // ln q moves by 1 − q where the logit moves by 1
        double narrowest = finest * (1 + Math.exp(lowest));
        double step = Math.min(coarse, 0.5 * Math.max(narrowest, 1e-3));
        int down = steps(a, b, -step, floor);
        int up = steps(a, b, step, floor);
        double scale = Math.log(step) - Beta.logBeta(a, b);
        double[] logShare = new double[down + up + 1];
        double[] weight = new double[down + up + 1];
        for (int i = 0; i < weight.length; i++) {
            double x = centre + (i - down) * step;
            logShare[i] = -logOnePlusExp(-x);
            weight[i] = Math.exp(logWeight(a, b, x) + scale);
        }
        return new BetaNodes(logShare, weight);
    }

    /** How many steps from the peak it takes until the weight is below the floor. */
    private static int steps(double a, double b, double step, double floor) {
        double centre = Math.log(a / b);
        double least = logWeight(a, b, centre) + floor;
        int steps = 0;
        while (logWeight(a, b, centre + steps * step) > least) {
            steps++;
        }
        return steps;
    }

    private static double logWeight(double a, double b, double x) {
        return -a * logOnePlusExp(-x) - b * logOnePlusExp(x);
    }

    private static double logOnePlusExp(double x) {
        return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
    }

    /**
     * The average of a function over the distribution.
     *
     * @param ofLogShare the function, given ln q
     * @return its expected value
     */
    public double average(DoubleUnaryOperator ofLogShare) {
        double sum = 0;
        for (int i = 0; i < weight.length; i++) {
            sum += weight[i] * ofLogShare.applyAsDouble(logShare[i]);
        }
        return sum;
    }
}
