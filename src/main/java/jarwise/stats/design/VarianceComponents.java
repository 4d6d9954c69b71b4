package jarwise.stats.design;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How many growing points should be in a jar?
 *
 * <p>The variance of the mean per unit over J samples of u units is (between + within/u)/J. With
 * cost per sample c1 and per unit c2, the precision for what is spent is best at
 *
 * <pre>
 *   u = √(c1 / c2 · within / between)
 * </pre>
 *
 * <p><b>Assumes</b> units within a sample and samples taken at random; samples are few among those
 * that could be taken.
 *
 * <p><b>Source.</b> Cochran (1977), <i>Sampling Techniques</i>, ch. 10 (from memory). Reference
 * values: {@code reference/design/components.csv}.
 *
 * @param between variance between samples, 0 or more (a negative estimate becomes 0)
 * @param within variance between the units of a sample, 0 or more
 */
public record VarianceComponents(double between, double within) {

    /** Checks both. */
    public VarianceComponents {
        Require.notNegative("between", between);
        Require.notNegative("within", within);
    }

    /**
     * Components from counts per unit, as many units in each sample: analysis of variance.
     *
     * <pre>
     *   within = MSW,   between = (MSB − MSW) / units, not below 0
     * </pre>
     *
     * @param counts one array for each sample, 2 or more, each with the same 2 or more counts
     * @return the components
     * @throws InvalidInput if there are too few or the samples differ in length
     */
    public static VarianceComponents of(List<double[]> counts) {
        Require.atLeast("samples", counts.size(), 2);
        int units = counts.get(0).length;
        Require.atLeast("units in a sample", units, 2);
        if (counts.stream().anyMatch(sample -> sample.length != units)) {
            throw new InvalidInput("Samples have different numbers of units; they must be equal.");
        }
        double[] means = counts.stream().mapToDouble(VarianceComponents::mean).toArray();
        double meanSquareBetween = units * variance(means);
        double within =
                counts.stream().mapToDouble(VarianceComponents::variance).average().orElseThrow();
        return new VarianceComponents(Math.max(0, (meanSquareBetween - within) / units), within);
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        return Arrays.stream(values).map(x -> (x - mean) * (x - mean)).sum()
                / (values.length - 1.0);
    }

    /**
     * Variance of the mean per unit.
     *
     * @param samples samples, 1 or more
     * @param units units in each, above 0
     * @return 0 or more
     * @throws InvalidInput if a number is out of range
     */
    public double varianceOfMean(long samples, double units) {
        Require.atLeast("samples", samples, 1);
        return (between + within / Require.positive("units", units)) / samples;
    }

    /**
     * {@return share of the variance of single units that lies between samples; 0 if there is none}
     */
    public double intraclassCorrelation() {
        return between + within == 0 ? 0 : between / (between + within);
    }

    /**
     * The best number of units in a sample.
     *
     * @param costOfSample what a sample costs however full it is: cut, wash, freeze; above 0
     * @param costOfUnit what each unit in it costs: reading time; above 0
     * @return before rounding, may be below 1; empty if samples do not differ: then as many units
     *     in a sample as fit
     * @throws InvalidInput if a cost is not above 0
     */
    public OptionalDouble bestUnits(double costOfSample, double costOfUnit) {
        Require.positive("costOfSample", costOfSample);
        Require.positive("costOfUnit", costOfUnit);
        return between == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.sqrt(costOfSample / costOfUnit * within / between));
    }

    /**
     * The best whole number of units in a sample.
     *
     * @param costOfSample as in {@link #bestUnits}
     * @param costOfUnit as in {@link #bestUnits}
     * @param mostUnits as many as fit into a sample, 1 or more
     * @return 1 to {@code mostUnits}, the smaller of two that are as good
     * @throws InvalidInput if a number is out of range
     */
    public long wholeUnits(double costOfSample, double costOfUnit, long mostUnits) {
        Require.atLeast("mostUnits", mostUnits, 1);
        double best = bestUnits(costOfSample, costOfUnit).orElse((double) mostUnits);
        long fewer = Math.max(1, Math.min(mostUnits, (long) Math.floor(best)));
        long more = Math.min(mostUnits, fewer + 1);
        return price(costOfSample, costOfUnit, more) < price(costOfSample, costOfUnit, fewer)
                ? more
                : fewer;
    }

    /**
     * Cost of one sample times its variance: what a given precision costs is proportional to it.
     */
    private double price(double costOfSample, double costOfUnit, long units) {
        return (costOfSample + costOfUnit * units) * (between + within / (double) units);
    }
}
