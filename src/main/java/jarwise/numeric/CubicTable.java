package jarwise.numeric;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * A function that is dear to evaluate, from a table that fills as it is read: the cubic through
 * four neighbouring points of an even grid. Not safe for several threads.
 *
 * <p>The error is 3/128 of the step to the fourth power times the fourth derivative at most.
 */
public final class CubicTable {

    private final DoubleUnaryOperator function;
    private final double step;
    private final Map<Long, Double> known = new HashMap<>();

    /**
     * An empty table.
     *
     * @param function smooth function
     * @param step distance of the grid's points, above 0
     */
    public CubicTable(DoubleUnaryOperator function, double step) {
        this.function = function;
        this.step = step;
    }

    /**
     * The function at a point, nearly.
     *
     * @param x any number
     * @return the cubic there
     */
    public double value(double x) {
        double place = x / step;
        long left = (long) Math.floor(place);
        double t = place - left;
        return -t * (t - 1) * (t - 2) / 6 * at(left - 1)
                + (t + 1) * (t - 1) * (t - 2) / 2 * at(left)
                - (t + 1) * t * (t - 2) / 2 * at(left + 1)
                + (t + 1) * t * (t - 1) / 6 * at(left + 2);
    }

    private double at(long index) {
        Double value = known.get(index);
        if (value == null) {
            value = function.applyAsDouble(index * step);
            known.put(index, value);
        }
        return value;
    }
}
