package jarwise.stats.efficacy;

import jarwise.numeric.Roots;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.hipparchus.special.Erf;

/**
 * The likelihood of the interaction, everything else, k too, being at its best: most likely value,
 * limits from the likelihood's drop, and the test against none.
 */
final class InteractionProfile {

    private static final double FARTHEST = 60;

    private final TrialModel full;
    private final TrialModel.Fit top;
    private final TrialModel model;
    private final boolean open;
    private final double start;

    private InteractionProfile(
            TrialModel full, TrialModel.Fit top, TrialModel model, boolean open, double start) {
        this.full = full;
        this.top = top;
        this.model = model;
        this.open = open;
        this.start = start;
    }

    /** Both after groups and both before groups have a find. */
    static InteractionProfile inside(List<TrialCell> cells, TrialColumns design) {
        TrialModel full = new TrialModel(cells, design);
        TrialModel.Fit top = full.fit();
        double estimate = top.lastCoefficient();
        return new InteractionProfile(full, top, full, false, estimate);
    }

    /**
     * One after group has none: the likelihood rises for ever towards one side, to that of the
     * other groups alone.
     */
    static InteractionProfile open(
            List<TrialCell> cells, TrialColumns design, Predicate<TrialCell> empty, int side) {
        TrialModel others = withoutCells(cells, empty);
        return new InteractionProfile(
                others, others.fit(), new TrialModel(cells, design), true, side * FARTHEST);
    }

    /** {@return the model of the other groups, where some have no find and say nothing of k} */
    static TrialModel withoutCells(List<TrialCell> cells, Predicate<TrialCell> empty) {
        List<TrialCell> rest = cells.stream().filter(empty.negate()).toList();
        return new TrialModel(rest, TrialColumns.of(rest));
    }

    /** {@return the most likely fit} */
    TrialModel.Fit top() {
        return top;
    }

    /** {@return the most likely interaction; empty where it is endless} */
    OptionalDouble estimate() {
        return open ? OptionalDouble.empty() : OptionalDouble.of(start);
    }

    /** {@return its standard error, expected information; empty where the estimate is endless} */
    OptionalDouble standardError() {
        return open ? OptionalDouble.empty() : OptionalDouble.of(full.standardErrorOfLast(top));
    }

    /** {@return chance of such a likelihood ratio or a larger one if there were no interaction} */
    double pValue() {
        double drop = Math.max(0, deviance(0));
        return Erf.erfc(Math.sqrt(0.5 * drop));
    }

    /** {@return the limit on one side: −1 below, 1 above; empty where the likelihood sets none} */
    OptionalDouble limit(int side, double cut) {
        if (open && Math.signum(start) == side) {
            return OptionalDouble.empty();
        }
        if (!open && deviance(start) >= cut) {
            return OptionalDouble.of(start);
        }
        double step = open ? 8 : standardError().orElse(1);
        return Roots.walkingFrom(x -> deviance(x) - cut, start, side * step, side * FARTHEST);
    }

    private double deviance(double interaction) {
        return 2 * (top.logLikelihood() - model.withInteraction(interaction).fit().logLikelihood());
    }
}
