package jarwise.stats.estimate;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.BetaNodes;
import jarwise.numeric.CubicTable;
import jarwise.numeric.LogOnePlus;
import jarwise.numeric.Roots;
import jarwise.stats.count.CountData;
import jarwise.stats.count.GivenK;
import java.util.List;
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
    private static final double LEAST_CHANCE = 1e-300; // a table's cubic may dip under 0

    private static final double TABLE_STEP = 0.01;

    private final CubicTable tabledNothing = new CubicTable(this::nothingCounted, TABLE_STEP);
    private final CubicTable tabledSomething = new CubicTable(this::somethingCounted, TABLE_STEP);
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
     * @param k dispersion, above 0; may be infinite
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
        double oneExpected = -Math.log(totalExposure) - detection.logOfMean();
        double logLevel = Math.log(confidenceLevel);
        double logAlpha = Math.log1p(-confidenceLevel);
        // whichever of the two chances is the smaller one keeps its digits
        DoubleUnaryOperator shortOf =
                confidenceLevel < 0.5
                        ? t -> logLevel - Math.log(somethingFound(t))
                        : t -> Math.log(Math.max(LEAST_CHANCE, nothingFound(t))) - logAlpha;
        OptionalDouble root =
                Roots.walkingFrom(shortOf, oneExpected - 20 + logLevel, 4, oneExpected + FARTHEST);
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
        return averaged(logDensity, this::nothingCounted, tabledNothing);
    }

    private double somethingFound(double logDensity) {
        return averaged(logDensity, this::somethingCounted, tabledSomething);
    }

    /**
     * Averaging over two uncertain shares asks for thousands of densities that lie close together,
     * which a table answers: a hundredth of a log unit apart its relative error is below 1e-7
     * wherever the chance of finding nothing is above 0.01.
     */
    private double averaged(double logDensity, DoubleUnaryOperator direct, CubicTable tabled) {
        double logCounted = logDensity + detection.logOfKnown();
        return uncertain.isEmpty()
                ? direct.applyAsDouble(logCounted)
                : averagedOver(0, logCounted, tabled);
    }

    private double averagedOver(int share, double logCounted, CubicTable tabled) {
        return share == uncertain.size()
                ? tabled.value(logCounted)
                : uncertain
                        .get(share)
                        .average(v -> averagedOver(share + 1, logCounted + v, tabled));
    }

    private double nothingCounted(double logDensity) {
        double sum = 0;
        for (int j = 0; j < nodes.size(); j++) {
            sum += Math.exp(nodes.logWeight(j) - exponent(Math.exp(logDensity), nodes.k(j)));
        }
        return Math.min(1, sum);
    }

    private double somethingCounted(double logDensity) {
        double sum = 0;
        for (int j = 0; j < nodes.size(); j++) {
            double expected = exponent(Math.exp(logDensity), nodes.k(j));
            sum -= Math.exp(nodes.logWeight(j)) * Math.expm1(-expected);
        }
        return sum;
    }

    private double exponent(double density, double k) {
        double sum = 0;
        for (int g = 0; g < exposure.length; g++) {
            double mean = exposure[g] * density;
            sum += samples[g] * (GivenK.isPoisson(k) ? mean : k * LogOnePlus.ratio(mean, k));
        }
        return sum;
    }
}
