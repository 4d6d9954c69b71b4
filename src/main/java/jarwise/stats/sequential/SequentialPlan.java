package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A sequential plan: after each sample the cumulative count is held against two stop lines.
 *
 * <p>The outcome at a true density is exact: forward recursion over the cumulative count, with the
 * least and the largest number of samples as they are; no simulation and no approximation. {@link
 * WaldApproximation} stands beside it.
 *
 * <p><b>Assumes</b> samples drawn independently and at random from one stratum, and k known.
 *
 * <p><b>Source.</b> Wald (1947), <i>Sequential Analysis</i> (from memory). Reference values: {@code
 * reference/sequential/outcome.csv}, two independent recursions and a simulation that agree.
 *
 * @param design the densities to be told apart and the risks
 * @param minSamples number of samples before which nothing is decided, 1 or more
 * @param maxSamples largest number of samples, {@code minSamples} to 10,000
 */
public record SequentialPlan(WaldDesign design, int minSamples, int maxSamples) {

    private static final int POINTS = 41;

    /** Checks the plan; throws {@link InvalidInput} naming what is out of range. */
    public SequentialPlan {
        linesOf(design, minSamples, maxSamples);
    }

    private static StopLines linesOf(WaldDesign design, int minSamples, int maxSamples) {
        requireLines(design);
        return new StopLines(
                design.slope(),
                design.lowerIntercept(),
                design.upperIntercept(),
                minSamples,
                maxSamples);
    }

    private static void requireLines(WaldDesign design) {
        double farthest = Math.max(design.slope(), design.upperIntercept());
        if (design.model() instanceof CountedSamples counted
                && !(Math.max(farthest, -design.lowerIntercept()) < Double.POSITIVE_INFINITY)) {
            throw new InvalidInput(
                    ("k is %s; with counts as clumped as that no number of individuals tells the"
                                    + " two densities apart. Maybe 0.5.")
                            .formatted(counted.k()));
        }
    }

    /** {@return the stop lines for samples of the planned number of sampling units} */
    public StopLines lines() {
        return linesOf(design, minSamples, maxSamples);
    }

    /**
     * Densities at which to look at the plan: {@value #POINTS} from a quarter of the lower density
     * to twice the upper.
     *
     * @return densities per sampling unit, rising; proportions end halfway between the upper one
     *     and 1 if twice the upper one is more
     */
    public List<Double> usualDensities() {
        double low = design.lowerDensity() / 4;
        double high = 2 * design.upperDensity();
        if (design.model() instanceof PresenceAbsence) {
            high = Math.min(high, (1 + design.upperDensity()) / 2);
        }
        Double[] densities = new Double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            double share = i / (POINTS - 1.0);
            densities[i] = low * (1 - share) + high * share;
        }
        return List.of(densities);
    }

    /**
     * How the plan ends if its own k is true.
     *
     * @param trueDensity density per sampling unit, 0 or more; a proportion with presence–absence
     * @return chances and sample numbers, to 12 digits
     * @throws InvalidInput if the density is out of range, or the stop lines are too far apart to
     *     be worked out exactly
     */
    public SequentialOutcome outcome(double trueDensity) {
        return outcome(trueDensity, design.model());
    }

    /**
     * How the plan ends if counts are spread in another way than it was drawn for.
     *
     * @param trueDensity density per sampling unit, 0 or more; a proportion with presence–absence
     * @param truth how counts really are spread
     * @return chances and sample numbers, to 12 digits
     * @throws InvalidInput if the density is out of range, or the stop lines are too far apart to
     *     be worked out exactly
     */
    public SequentialOutcome outcome(double trueDensity, SampleModel truth) {
        return outcome(trueDensity, truth, List.of());
    }

    /**
     * How the plan ends if samples hold other numbers of sampling units than it was drawn for.
     *
     * <p>Recursion over the plan's own lines, with the true mean of each sample. k is taken to be
     * the same for all of them.
     *
     * @param trueDensity density per sampling unit, 0 or more
     * @param truth how counts really are spread
     * @param exposures sampling units times share of the filter read, of the first samples in their
     *     order; samples after them hold the planned number
     * @return chances and sample numbers, to 12 digits
     * @throws InvalidInput if a number is out of range, or the stop lines are too far apart to be
     *     worked out exactly
     */
    public SequentialOutcome outcome(
            double trueDensity, SampleModel truth, List<Double> exposures) {
        Require.notNegative("density", trueDensity);
        StopLines lines = lines();
        int most = ForwardRecursion.width(lines, 0, 0);
        Map<Double, SampleChances> known = new HashMap<>();
        return ForwardRecursion.outcome(
                lines,
                0,
                0,
                n -> {
                    double exposure =
                            n <= exposures.size()
                                    ? Require.positive("sampling units", exposures.get(n - 1))
                                    : design.unitsPerSample();
                    return known.computeIfAbsent(
                            exposure, units -> truth.chances(units * trueDensity, most));
                });
    }

    /**
     * Wald's approximation to the outcome, without a least or a largest number of samples.
     *
     * @param trueDensity density per sampling unit, 0 or more; a proportion with presence–absence
     * @param truth how counts really are spread
     * @return the approximation
     * @throws InvalidInput if the density is out of range
     */
    public WaldApproximation waldApproximation(double trueDensity, SampleModel truth) {
        return WaldApproximation.of(design, truth, design.unitsPerSample() * trueDensity);
    }
}
