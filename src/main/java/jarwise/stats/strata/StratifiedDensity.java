package jarwise.stats.strata;

import jarwise.base.InvalidInput;
import jarwise.numeric.Quantiles;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.DensityInterval;
import jarwise.stats.estimate.Detection;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Mean density over a whole crop from samples taken stratum by stratum.
 *
 * @param interval density and limits over the crop, corrected for detection
 * @param strata the estimate of each stratum on its own, in the order given
 * @param warnings what a reader has to know
 */
public record StratifiedDensity(
        DensityInterval interval, List<DensityEstimate> strata, List<String> warnings) {

    /** Keeps the lists from being changed. */
    public StratifiedDensity {
        strata = List.copyOf(strata);
        warnings = List.copyOf(warnings);
    }

    /** One stratum's share in the crop's mean, as counted. */
    private record Part(
            double weight, double shrink, DensityEstimate counted, OptionalDouble upper) {

        double below() {
            return weight * shrink * (counted.estimate() - counted.lower());
        }

        double above() {
            double highest = upper.orElse(Double.POSITIVE_INFINITY);
            return weight * shrink * (highest - counted.estimate());
        }

        double error() {
            return weight * shrink * counted.standardError().orElse(0);
        }
    }

    /**
     * How many are there per sampling unit over the whole crop?
     *
     * <pre>
     *   estimate = Σ W(h) · density(h),   W(h) = growing points standing in h / all standing
     *   lower    = estimate − √ Σ W(h)² (1 − f(h)) (density(h) − lower(h))²
     *   upper    = estimate + √ Σ W(h)² (1 − f(h)) (upper(h) − density(h))²
     * </pre>
     *
     * <p>f(h) is the share of what stands in h that was sampled: the finite-population correction.
     * Every stratum has its own k. A stratum without a find enters with the one-sided bound at the
     * tail of the interval; if no stratum has a find the limit is one-sided. What is open about
     * efficiency and sensitivity is common to all strata and joined at the end, on the log scale.
     *
     * <p><b>Assumes</b> random samples within every stratum, strata sampled independently, growing
     * points standing known. The correction takes what was not sampled to be like what was.
     *
     * <p><b>Source.</b> Cochran (1977), <i>Sampling Techniques</i>, ch. 5, for weights and
     * correction; Zou and Donner (2008), <i>Statistics in Medicine</i> 27:1693-1702, for limits
     * recovered from limits (both from memory). Coverage is checked by simulation in the tests.
     *
     * @param estimator how each stratum is estimated; its action threshold is for the strata
     * @param strata parts that together are the crop, at least 1
     * @return mean over the crop; no upper limit if a stratum has none
     * @throws InvalidInput if there is no stratum
     */
    public static StratifiedDensity of(DensityEstimator estimator, List<Stratum> strata) {
        if (strata.isEmpty()) {
            throw new InvalidInput("There is no stratum; at least 1 is needed.");
        }
        List<Part> parts = parts(estimator, strata);
        double counted = parts.stream().mapToDouble(p -> p.weight() * p.counted().estimate()).sum();
        double low = Math.max(0, counted - length(parts.stream().mapToDouble(Part::below)));
        double high = counted + length(parts.stream().mapToDouble(Part::above));
        double error = length(parts.stream().mapToDouble(Part::error));
        List<DensityEstimate> estimates =
                strata.stream().map(s -> estimator.estimate(s.observations())).toList();
        return new StratifiedDensity(
                corrected(estimator, new double[] {counted, error, low, high}),
                estimates,
                warnings(strata, estimates));
    }

    private static List<Part> parts(DensityEstimator estimator, List<Stratum> strata) {
        double standing = strata.stream().mapToDouble(Stratum::samplingUnitsStanding).sum();
        boolean anyFind =
                strata.stream()
                        .flatMap(s -> s.observations().stream())
                        .anyMatch(o -> o.individuals() > 0);
        DensityEstimator counting = estimator.withDetection(Detection.complete());
        List<Part> parts = new ArrayList<>();
        for (Stratum stratum : strata) {
            DensityEstimate counted = counting.estimate(stratum.observations());
            parts.add(
                    new Part(
                            stratum.samplingUnitsStanding() / standing,
                            Math.sqrt(1 - stratum.sampledShare()),
                            counted,
                            anyFind && counted.individuals() == 0
                                    ? oneSided(counting, counted, stratum)
                                    : counted.upper()));
        }
        return parts;
    }

    /** The bound of a stratum without a find, at the tail of the interval over the crop. */
    private static OptionalDouble oneSided(
            DensityEstimator counting, DensityEstimate counted, Stratum stratum) {
        double tail = 0.5 * (1 - counting.confidenceLevel());
        return counted.upper().isPresent()
                ? counting.zeroBound(stratum.observations()).upperLeaving(tail)
                : counted.upper();
    }

    private static double length(DoubleStream parts) {
        return Math.sqrt(parts.filter(p -> p != 0).map(p -> p * p).sum());
    }

    /** Joins what is open about detection with the limits of the counted density, in logarithms. */
    private static DensityInterval corrected(DensityEstimator estimator, double[] counted) {
        Detection detection = estimator.detection();
        double estimate = counted[0] / detection.mean();
        double variance = detection.varianceOfLog();
        double z = Quantiles.normal(estimator.confidenceLevel());
        double open = z * z * variance;
        double low = Math.pow(Math.log(counted[0] / counted[2]), 2);
        double high = Math.pow(Math.log(counted[3] / counted[0]), 2);
        boolean zero = counted[0] == 0;
        double upper =
                zero
                        ? counted[3] / detection.mean() * Math.exp(z * Math.sqrt(variance))
                        : estimate * Math.exp(Math.sqrt(high + open));
        double relativeError = Math.hypot(counted[1] / counted[0], Math.sqrt(variance));
        return new DensityInterval(
                estimate,
                zero ? OptionalDouble.empty() : OptionalDouble.of(estimate * relativeError),
                counted[2] == 0 ? 0 : estimate * Math.exp(-Math.sqrt(low + open)),
                Double.isInfinite(upper) ? OptionalDouble.empty() : OptionalDouble.of(upper),
                estimator.confidenceLevel(),
                OptionalDouble.empty());
    }

    private static List<String> warnings(List<Stratum> strata, List<DensityEstimate> estimates) {
        List<String> warnings = new ArrayList<>();
        for (int i = 0; i < strata.size(); i++) {
            for (String warning : estimates.get(i).warnings()) {
                warnings.add(strata.get(i).name() + ": " + warning);
            }
        }
        return warnings;
    }
}
