package jarwise.stats.estimate;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.count.CountData;
import jarwise.stats.count.Observation;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/**
 * How many more samples would tell whether the density is above the action threshold.
 *
 * @param furtherSamples the number, 0 if these samples tell already; empty if none up to the most
 *     that the limits allow would
 * @param reason one sentence for a reader: what was assumed, or why there is no number
 */
public record SamplesThatWouldTell(OptionalInt furtherSamples, String reason) {

    /**
     * "Cannot tell yet": what would it take?
     *
     * <p>The smallest number n of further samples after which the chance to be above the threshold
     * would lie at or beyond one of the limits, if the further samples looked like those so far:
     * the likelihood is raised to the power (J + n) / J, k and density being integrated as before.
     * A lone sample without a given k says nothing about k, so the median of the prior is taken for
     * it.
     *
     * <p><b>Assumes</b> that the present estimate holds and that further samples have as many
     * sampling units as those so far. It is a plan, not a promise: the next samples will differ,
     * and about half of the time more are needed.
     *
     * <p><b>Source.</b> Our own; no published method. Checked in the tests by writing the samples
     * out.
     *
     * @param estimator how the density is estimated; its action threshold must be set
     * @param observations the samples so far, at least 1
     * @param limits when a chance tells
     * @return the number of further samples, or why there is none
     * @throws InvalidInput if there is no sample or no action threshold
     */
    public static SamplesThatWouldTell of(
            DensityEstimator estimator, List<Observation> observations, TellingLimits limits) {
        if (estimator.actionThreshold().isEmpty()) {
            throw new InvalidInput(
                    "actionThreshold is not set; it must be given to say how many samples would"
                            + " tell.");
        }
        CountData data = CountData.of(observations);
        boolean lone = observations.size() == 1 && estimator.givenK().isEmpty();
        DensityEstimator used =
                lone ? estimator.withGivenK(estimator.prior().medianK()) : estimator;
        IntPredicate tells =
                more ->
                        limits.tells(
                                used.probabilityAboveThreshold(
                                        data.repeated(1 + more / data.samples())));
        if (!lone && tells.test(0)) {
            return new SamplesThatWouldTell(OptionalInt.of(0), "These samples tell already.");
        }
        OptionalInt found = Warnings.smallest(tells, limits.mostSamples());
        return new SamplesThatWouldTell(found, reason(found, lone, used, limits));
    }

    private static String reason(
            OptionalInt found, boolean lone, DensityEstimator used, TellingLimits limits) {
        if (found.isEmpty()) {
            return ("Even %d more samples like these would not tell: the density found is too near"
                            + " the action threshold, or k is too uncertain.")
                    .formatted(limits.mostSamples());
        }
        String assumed = "If further samples look like those so far";
        return lone
                ? "%s and k is %s.".formatted(assumed, Warnings.number(used.givenK().getAsDouble()))
                : assumed + ".";
    }

    /**
     * When the chance of being above the action threshold tells something: a setting of the site.
     *
     * @param below at or under this chance the density counts as below the line; in (0, 1)
     * @param above at or over this chance it counts as above; in (0, 1) and over {@code below}
     * @param mostSamples the most further samples worth thinking about, 1 or more
     */
    public record TellingLimits(double below, double above, int mostSamples) {

        /** Checks the settings; throws {@link InvalidInput} naming the first one out of range. */
        public TellingLimits {
            Require.between("below", below, 0, 1);
            Require.between("above", above, 0, 1);
            Require.atLeast("mostSamples", mostSamples, 1);
            if (!(below < above)) {
                throw new InvalidInput(
                        "below is %s; it must be less than above, %s.".formatted(below, above));
            }
        }

        /** {@return 5 % and 95 %, up to 200 further samples} */
        public static TellingLimits standard() {
            return new TellingLimits(0.05, 0.95, 200);
        }

        /**
         * Whether a chance tells.
         *
         * @param probabilityAboveThreshold chance that the density is above the action threshold
         * @return true at or beyond one of the two limits
         */
        public boolean tells(double probabilityAboveThreshold) {
            return probabilityAboveThreshold <= below || probabilityAboveThreshold >= above;
        }
    }
}
