package jarwise.numeric;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Where a function crosses zero, by bracketing and Brent's method of higher order.
 *
 * <p><b>Source.</b> The solver is Hipparchus' {@link BracketingNthOrderBrentSolver}; only the
 * search for a bracket is ours.
 */
public final class Roots {

    private static final double RELATIVE = 1e-14;
    private static final double ABSOLUTE = 1e-13;
    private static final int MOST_EVALUATIONS = 500;
    private static final int ORDER = 5;

    private Roots() {}

    /**
     * The zero of a continuous function between two points at which it has different signs.
     *
     * @param function the function
     * @param low one end
     * @param high the other end, above {@code low}
     * @return the zero, to about 13 digits
     */
    public static double between(DoubleUnaryOperator function, double low, double high) {
        return new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, ORDER)
                .solve(MOST_EVALUATIONS, function::applyAsDouble, low, high);
    }

    /**
     * The first zero met when walking away from a point in steps that double.
     *
     * @param function continuous, not 0 at {@code start}
     * @param start where the walk starts
     * @param step first step; its sign is the direction
     * @param limit farthest point looked at
     * @return the zero, or empty if the sign is still the same at {@code limit}
     */
    public static OptionalDouble walkingFrom(
            DoubleUnaryOperator function, double start, double step, double limit) {
        double sign = Math.signum(function.applyAsDouble(start));
        double near = start;
        for (double stride = step; near != limit; stride *= 2) {
            double next = near + stride;
            double far = stride > 0 ? Math.min(next, limit) : Math.max(next, limit);
            if (Math.signum(function.applyAsDouble(far)) != sign) {
                return OptionalDouble.of(
                        between(function, Math.min(near, far), Math.max(near, far)));
            }
            near = far;
        }
        return OptionalDouble.empty();
    }
}
