package jarwise.stats.count;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.special.Gamma;

/**
 * The samples of one group, boiled down to what the likelihood needs: per distinct exposure the
 * number of samples and their individuals, and how often each count occurs.
 *
 * <p>Cost then grows with distinct values, not with samples, and neither the order of the samples
 * nor writing equal ones together changes a single digit.
 */
public final class CountData {

    private final double[] exposure;
    private final double[] samplesAt;
    private final double[] individualsAt;
    private final long[] count;
    private final double[] samplesWith;
    private final double constant;

    private CountData(double[][] byExposure, long[] count, double[] samplesWith, double constant) {
        exposure = byExposure[0];
        samplesAt = byExposure[1];
        individualsAt = byExposure[2];
        this.count = count;
        this.samplesWith = samplesWith;
        this.constant = constant;
    }

    /**
     * Boils samples down.
     *
     * @param observations the samples of one group, in any order; at least 1
     * @return their data
     * @throws InvalidInput if there is none
     */
    public static CountData of(Collection<Observation> observations) {
        Map<Observation, Long> frequencies = new HashMap<>();
        for (Observation observation : observations) {
            frequencies.merge(observation, 1L, Long::sum);
        }
        return ofFrequencies(frequencies);
    }

    /**
     * Boils down samples that are written together where they are equal.
     *
     * @param frequencies how many samples look like this, each 1 or more; at least one entry
     * @return their data, the same as if every sample were written on its own
     * @throws InvalidInput if there is none, or a frequency is below 1
     */
    public static CountData ofFrequencies(Map<Observation, Long> frequencies) {
        if (frequencies.isEmpty()) {
            throw new InvalidInput("There is no sample to estimate from; at least 1 is needed.");
        }
        TreeMap<Double, double[]> byExposure = new TreeMap<>();
        TreeMap<Long, Double> byCount = new TreeMap<>();
        TreeMap<Double, Double> constants = new TreeMap<>();
        frequencies.forEach(
                (observation, times) -> {
                    Require.atLeast("frequency", times, 1);
                    double samples = times;
                    long y = observation.individuals();
                    double[] sums =
                            byExposure.computeIfAbsent(observation.exposure(), e -> new double[2]);
                    sums[0] += samples;
                    sums[1] += samples * y;
                    byCount.merge(y, samples, Double::sum);
                    constants.merge(logConstant(observation), samples, Double::sum);
                });
        double constant = 0;
        for (Map.Entry<Double, Double> entry : constants.entrySet()) {
            constant += entry.getKey() * entry.getValue();
        }
        return new CountData(
                columns(byExposure),
                byCount.keySet().stream().mapToLong(Long::longValue).toArray(),
                byCount.values().stream().mapToDouble(Double::doubleValue).toArray(),
                constant);
    }

    private static double[][] columns(Map<Double, double[]> byExposure) {
        double[][] columns = new double[3][byExposure.size()];
        int i = 0;
        for (Map.Entry<Double, double[]> entry : byExposure.entrySet()) {
            columns[0][i] = entry.getKey();
            columns[1][i] = entry.getValue()[0];
            columns[2][i] = entry.getValue()[1];
            i++;
        }
        return columns;
    }

    private static double logConstant(Observation observation) {
        long y = observation.individuals();
        return y == 0 ? 0 : y * Math.log(observation.exposure()) - Gamma.logGamma(y + 1.0);
    }

    /**
     * The data if there were more samples and they looked like the ones there are: the same shares
     * of every count and exposure.
     *
     * @param times how many times as many samples, above 0; need not be whole
     * @return data with a likelihood to the power of {@code times}
     */
    public CountData repeated(double times) {
        Require.positive("times", times);
        return new CountData(
                new double[][] {exposure, scaled(samplesAt, times), scaled(individualsAt, times)},
                count,
                scaled(samplesWith, times),
                constant * times);
    }

    private static double[] scaled(double[] values, double times) {
        return Arrays.stream(values).map(value -> value * times).toArray();
    }

    /** {@return the number of samples; not whole after {@link #repeated}} */
    public double samples() {
        return Arrays.stream(samplesAt).sum();
    }

    /** {@return the individuals counted in all of them} */
    public double individuals() {
        return Arrays.stream(individualsAt).sum();
    }

    /** {@return the sum of all exposures: sampling units times share read} */
    public double totalExposure() {
        double sum = 0;
        for (int g = 0; g < exposure.length; g++) {
            sum += exposure[g] * samplesAt[g];
        }
        return sum;
    }

    /**
     * {@return the part of the log-likelihood that no parameter changes: Σ y ln(exposure) − ln y!}
     */
    double constant() {
        return constant;
    }

    /** {@return how many distinct exposures there are} */
    public int exposures() {
        return exposure.length;
    }

    /**
     * One of the distinct exposures.
     *
     * @param g its place, from 0, rising exposure
     * @return sampling units times share read
     */
    public double exposure(int g) {
        return exposure[g];
    }

    /**
     * Samples with one exposure.
     *
     * @param g place of the exposure, from 0
     * @return their number
     */
    public double samplesAt(int g) {
        return samplesAt[g];
    }

    /**
     * Individuals in all samples with one exposure.
     *
     * @param g place of the exposure, from 0
     * @return their number
     */
    public double individualsAt(int g) {
        return individualsAt[g];
    }

    int counts() {
        return count.length;
    }

    long count(int i) {
        return count[i];
    }

    double samplesWith(int i) {
        return samplesWith[i];
    }
}
