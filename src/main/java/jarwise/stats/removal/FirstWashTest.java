package jarwise.stats.removal;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.OptionalDouble;
import org.hipparchus.special.Gamma;

/**
 * Whether the first wash brings off another share than those after it.
 *
 * @param estimate individuals before the first wash if it may; empty if the likelihood keeps rising
 * @param lower lower profile limit
 * @param upper upper profile limit; empty where the washes set none
 * @param firstRemovalProbability share that the first wash brings off; empty without an estimate
 * @param removalProbability share that each later wash brings off; empty without an estimate or if
 *     nothing came off later
 * @param logLikelihood with a first wash of its own, all constants in it; where there is no
 *     estimate, its limit
 * @param logLikelihoodOfOneShare with one share for all washes, likewise
 * @param statistic twice the difference of the two
 * @param pValue chance of so large a statistic if the share is the same; small means that it is not
 */
public record FirstWashTest(
        OptionalDouble estimate,
        double lower,
        OptionalDouble upper,
        OptionalDouble firstRemovalProbability,
        OptionalDouble removalProbability,
        double logLikelihood,
        double logLikelihoodOfOneShare,
        double statistic,
        double pValue) {

    /**
     * Does the first wash bring off another share than the washes after it?
     *
     * <p>The likelihood ratio of two models: one share for all washes, and a share of its own for
     * the first. Where the second fits better, use its total; it is larger, and far less sure.
     *
     * <p><b>Assumes</b> one share for the washes after the first. The chance is chi-squared with
     * one degree of freedom, rough for small numbers.
     *
     * <p><b>Source.</b> Schnute (1983), <i>Canadian Journal of Fisheries and Aquatic Sciences</i>
     * 40:2153-2169. Reference values: {@code reference/removal/brook-trout.csv}.
     *
     * @param catches what came off, wash by wash, 3 washes or more
     * @param confidenceLevel two-sided level of the limits, in (0, 1)
     * @return the test
     * @throws InvalidInput if there are only two washes, or the level is out of range
     */
    public static FirstWashTest of(RemovalCatches catches, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        if (catches.washes() < 3) {
            throw new InvalidInput(
                    "There are 2 washes; 3 or more are needed to tell the first from the others.");
        }
        FirstWashApart apart = FirstWashApart.of(catches);
        TotalProfile profile = TotalProfile.of(apart);
        double constant = constant(catches);
        double height = largest(profile) + constant;
        double heightOfOne = largest(TotalProfile.of(ConstantShare.of(catches))) + constant;
        double statistic = Math.max(0, 2 * (height - heightOfOne));
        return new FirstWashTest(
                profile.estimate(),
                profile.lower(confidenceLevel),
                profile.upper(confidenceLevel),
                profile.estimate().isPresent()
                        ? OptionalDouble.of(catches.first() / profile.estimate().getAsDouble())
                        : OptionalDouble.empty(),
                apart.laterShare(profile.estimate()),
                height,
                heightOfOne,
                statistic,
                Gamma.regularizedGammaQ(0.5, statistic / 2));
    }

    private static double largest(TotalProfile profile) {
        return profile.estimate().isPresent()
                ? profile.likelihood().at(profile.estimate().getAsDouble())
                : profile.likelihood().limit();
    }

    private static double constant(RemovalCatches catches) {
        return -catches.catches().stream().mapToDouble(c -> Gamma.logGamma(c + 1.0)).sum();
    }
}
