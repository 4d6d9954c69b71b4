package jarwise.stats.estimate;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.BetaNodes;
import jarwise.numeric.Roots;
import jarwise.stats.count.CountData;
import jarwise.stats.count.GivenK;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
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

    private static final double TABLE_STEP = 0.01;

    private final Map<Long, Double> table = new HashMap<>();
    private final double[] exposure;
    private final double[] samples;
    private final double totalExposure;
    private final KNodes nodes;
    private final Detection detection;
    private final List<BetaNodes> uncertain;

    private ZeroBound(CountData data, KNodes nodes, Detection detection) {
        int groups = data.exposures();
        exposure = new double[groups];
        samples = new double[groups];
        for (int g = 0; g < groups; g++) {
            exposure[g] = data.exposure(g);
            samples[g] = data.samplesAt(g);
        }
        totalExposure = data.totalExposure();
        this.nodes = nodes;
        this.detection = detection;
        uncertain = detection.uncertainShares(1);
    }

    /**
     * A bound with k known.
     *
     * @param data samples without a find
     * @param k dispersion, in the range of {@link GivenK}; may be infinite
     * @param detection share counted
     * @return the bound
     * @throws InvalidInput if something was found or k is out of range
     */
    public static ZeroBound givenK(CountData data, double k, Detection detection) {
        return new ZeroBound(withoutFind(data), KNodes.given(GivenK.require(k)), detection);
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
        return new ZeroBound(withoutFind(data), KNodes.ofPrior(prior), detection);
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
        double logAlpha = Math.log1p(-confidenceLevel);
        double oneExpected = -Math.log(totalExposure * detection.mean());
        DoubleUnaryOperator overAlpha = t -> Math.log(nothingFound(t)) - logAlpha;
        OptionalDouble root =
                Roots.walkingFrom(overAlpha, oneExpected - 20, 4, oneExpected + FARTHEST);
        return root.isPresent()
                ? OptionalDouble.of(Math.exp(root.getAsDouble()))
                : OptionalDouble.empty();
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
        return density == 0 ? 1 : Math.min(1, nothingFound(Math.log(density)));
    }

    private double nothingFound(double logDensity) {
        return averaged(0, logDensity + detection.logOfKnown());
    }

    private double averaged(int share, double logCounted) {
        if (share == uncertain.size()) {
            return uncertain.isEmpty()
                    ? nothingCounted(Math.exp(logCounted))
                    : tabulated(logCounted);
        }
        return uncertain.get(share).average(v -> averaged(share + 1, logCounted + v));
    }

    /**
     * The same from a table that fills as it is read: averaging over two uncertain shares asks for
     * thousands of densities that lie close together. Cubic through four points a hundredth of a
     * log unit apart: relative error below 1e-7 wherever the chance is above 0.01.
     */
    private double tabulated(double logCounted) {
        double place = logCounted / TABLE_STEP;
        long left = (long) Math.floor(place);
        double t = place - left;
        return -t * (t - 1) * (t - 2) / 6 * tabled(left - 1)
                + (t + 1) * (t - 1) * (t - 2) / 2 * tabled(left)
                - (t + 1) * t * (t - 2) / 2 * tabled(left + 1)
                + (t + 1) * t * (t - 1) / 6 * tabled(left + 2);
    }

    private double tabled(long index) {
        Double known = table.get(index);
        if (known == null) {
            known = nothingCounted(Math.exp(index * TABLE_STEP));
            table.put(index, known);
        }
        return known;
    }

    private double nothingCounted(double density) {
        double sum = 0;
        for (int j = 0; j < nodes.size(); j++) {
            sum += Math.exp(nodes.logWeight(j) - exponent(density, nodes.k(j)));
        }
        return Math.min(1, sum);
    }

    private double exponent(double density, double k) {
        double sum = 0;
        for (int g = 0; g < exposure.length; g++) {
            double mean = exposure[g] * density;
            sum += samples[g] * (Double.isInfinite(k) ? mean : k * Math.log1p(mean / k));
        }
        return sum;
    }
}
