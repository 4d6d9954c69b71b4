package jarwise.stats.efficacy;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** A weighted sum of curves on one grid, as a distribution with quantiles. */
final class MixedCurve {

    private static final int NEIGHBOURS = 10;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(5);

    private final int first;
    private final double[] value;

    private MixedCurve(int first, double[] value) {
        this.first = first;
        this.value = value;
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
        return new MixedCurve(from - NEIGHBOURS, sum);
    }

    /**
     * Where the distribution has a share of itself below, in steps of the grid.
     *
     * @param share in (0, 1)
     * @return the place, not whole
     */
    double lower(double share) {
        return first + quantile(value, share);
    }

    /** {@return where it has that share above} */
    double upper(double share) {
        double[] mirrored = new double[value.length];
        Arrays.setAll(mirrored, i -> value[value.length - 1 - i]);
        return first + value.length - 1 - quantile(mirrored, share);
    }

    /** Running sums are read by their logarithms, which bend little also far out in a tail. */
    private static double quantile(double[] value, double share) {
        double[] logSum = new double[value.length];
        double sum = 0;
        for (int i = 0; i < value.length; i++) {
            sum += value[i];
            logSum[i] = Math.log(Math.max(Double.MIN_NORMAL, sum));
        }
        double wanted = share * sum;
        double low = NEIGHBOURS / 2;
        double high = value.length - 1 - NEIGHBOURS / 2;
        while (high - low > 1e-11 * value.length) {
            double middle = 0.5 * (low + high);
            if (below(logSum, middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /**
     * The integral up to x: the mean of the running sums, as a smooth function, from x − 1 to x.
     */
    private static double below(double[] logSum, double x) {
        double sum = 0;
        for (int g = 0; g < RULE.getNumberOfPoints(); g++) {
            double at = x - 0.5 + 0.5 * RULE.getPoint(g);
            sum += RULE.getWeight(g) * Math.exp(smooth(logSum, at));
        }
        return 0.5 * sum;
    }

    /** Lagrange's polynomial through the ten nearest. */
    private static double smooth(double[] values, double x) {
        int start = (int) Math.floor(x) - NEIGHBOURS / 2 + 1;
        start = Math.max(0, Math.min(start, values.length - NEIGHBOURS));
        double sum = 0;
        for (int i = 0; i < NEIGHBOURS; i++) {
            double term = values[start + i];
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
