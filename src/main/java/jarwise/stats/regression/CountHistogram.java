package jarwise.stats.regression;

import jarwise.numeric.RisingFactorial;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.special.Gamma;

/** How often each count occurs: all that k has to do with single counts. */
final class CountHistogram {

    private final long[] counts;
    private final double[] frequencies;
    private final double constant;

    CountHistogram(Map<Long, Double> frequencyOf) {
        TreeMap<Long, Double> sorted = new TreeMap<>(frequencyOf);
        counts = sorted.keySet().stream().mapToLong(Long::longValue).toArray();
        frequencies = sorted.values().stream().mapToDouble(Double::doubleValue).toArray();
        double sum = 0;
        for (int i = 0; i < counts.length; i++) {
            sum -= frequencies[i] * (counts[i] < 2 ? 0 : Gamma.logGamma(counts[i] + 1.0));
        }
        constant = sum;
    }

    /** {@return −Σ ln y!} */
    double constant() {
        return constant;
    }

    /** {@return Σ y(y − 1)} */
    double pairs() {
        double sum = 0;
        for (int i = 0; i < counts.length; i++) {
            sum += frequencies[i] * counts[i] * (counts[i] - 1.0);
        }
        return sum;
    }

    /** {@return the part of the log-likelihood in k and the counts alone; 0 for Poisson} */
    double clumping(double k) {
        double sum = 0;
        if (k < Double.POSITIVE_INFINITY) {
            for (int i = 0; i < counts.length; i++) {
                sum += frequencies[i] * RisingFactorial.logRatio(k, counts[i]);
            }
        }
        return sum;
    }

    /** {@return its slope along ln k} */
    double slope(double k) {
        double sum = 0;
        for (int i = 0; i < counts.length; i++) {
            sum += frequencies[i] * RisingFactorial.slope(k, counts[i]);
        }
        return sum;
    }

    /** {@return its curvature along ln k, to about nine digits: enough to steer by} */
    double curvature(double k) {
        double step = 1e-4;
        return (slope(k * Math.exp(step)) - slope(k * Math.exp(-step))) / (2 * step);
    }
}
