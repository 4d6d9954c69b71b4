package jarwise.stats.count;

import jarwise.numeric.LogOnePlus;
import jarwise.numeric.RisingFactorial;

/**
 * How likely the samples of one group are at a density and a k: the negative binomial
 * log-likelihood with mean {@code exposure · density}, all constants included, and its slopes.
 *
 * <pre>
 *   Σ ln Γ(k + y) − ln Γ(k) − ln y! + y ln(m) − y ln(k) − (k + y) ln(1 + m / k)
 *   where m = exposure · density
 * </pre>
 *
 * <p>Written so that nothing cancels as k grows: at infinite k it is the Poisson log-likelihood.
 *
 * <p><b>Assumes</b> samples drawn independently, one density and one k for all of them, also where
 * their sampling units differ.
 *
 * <p><b>Source.</b> Bliss and Fisher (1953), <i>Biometrics</i> 9:176-200 (formula from memory).
 * Reference values: {@code reference/mean-and-k}.
 */
public final class CountLikelihood {

    private final CountData data;

    /**
     * Takes the samples.
     *
     * @param data samples of one group
     */
    public CountLikelihood(CountData data) {
        this.data = data;
    }

    /** {@return the samples} */
    public CountData data() {
        return data;
    }

    /**
     * The log-likelihood with all constants.
     *
     * @param logDensity natural logarithm of the density per sampling unit
     * @param k dispersion, above 0; may be infinite (Poisson)
     * @return natural logarithm of the probability of the samples
     */
    public double at(double logDensity, double k) {
        return data.constant() + clumping(k) + apartFromClumping(logDensity, k);
    }

    /**
     * The part of the log-likelihood that depends on k and the counts alone.
     *
     * @param k dispersion, above 0; may be infinite
     * @return 0 or more; 0 for Poisson
     */
    public double clumping(double k) {
        double sum = 0;
        if (GivenK.isPoisson(k)) {
            return sum;
        }
        for (int i = 0; i < data.counts(); i++) {
            sum += data.samplesWith(i) * RisingFactorial.logRatio(k, data.count(i));
        }
        return sum;
    }

    /**
     * The part of the log-likelihood that the density is in.
     *
     * @param logDensity natural logarithm of the density per sampling unit
     * @param k dispersion, above 0; may be infinite
     * @return that part
     */
    public double apartFromClumping(double logDensity, double k) {
        double density = Math.exp(logDensity);
        double individuals = data.individuals();
        double sum = individuals == 0 ? 0 : individuals * logDensity;
        if (GivenK.isPoisson(k)) {
            return sum - density * data.totalExposure();
        }
        for (int g = 0; g < data.exposures(); g++) {
            double log = LogOnePlus.ratio(data.exposure(g) * density, k);
            sum -= (k * data.samplesAt(g) + data.individualsAt(g)) * log;
        }
        return sum;
    }

    /**
     * Slope of the log-likelihood along ln k.
     *
     * @param logDensity natural logarithm of the density per sampling unit
     * @param k dispersion, above 0, finite
     * @return derivative with respect to ln k
     */
    public double slopeInLogK(double logDensity, double k) {
        double density = Math.exp(logDensity);
        double sum = 0;
        for (int i = 0; i < data.counts(); i++) {
            sum += data.samplesWith(i) * RisingFactorial.slope(k, data.count(i));
        }
        for (int g = 0; g < data.exposures(); g++) {
            double z = data.exposure(g) * density / k;
            double n = data.samplesAt(g);
            sum -= k * n * Math.log1p(z) - (k * n + data.individualsAt(g)) * z / (1 + z);
        }
        return sum;
    }

    /**
     * Slope of the log-likelihood along 1/k where 1/k is 0: positive where the counts scatter more
     * than Poisson counts would.
     *
     * @param logDensity natural logarithm of the density per sampling unit
     * @return ½ Σ (y − m)² − y
     */
    public double slopeAtPoisson(double logDensity) {
        double density = Math.exp(logDensity);
        double sum = 0;
        for (int i = 0; i < data.counts(); i++) {
            double y = data.count(i);
            sum += data.samplesWith(i) * y * (y - 1);
        }
        for (int g = 0; g < data.exposures(); g++) {
            double mean = data.exposure(g) * density;
            sum += mean * (data.samplesAt(g) * mean - 2 * data.individualsAt(g));
        }
        return 0.5 * sum;
    }

    /**
     * Slope of the log-likelihood along the logarithm of the density.
     *
     * @param logDensity natural logarithm of the density per sampling unit
     * @param k dispersion, above 0; may be infinite
     * @return derivative with respect to ln density
     */
    public double slopeInLogDensity(double logDensity, double k) {
        double density = Math.exp(logDensity);
        double sum = 0;
        for (int g = 0; g < data.exposures(); g++) {
            double mean = data.exposure(g) * density;
            sum += (data.individualsAt(g) - data.samplesAt(g) * mean) / (1 + mean / k);
        }
        return sum;
    }

    /**
     * Expected information about the logarithm of the density.
     *
     * @param logDensity natural logarithm of the density per sampling unit
     * @param k dispersion, above 0; may be infinite
     * @return Σ m / (1 + m / k)
     */
    public double informationOnLogDensity(double logDensity, double k) {
        double density = Math.exp(logDensity);
        double sum = 0;
        for (int g = 0; g < data.exposures(); g++) {
            double mean = data.exposure(g) * density;
            double ratio = mean / k;
            double each = Double.isInfinite(ratio) ? k : mean / (1 + ratio);
            sum += data.samplesAt(g) * each;
        }
        return sum;
    }

    /**
     * The most likely density at a given k.
     *
     * @param anyK dispersion, above 0; may be infinite
     * @return its natural logarithm; minus infinity where nothing was found
     */
    public double mostLikelyLogDensity(double anyK) {
        double k = GivenK.forShape(anyK);
        double individuals = data.individuals();
        double atPoisson = Math.log(individuals / data.totalExposure());
        if (individuals == 0 || data.exposures() == 1 || Double.isInfinite(k)) {
            return atPoisson;
        }
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        double at = atPoisson;
        // Newton on a falling slope, kept between the points already known to lie left and right
        for (int i = 0; i < 200; i++) {
            double slope = slopeInLogDensity(at, k);
            if (slope == 0) {
                return at;
            }
            if (slope > 0) {
                low = at;
            } else {
                high = at;
            }
            double step = slope / informationOnLogDensity(at, k);
            double next = at + Math.max(-2, Math.min(2, step));
            if (!(next > low && next < high)) {
                next = 0.5 * (Math.max(low, at - 2) + Math.min(high, at + 2));
            }
            if (Math.abs(next - at) <= 1e-14 * (1 + Math.abs(at))) {
                return next;
            }
            at = next;
        }
        return at;
    }
}
