package jarwise.stats.efficacy;

import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** A weighted sum of curves on one grid, as a distribution with quantiles. */
final class MixedCurve {

    private static final int NEIGHBOURS = 10;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(5);

    private final int first;
    private final double[] cumulative;

    private MixedCurve(int first, double[] cumulative) {
        this.first = first;
        this.cumulative = cumulative;
    }

    /** {@return the sum of the curves, each times the exponential of its own weight and scale} */
    static MixedCurve of(List<GridCurve> curves, List<Double> logWeights) {
        int from = curves.stream().mapToInt(GridCurve::first).min().orElseThrow();
        int to = curves.stream().mapToInt(c -> c.first() + c.points()).max().orElseThrow();
        double top = Double.NEGATIVE_INFINITY;
        for (int j = 0; j < curves.size(); j++) {
            top = Math.max(top, curves.get(j).logScale() + logWeights.get(j));
        }
        double[] sum = new double[to - from + 2 * NEIGHBOURS];
        for (int j = 0; j < curves.size(); j++) {
            GridCurve curve = curves.get(j);
            double weight = Math.exp(curve.logScale() + logWeights.get(j) - top);
            int shift = curve.first() - from + NEIGHBOURS;
            for (int i = 0; i < curve.points(); i++) {
                sum[shift + i] += weight * curve.value(i);
            }
        }
        for (int i = 1; i < sum.length; i++) {
            sum[i] += sum[i - 1];
        }
        return new MixedCurve(from - NEIGHBOURS, sum);
    }

    /**
     * Where the distribution reaches a probability, in steps of the grid.
     *
     * @param p in (0, 1)
     * @return the place, not whole
     */
    double quantile(double p) {
        double wanted = p * cumulative[cumulative.length - 1];
        double low = NEIGHBOURS / 2;
        double high = cumulative.length - 1 - NEIGHBOURS / 2;
        while (high - low > 1e-11 * cumulative.length) {
            double middle = 0.5 * (low + high);
            if (below(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return first + 0.5 * (low + high);
    }

    /**
     * The integral up to x: the mean of the running sums, as a smooth function, from x − 1 to x.
     */
    private double below(double x) {
        double sum = 0;
        for (int g = 0; g < RULE.getNumberOfPoints(); g++) {
            sum += RULE.getWeight(g) * smooth(x - 0.5 + 0.5 * RULE.getPoint(g));
        }
        return 0.5 * sum;
    }

    /** Lagrange's polynomial through the ten nearest running sums. */
    private double smooth(double x) {
        int start = (int) Math.floor(x) - NEIGHBOURS / 2 + 1;
        start = Math.max(0, Math.min(start, cumulative.length - NEIGHBOURS));
        double sum = 0;
        for (int i = 0; i < NEIGHBOURS; i++) {
            double term = cumulative[start + i];
            for (int j = 0; j < NEIGHBOURS; j++) {
                if (j != i) {
                    term *= (x - start - j) / (i - j);
                }
            }
            sum += term;
        }
        return sum;
    }
}
