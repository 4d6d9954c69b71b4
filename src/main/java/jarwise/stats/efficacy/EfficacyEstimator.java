package jarwise.stats.efficacy;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.Quantiles;
import jarwise.stats.estimate.KPrior;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * How an efficacy is to be estimated: options that never change, and the deed.
 *
 * @param interval how the limits are made
 * @param confidenceLevel two-sided level of the limits, in (0, 1)
 * @param target efficacy wanted, in (0, 1)
 * @param prior what is known of k; only for the calibrated interval
 */
public record EfficacyEstimator(
        EfficacyInterval interval, double confidenceLevel, double target, KPrior prior) {

    /** Checks the options; throws {@link InvalidInput} naming the first one out of range. */
    public EfficacyEstimator {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        Require.between("target", target, 0, 1);
    }

    /** {@return calibrated 95 % interval, target 80 %} */
    public static EfficacyEstimator standard() {
        return new EfficacyEstimator(EfficacyInterval.CALIBRATED, 0.95, 0.8, KPrior.standard());
    }

    /**
     * The same with another interval.
     *
     * @param other how the limits are made
     * @return changed options
     */
    public EfficacyEstimator withInterval(EfficacyInterval other) {
        return new EfficacyEstimator(other, confidenceLevel, target, prior);
    }

    /**
     * The same with another level.
     *
     * @param level level of the limits, in (0, 1)
     * @return changed options
     */
    public EfficacyEstimator withConfidenceLevel(double level) {
        return new EfficacyEstimator(interval, level, target, prior);
    }

    /**
     * The same with another target.
     *
     * @param wanted efficacy wanted, in (0, 1)
     * @return changed options
     */
    public EfficacyEstimator withTarget(double wanted) {
        return new EfficacyEstimator(interval, confidenceLevel, wanted, prior);
    }

    /**
     * What share did the treatment take, and how sure is that?
     *
     * <pre>
     *   efficacy = 1 − exp(interaction)
     *   ln density = bench + treated + after + interaction (treated and after)
     * </pre>
     *
     * <p>Counts are negative binomial with one k. The calibrated limits are quantiles of the
     * interaction's distribution with k and all densities integrated out, see docs/methods.md; the
     * profile limits are where the likelihood, k and all else fitted anew, has dropped by half the
     * chi-squared quantile. Where a group has no find the likelihood's drop gives what limit there
     * is: none treated after, efficacy 1 with a lower limit; none on the check after, no efficacy,
     * an upper limit; none before, neither.
     *
     * <p><b>Assumes</b> samples drawn at random and independently; that the treated benches would
     * have changed by the check's factor without treatment; one k for all four groups. With one
     * bench an arm the limits cover the sampling of jars on these benches, not other benches.
     *
     * <p><b>Source.</b> Henderson and Tilton (1955) for the form, as a contrast of a negative
     * binomial regression (Venables and Ripley, <i>Modern Applied Statistics with S</i>, ch. 7;
     * from memory). The calibrated interval is our own, its coverage measured by {@code
     * jarwise.bench.EfficacyCoverage}. Reference values: {@code reference/efficacy/golden.csv}.
     *
     * @param trial samples of one stage of one pest
     * @return the estimate
     */
    public EfficacyEstimate estimate(EfficacyTrial trial) {
        List<TrialCell> cells = TrialCell.of(trial);
        TrialColumns columns = TrialColumns.of(cells);
        Groups groups = Groups.of(cells);
        if (groups.isUndetermined() || !columns.hasInteraction()) {
            return undetermined(trial, cells, groups);
        }
        if (groups.treatedAfter() == 0) {
            Predicate<TrialCell> empty = TrialCell::isTreatedAfter;
            return noneTreated(trial, InteractionProfile.open(cells, columns, empty, -1));
        }
        if (groups.checkAfter() == 0) {
            Predicate<TrialCell> empty = cell -> cell.after() && !cell.treated();
            return noneOnCheck(trial, InteractionProfile.open(cells, columns, empty, 1));
        }
        return inside(trial, InteractionProfile.inside(cells, columns));
    }

    /**
     * The limits alone, for the many trials of a plan. They differ from those of {@link #estimate}
     * only where a calibrated interval would leave the estimate out, which needs a level far under
     * one half.
     *
     * @param trial samples of one stage of one pest
     * @return the limits
     */
    public EfficacyLimits limits(EfficacyTrial trial) {
        Groups groups = Groups.of(TrialCell.of(trial));
        boolean inside =
                !groups.isUndetermined() && groups.treatedAfter() * groups.checkAfter() > 0;
        if (interval == EfficacyInterval.CALIBRATED
                && inside
                && CalibratedInteraction.isPossible(trial)) {
            CalibratedInteraction distribution = new CalibratedInteraction(trial, prior, tail());
            return new EfficacyLimits(
                    OptionalDouble.of(-Math.expm1(distribution.upper(tail()))),
                    OptionalDouble.of(-Math.expm1(distribution.lower(tail()))));
        }
        EfficacyEstimate estimate = estimate(trial);
        return new EfficacyLimits(estimate.lower(), estimate.upper());
    }

    /** Individuals in the four groups. */
    private record Groups(
            double treatedBefore, double treatedAfter, double checkBefore, double checkAfter) {

        static Groups of(List<TrialCell> cells) {
            return new Groups(
                    sum(cells, true, false),
                    sum(cells, true, true),
                    sum(cells, false, false),
                    sum(cells, false, true));
        }

        private static double sum(List<TrialCell> cells, boolean treated, boolean after) {
            return cells.stream()
                    .filter(cell -> cell.treated() == treated && cell.after() == after)
                    .mapToDouble(TrialCell::individuals)
                    .sum();
        }

        boolean isUndetermined() {
            return treatedBefore == 0 || checkBefore == 0 || treatedAfter + checkAfter == 0;
        }

        boolean isEmpty(TrialCell cell) {
            double group =
                    cell.treated()
                            ? cell.after() ? treatedAfter : treatedBefore
                            : cell.after() ? checkAfter : checkBefore;
            return group == 0;
        }
    }

    private EfficacyEstimate undetermined(
            EfficacyTrial trial, List<TrialCell> cells, Groups groups) {
        List<TrialCell> rest = cells.stream().filter(cell -> !groups.isEmpty(cell)).toList();
        EfficacyFigures figures = new EfficacyFigures(trial, target);
        if (groups.isUndetermined()) {
            figures.warn(
                    groups.treatedBefore() == 0 || groups.checkBefore() == 0
                            ? EfficacyWarnings.NONE_BEFORE
                            : EfficacyWarnings.NONE_AFTER);
        } else {
            figures.warn(EfficacyWarnings.NOT_ON_THE_SAME_BENCHES);
        }
        if (!rest.isEmpty()) {
            figures.fit(InteractionProfile.withoutCells(rest, cell -> false).fit());
        }
        return figures.estimate();
    }

    private EfficacyEstimate noneTreated(EfficacyTrial trial, InteractionProfile profile) {
        EfficacyFigures figures = new EfficacyFigures(trial, target);
        figures.warn(EfficacyWarnings.NONE_TREATED_AFTER);
        figures.fit(profile.top());
        figures.pValue(profile.pValue());
        figures.efficacy(1);
        figures.limits(fromInteraction(profile.limit(1, cut())), OptionalDouble.of(1));
        return figures.estimate();
    }

    private EfficacyEstimate noneOnCheck(EfficacyTrial trial, InteractionProfile profile) {
        EfficacyFigures figures = new EfficacyFigures(trial, target);
        figures.warn(EfficacyWarnings.NONE_ON_CHECK_AFTER);
        figures.fit(profile.top());
        figures.pValue(profile.pValue());
        figures.limits(OptionalDouble.empty(), fromInteraction(profile.limit(-1, cut())));
        return figures.estimate();
    }

    private EfficacyEstimate inside(EfficacyTrial trial, InteractionProfile profile) {
        EfficacyFigures figures = new EfficacyFigures(trial, target);
        double interaction = profile.estimate().orElseThrow();
        figures.fit(profile.top());
        figures.pValue(profile.pValue());
        figures.interaction(interaction, profile.standardError().orElseThrow());
        List<OptionalDouble> limits =
                interval == EfficacyInterval.PROFILE
                        ? List.of(profile.limit(-1, cut()), profile.limit(1, cut()))
                        : calibrated(trial, interaction);
        figures.limits(fromInteraction(limits.get(1)), fromInteraction(limits.get(0)));
        return figures.estimate();
    }

    private List<OptionalDouble> calibrated(EfficacyTrial trial, double interaction) {
        List<OptionalDouble> limits = new ArrayList<>();
        if (CalibratedInteraction.isPossible(trial)) {
            CalibratedInteraction distribution = new CalibratedInteraction(trial, prior, tail());
            limits.add(OptionalDouble.of(Math.min(interaction, distribution.lower(tail()))));
            limits.add(OptionalDouble.of(Math.max(interaction, distribution.upper(tail()))));
            return limits;
        }
        return List.of(OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static OptionalDouble fromInteraction(OptionalDouble interaction) {
        return interaction.isPresent()
                ? OptionalDouble.of(-Math.expm1(interaction.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** What the limits leave out on each side; exact from level 0.5 on. */
    private double tail() {
        return 0.5 * (1 - confidenceLevel);
    }

    /** The chi-squared quantile with one degree of freedom. */
    private double cut() {
        return Quantiles.chiSquared(confidenceLevel);
    }
}
