package jarwise.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Takes a function with one peak, given by its logarithm, on panels that are narrow around the peak
 * and widen outwards, as far as it matters or as it may go.
 */
public final class PeakPanels {

    /** The smallest tail that the usual panels resolve. */
    public static final double USUAL_TAIL = 0.025;

    private static final double NEGLIGIBLE = -21; // logarithm, against the centre
    private static final double BELOW_TAIL = -16; // logarithm, against the tail
    private static final double TOLERANCE = 1e-7;
    private static final double ROUNDINGS = 8; // of the logarithm, in one of its values
    private static final double PANEL_WIDTH = 3;
    private static final double GROWTH = 1.5;

    private PeakPanels() {}

    /**
     * Takes the function on panels, divided by its value near the peak.
     *
     * @param logFunction its logarithm, falling away on both sides of the peak
     * @param start a point near the peak, not after {@code end}
     * @param width standard deviation of the peak, roughly; above 0
     * @param end where the function is cut off; may be infinite if it falls away before
     * @param tail smallest share of the integral that a quantile is wanted for, above 0
     * @return the function, from where it is negligible to where it is negligible again or ends
     */
    public static PanelFunction of(
            DoubleUnaryOperator logFunction, double start, double width, double end, double tail) {
        double centre = uphill(logFunction, uphill(logFunction, start, -width, end), width, end);
        double top = logFunction.applyAsDouble(centre);
        DoubleUnaryOperator height = x -> logFunction.applyAsDouble(x) - top;
        double floor = Math.min(NEGLIGIBLE, Math.log(tail) + BELOW_TAIL);
        double first = walk(height, floor, centre, -width, Double.NEGATIVE_INFINITY);
        double last = walk(height, floor, centre, width, end);
        double noise = ROUNDINGS * Math.ulp(top);
        return PanelFunction.of(
                x -> Math.exp(height.applyAsDouble(x)),
                edges(first, centre, last, PANEL_WIDTH * width),
                new PanelFunction.Accuracy(
                        Math.max(TOLERANCE, noise) * width, Math.min(1, tail / USUAL_TAIL)));
    }

    /** Steps on while the function grows by more than its e-fold: the start was far off. */
    private static double uphill(
            DoubleUnaryOperator logFunction, double from, double step, double end) {
        double at = from;
        double height = logFunction.applyAsDouble(at);
        while (at + step <= end) {
            double next = logFunction.applyAsDouble(at + step);
            if (!(next > height + 1)) {
                break;
            }
            at += step;
            height = next;
        }
        return at;
    }

    private static double walk(
            DoubleUnaryOperator height, double floor, double from, double step, double limit) {
        double at = from;
        double stride = step;
        while (at != limit) {
            double next = at + stride;
            at = step > 0 ? Math.min(next, limit) : Math.max(next, limit);
            if (height.applyAsDouble(at) < floor) {
                return at;
            }
            stride *= GROWTH;
        }
        return at;
    }

    private static double[] edges(double start, double centre, double end, double width) {
        double[] down = outwards(centre - start, width);
        double[] up = outwards(end - centre, width);
        double[] edges = new double[down.length + up.length + 1];
        for (int i = 0; i < down.length; i++) {
            edges[down.length - 1 - i] = centre - down[i];
        }
        edges[down.length] = centre;
        for (int i = 0; i < up.length; i++) {
            edges[down.length + 1 + i] = centre + up[i];
        }
        return edges;
    }

    private static double[] outwards(double distance, double width) {
        int number = 0;
        double sum = 0;
        for (double w = width; sum < distance; w *= GROWTH) {
            sum += w;
            number++;
        }
        double[] edges = new double[number];
        double at = 0;
        double w = width * distance / sum;
        for (int i = 0; i < number; i++) {
            at += w;
            edges[i] = at;
            w *= GROWTH;
        }
        if (number > 0) {
            edges[number - 1] = distance;
        }
        return edges;
    }
}
