package jarwise.stats.estimate;

import jarwise.numeric.PanelFunction;
import jarwise.numeric.PeakPanels;
import jarwise.numeric.Roots;
import jarwise.stats.count.DensityProfile;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.special.Gamma;

/**
 * Profile likelihood of the corrected density where efficiency or sensitivity was measured: the
 * profile of the counted density, averaged over what those measurements leave open.
 */
final class ProfileDensity {

    private static final double FARTHEST_UP = 60; // on the scale of ln density
    private static final double FARTHEST_DOWN = 850; // e to its negative power is no number
    private static final double WIDEST = 30;
    private static final double FARTHEST_DEVIANCE = 1400; // its tail is 0 in a double

    private final DoubleUnaryOperator logLikelihood;
    private final double top;
    private final double height;
    private final double width;

    private ProfileDensity(DoubleUnaryOperator logLikelihood, double top, double width) {
        this.logLikelihood = logLikelihood;
        this.top = top;
        this.width = width;
        height = logLikelihood.applyAsDouble(top);
    }

    static ProfileDensity of(DensityProfile profile, Detection detection, double tail) {
        double known = detection.logOfKnown();
        double width = Math.min(WIDEST, profile.fit().standardErrorOfLog().orElse(1));
        double counted = Math.log(profile.fit().density());
        if (detection.measured().isEmpty()) {
            return new ProfileDensity(
                    t -> profile.logLikelihood(t + known), counted - known, width);
        }
        double end = counted + FARTHEST_UP;
        PanelFunction likelihood =
                detection.averaged(
                        PeakPanels.of(profile::logLikelihood, counted, width, end, tail),
                        0,
                        0.5 * width,
                        end,
                        tail);
        double spread = Math.hypot(width, Math.sqrt(detection.varianceOfLog()));
        double middle = likelihood.inverseIntegral(0.5 * likelihood.integral()) - known;
        DoubleUnaryOperator log = t -> Math.log(Math.max(1e-300, likelihood.value(t + known)));
        return new ProfileDensity(log, highest(log, middle, spread), spread);
    }

    private static double highest(DoubleUnaryOperator function, double middle, double spread) {
        UnivariateFunction objective = function::applyAsDouble;
        return new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                        new MaxEval(1000),
                        new UnivariateObjectiveFunction(objective),
                        GoalType.MAXIMIZE,
                        new SearchInterval(middle - 3 * spread, middle + 3 * spread, middle))
                .getPoint();
    }

    double lower(double cut) {
        OptionalDouble limit = crossing(cut, -1);
        return limit.isPresent() ? Math.exp(limit.getAsDouble()) : 0;
    }

    OptionalDouble upper(double cut) {
        OptionalDouble limit = crossing(cut, 1);
        return limit.isPresent()
                ? OptionalDouble.of(Math.exp(limit.getAsDouble()))
                : OptionalDouble.empty();
    }

    private OptionalDouble crossing(double cut, int direction) {
        return Roots.walkingFrom(
                t -> 2 * (height - logLikelihood.applyAsDouble(t)) - cut,
                top,
                direction * width,
                direction > 0 ? top + FARTHEST_UP : top - FARTHEST_DOWN);
    }

    double probabilityAbove(double density) {
        double t = Math.log(density);
        double deviance = Math.max(0, 2 * (height - logLikelihood.applyAsDouble(t)));
        double tail =
                deviance > FARTHEST_DEVIANCE
                        ? 0
                        : 0.5 * Gamma.regularizedGammaQ(0.5, 0.5 * deviance);
        return t > top ? tail : 1 - tail;
    }
}
