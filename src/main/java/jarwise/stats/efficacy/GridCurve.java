package jarwise.stats.efficacy;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * A positive function on an even grid, divided by a scale of its own and cut where it is
 * negligible.
 *
 * <p>For smooth functions that fall away on both sides the plain sum over such a grid is as good as
 * the integral, and so are sums of products: that is what makes sums and differences of independent
 * quantities cheap here.
 */
final class GridCurve {

    private static final int FARTHEST = 8000; // points to each side

    private final int first;
    private final double[] value;
    private final double logScale;

    private GridCurve(int first, double[] value, double logScale) {
        this.first = first;
        this.value = value;
        this.logScale = logScale;
    }

    /**
     * The function with this logarithm, walked both ways from near its peak at 0.
     *
     * @param logHeight the logarithm at a place of the grid
     * @param negligible logarithm against the highest point at which the walk ends
     */
    static GridCurve of(IntToDoubleFunction logHeight, double negligible) {
        double[] down = side(logHeight, negligible, -1);
        double[] up = side(logHeight, negligible, 1);
        double scale = logHeight.applyAsDouble(0);
        double[] all = new double[down.length + 1 + up.length];
        for (int i = 0; i < down.length; i++) {
            all[down.length - 1 - i] = down[i];
        }
        all[down.length] = 1;
        System.arraycopy(up, 0, all, down.length + 1, up.length);
        return new GridCurve(-down.length, all, scale);
    }

    private static double[] side(IntToDoubleFunction logHeight, double negligible, int direction) {
        double scale = logHeight.applyAsDouble(0);
        double[] values = new double[64];
        double top = 0;
        int n = 0;
        while (n < FARTHEST) {
            double height = logHeight.applyAsDouble(direction * (n + 1)) - scale;
            if (n == values.length) {
                values = Arrays.copyOf(values, 2 * n);
            }
            values[n++] = Math.exp(height);
            top = Math.max(top, height);
            if (height < top + negligible) {
                break;
            }
        }
        return Arrays.copyOf(values, n);
    }

    /** {@return place of the first point on the grid} */
    int first() {
        return first;
    }

    /** {@return number of points} */
    int points() {
        return value.length;
    }

    /** {@return height at a point, from 0, over the scale} */
    double value(int i) {
        return value[i];
    }

    /** {@return the logarithm of the sum over all points} */
    double logSum() {
        double sum = 0;
        for (double v : value) {
            sum += v;
        }
        return Math.log(sum) + logScale;
    }

    /** {@return the logarithm of what the heights were divided by} */
    double logScale() {
        return logScale;
    }

    /** {@return the same curve, so many places further on} */
    GridCurve moved(int places) {
        return new GridCurve(first + places, value, logScale);
    }

    /** {@return for each d the sum over x of this(x + d) · other(x)} */
    GridCurve minus(GridCurve other) {
        double[] result = new double[value.length + other.value.length - 1];
        int last = other.value.length - 1;
        for (int j = 0; j <= last; j++) {
            double weight = other.value[j];
            int shift = last - j;
            for (int i = 0; i < value.length; i++) {
                result[i + shift] += weight * value[i];
            }
        }
        return new GridCurve(first - other.first - last, result, logScale + other.logScale);
    }

    /** {@return the product where both are not negligible; of no points where they do not meet} */
    GridCurve times(GridCurve other) {
        int from = Math.max(first, other.first);
        int to = Math.min(first + value.length, other.first + other.value.length);
        double[] result = new double[Math.max(0, to - from)];
        double top = 0;
        for (int i = 0; i < result.length; i++) {
            result[i] = value[from + i - first] * other.value[from + i - other.first];
            top = Math.max(top, result[i]);
        }
        if (top == 0) {
            return new GridCurve(from, new double[0], Double.NEGATIVE_INFINITY);
        }
        for (int i = 0; i < result.length; i++) {
            result[i] /= top;
        }
        return new GridCurve(from, result, logScale + other.logScale + Math.log(top));
    }
}
