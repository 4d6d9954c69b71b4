package jarwise.stats.estimate;

import jarwise.numeric.BetaNodes;
import jarwise.numeric.CubicTable;
import jarwise.numeric.LogOnePlus;
import jarwise.stats.count.CountData;
import jarwise.stats.count.GivenK;
import java.util.function.DoubleUnaryOperator;

/**
 * The chance that samples show nothing, and that they show something, along ln density: averaged
 * over k and over measured shares. Both as logarithms, so that each keeps its digits where it is
 * small.
 *
 * <p>Averaging over uncertain shares asks for thousands of densities that lie close together, which
 * a table answers: a hundredth of a log unit apart its relative error is below 1e-7.
 */
final class ChanceOfNothing {

    private static final double LEAST_CHANCE = 1e-300; // the logarithm of 0 has no neighbours
    private static final double TABLE_STEP = 0.01;

    private final double[] exposure;
    private final double[] samples;
    private final KNodes nodes;
    private final DoubleUnaryOperator nothing;
    private final DoubleUnaryOperator something;

    /**
     * Prepares both chances.
     *
     * @param data the samples
     * @param nodes values of k to average over
     * @param detection share counted
     * @param tail smallest chance that must be right
     */
    ChanceOfNothing(CountData data, KNodes nodes, Detection detection, double tail) {
        int groups = data.exposures();
        exposure = new double[groups];
        samples = new double[groups];
        for (int g = 0; g < groups; g++) {
            exposure[g] = data.exposure(g);
            samples[g] = data.samplesAt(g);
        }
        this.nodes = nodes;
        nothing = averaged(this::logNothingCounted, detection, tail);
        something = averaged(this::logSomethingCounted, detection, tail);
    }

    private static DoubleUnaryOperator averaged(
            DoubleUnaryOperator logOfCounted, Detection detection, double tail) {
        DoubleUnaryOperator result = logOfCounted;
        for (BetaNodes share : detection.uncertainShares(1, tail)) {
            CubicTable table = new CubicTable(result, TABLE_STEP);
            result = t -> log(share.average(v -> Math.exp(table.value(t + v))));
        }
        double known = detection.logOfKnown();
        DoubleUnaryOperator corrected = result;
        return t -> corrected.applyAsDouble(t + known);
    }

    private static double log(double chance) {
        return Math.log(Math.max(LEAST_CHANCE, chance));
    }

    /** {@return logarithm of the chance that nothing is counted at this ln density} */
    double logNothing(double logDensity) {
        return nothing.applyAsDouble(logDensity);
    }

    /** {@return logarithm of the chance that something is counted at this ln density} */
    double logSomething(double logDensity) {
        return something.applyAsDouble(logDensity);
    }

    private double logNothingCounted(double logDensity) {
        double sum = 0;
        for (int j = 0; j < nodes.size(); j++) {
            sum += Math.exp(nodes.logWeight(j) - exponent(Math.exp(logDensity), nodes.k(j)));
        }
        return log(Math.min(1, sum));
    }

    private double logSomethingCounted(double logDensity) {
        double sum = 0;
        for (int j = 0; j < nodes.size(); j++) {
            double expected = exponent(Math.exp(logDensity), nodes.k(j));
            sum -= Math.exp(nodes.logWeight(j)) * Math.expm1(-expected);
        }
        return Math.log(Math.max(Double.MIN_VALUE, sum));
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
