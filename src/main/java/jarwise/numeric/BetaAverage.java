package jarwise.numeric;

import java.util.Arrays;
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
    private static final double BELOW_TAIL = -20; // logarithm, against the tail
    private static final double UNSEEN = -40; // logarithm, in a sum of a hundred
    private static final double WIDEST_PIECE = 2;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(12);

    private final PanelFunction function;
    private final double a;
    private final double b;
    private final double logScale;
    private final double[] logBound;
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
     * @param tail smallest share of the average's integral that a quantile is wanted for, above 0
     */
    public BetaAverage(PanelFunction function, double a, double b, double tilt, double tail) {
        this.function = function;
        this.a = a + tilt;
        this.b = b;
        logScale = -Beta.logBeta(a, b);
        logBound = new double[function.panels()];
        Arrays.setAll(logBound, i -> Math.log(function.bound(i)));
        double width = Math.sqrt(Gamma.trigamma(this.a) + Gamma.trigamma(b));
        piece = Math.min(WIDEST_PIECE, WIDEST_PIECE * width);
        double centre = Math.log(this.a / b);
        double floor = logWeight(centre) + Math.min(NEGLIGIBLE, Math.log(tail) + BELOW_TAIL);
        low = walk(floor, centre, -piece);
        high = walk(floor, centre, piece);
    }

    private double walk(double floor, double centre, double step) {
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
        int panels = function.panels();
        double[] edge = new double[panels + 1];
        double[] bound = new double[panels];
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= panels; i++) {
            edge[i] = Math.max(low, Math.min(high, logit(function.edge(i) - t)));
        }
        for (int i = 0; i < panels; i++) {
            bound[i] = logBound[i] + highestWeight(edge[i], edge[i + 1]);
            highest = edge[i + 1] > edge[i] ? Math.max(highest, bound[i]) : highest;
        }
        double sum = 0;
        for (int i = 0; i < panels; i++) {
            if (edge[i + 1] > edge[i] && bound[i] > highest + UNSEEN) {
                sum += over(i, edge[i], edge[i + 1], t);
            }
        }
        return sum;
    }

    private double highestWeight(double from, double to) {
        return logWeight(Math.max(from, Math.min(to, Math.log(a / b))));
    }

    /** ln(q / (1 − q)) for q = e^v; infinite where no share is as large. */
    private static double logit(double v) {
        return v < 0 ? v - Math.log(-Math.expm1(v)) : Double.POSITIVE_INFINITY;
    }

    private double over(int panel, double from, double to, double t) {
        int pieces = (int) Math.ceil((to - from) / piece);
        double half = 0.5 * (to - from) / pieces;
        double sum = 0;
        for (int i = 0; i < pieces; i++) {
            double centre = from + (2 * i + 1) * half;
            for (int j = 0; j < RULE.getNumberOfPoints(); j++) {
                double x = centre + half * RULE.getPoint(j);
                double logShare = -logOnePlusExp(-x);
                double logWeight = (a + b) * logShare - b * x;
                double weight = RULE.getWeight(j) * Math.exp(logWeight + logScale);
                sum += weight * function.value(panel, t + logShare);
            }
        }
        return sum * half;
    }
}
