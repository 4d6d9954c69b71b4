package jarwise.stats.estimate;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.Roots;
import jarwise.stats.count.CountData;
import jarwise.stats.count.GivenK;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * None found: what could still be there?
 *
 * <p>The bound is the density at which finding nothing would have had just the chance alpha:
 *
 * <pre>
 *   P(nothing found | density) = ∏ (1 + exposure · e · s · density / k)^(−k) = alpha
 * </pre>
 *
 * averaged over k where k is uncertain and over efficiency e and sensitivity s where those were
 * measured. There is no weight on the density and no largest density.
 *
 * <p><b>Assumes</b> samples drawn independently and at random. Stages that the method does not see
 * (eggs in tissue) are not bounded at all.
 *
 * <p><b>Source.</b> Direct consequence of the negative binomial's zero class (Bliss and Fisher
 * 1953); for Poisson counts the rule of three of Hanley and Lippman-Hand (1983), <i>JAMA</i>
 * 249:1743-1745 (from memory). Reference values: {@code reference/zero-bound/*.csv}.
 */
public final class ZeroBound {

    private static final double FARTHEST = 69; // ln of 1e30
    private static final double PLAIN_TAIL = 0.025;

    private final CountData data;
    private final DoubleFunction<KNodes> nodes;
    private final Detection detection;

    /** Takes the values of k as a function of the smallest chance that must be right. */
    private ZeroBound(CountData data, DoubleFunction<KNodes> nodes, Detection detection) {
        this.data = data;
        this.nodes = nodes;
        this.detection = detection;
    }

    /**
     * A bound with k known.
     *
     * @param data samples without a find
     * @param k dispersion, above 0; may be infinite
     * @param detection share counted
     * @return the bound
     * @throws InvalidInput if something was found or k is out of range
     */
    public static ZeroBound givenK(CountData data, double k, Detection detection) {
        KNodes given = KNodes.given(GivenK.require(k));
        return new ZeroBound(withoutFind(data), tail -> given, detection);
    }

    /**
     * A bound with k uncertain.
     *
     * @param data samples without a find
     * @param prior what is known of k
     * @param detection share counted
     * @return the bound
     * @throws InvalidInput if something was found
     */
    public static ZeroBound withPrior(CountData data, KPrior prior, Detection detection) {
        return new ZeroBound(withoutFind(data), tail -> KNodes.ofPrior(prior, tail), detection);
    }

    private static CountData withoutFind(CountData data) {
        if (data.individuals() == 0) {
            return data;
        }
        throw new InvalidInput(
                "individuals is %.0f; a bound on a zero count needs samples without a find."
                        .formatted(data.individuals()));
    }

    /**
     * The upper bound.
     *
     * @param confidenceLevel chance that a higher density would have been found, in (0, 1)
     * @return density per sampling unit, on the corrected scale; empty where it would take more
     *     than 1e30 individuals in the samples: then they set no limit worth the name
     */
    public OptionalDouble upper(double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        return upper(Math.log(confidenceLevel), Math.log1p(-confidenceLevel));
    }

    /**
     * The upper bound, from what it leaves out: also where 1 minus that is no number of its own.
     *
     * @param alpha chance that nothing would have been found at that density, in (0, 1)
     * @return as for {@link #upper(double)}
     */
    public OptionalDouble upperLeaving(double alpha) {
        Require.between("alpha", alpha, 0, 1);
        return upper(Math.log1p(-alpha), Math.log(alpha));
    }

    private OptionalDouble upper(double logLevel, double logAlpha) {
        double oneExpected = -Math.log(data.totalExposure()) - detection.logOfMean();
        ChanceOfNothing chance = chance(Math.exp(logAlpha));
        // whichever of the two chances is the smaller one keeps its digits
        DoubleUnaryOperator shortOf =
                logLevel < logAlpha
                        ? t -> logLevel - chance.logSomething(t)
                        : t -> chance.logNothing(t) - logAlpha;
        OptionalDouble root =
                Roots.walkingFrom(shortOf, oneExpected - 20 + logLevel, 4, oneExpected + FARTHEST);
        return root.isPresent()
                ? OptionalDouble.of(Math.exp(root.getAsDouble()))
                : OptionalDouble.empty();
    }

    private ChanceOfNothing chance(double tail) {
        return new ChanceOfNothing(data, nodes.apply(tail), detection, tail);
    }

    /**
     * The chance of finding nothing at a density, which is also what is left to say for the density
     * being above it.
     *
     * @param density density per sampling unit, 0 or more
     * @return in [0, 1], falling from 1 as the density rises
     */
    public double probabilityAbove(double density) {
        Require.notNegative("density", density);
        return density == 0 ? 1 : Math.exp(chance(PLAIN_TAIL).logNothing(Math.log(density)));
    }
}
