package jarwise.numeric;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Gamma;

/**
 * A function f on panels, averaged over a shift by ln q with q from a Beta distribution: the
 * expected value of q^tilt f(t + ln q), where f may be far narrower than the distribution.
 *
 * <p>Gauss's rule on each panel of f, which is a polynomial there, on the scale ln(q / (1 − q)), on
 * which the distribution is smooth up to q = 1.
 *
 * <p><b>Source.</b> Own construction; checked in the tests against plain sums.
 */
public final class BetaAverage {

    private static final double NEGLIGIBLE = -27; // logarithm, against the highest point
    private static final double WIDEST_PIECE = 2;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(12);

    private final PanelFunction function;
    private final double a;
    private final double b;
    private final double logScale;
    private final double low;
    private final double high;
    private final double piece;

    /**
     * Takes a function and a distribution.
     *
     * @param function the function, on panels
     * @param a first shape, above 0
     * @param b second shape, above 0
     * @param tilt power of q that the function is multiplied by; above {@code -a}
     */
    public BetaAverage(PanelFunction function, double a, double b, double tilt) {
        this.function = function;
        this.a = a + tilt;
        this.b = b;
        logScale = -Beta.logBeta(a, b);
        double width = Math.sqrt(Gamma.trigamma(this.a) + Gamma.trigamma(b));
        piece = Math.min(WIDEST_PIECE, WIDEST_PIECE * width);
        double centre = Math.log(this.a / b);
        low = walk(centre, -piece);
        high = walk(centre, piece);
    }

    private double walk(double centre, double step) {
        double floor = logWeight(centre) + NEGLIGIBLE;
        double at = centre;
        while (logWeight(at) > floor) {
            at += step;
        }
        return at;
    }

    private double logWeight(double x) {
        return -a * logOnePlusExp(-x) - b * logOnePlusExp(x);
    }

    private static double logOnePlusExp(double x) {
        return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
    }

    /**
     * The average at a point.
     *
     * @param t any number
     * @return expected value of q^tilt f(t + ln q)
     */
    public double value(double t) {
        double sum = 0;
        double from = Math.max(low, logit(function.edge(0) - t));
        for (int i = 1; i <= function.panels() && from < high; i++) {
            double to = Math.min(high, logit(function.edge(i) - t));
            if (to > from) {
                sum += over(from, to, t);
                from = to;
            }
        }
        return sum;
    }

    /** ln(q / (1 − q)) for q = e^v; infinite where no share is as large. */
    private static double logit(double v) {
        return v < 0 ? v - Math.log(-Math.expm1(v)) : Double.POSITIVE_INFINITY;
    }

    private double over(double from, double to, double t) {
        int pieces = (int) Math.ceil((to - from) / piece);
        double half = 0.5 * (to - from) / pieces;
        double sum = 0;
        for (int i = 0; i < pieces; i++) {
            double centre = from + (2 * i + 1) * half;
            for (int j = 0; j < RULE.getNumberOfPoints(); j++) {
                double x = centre + half * RULE.getPoint(j);
                double weight = RULE.getWeight(j) * Math.exp(logWeight(x) + logScale);
                sum += weight * function.value(t - logOnePlusExp(-x));
            }
        }
        return sum * half;
    }
}
