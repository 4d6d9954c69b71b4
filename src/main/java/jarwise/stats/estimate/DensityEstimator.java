package jarwise.stats.estimate;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.count.CountData;
import jarwise.stats.count.GivenK;
import jarwise.stats.count.Observation;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a mean density is to be estimated: options that never change, and the deed.
 *
 * @param method how the interval is made
 * @param confidenceLevel level of the interval, in (0, 1)
 * @param givenK dispersion taken as known, above 0, infinite for Poisson; empty to estimate it
 * @param prior what is known of k where it is not given
 * @param detection extraction efficiency and reader sensitivity
 * @param actionThreshold density per sampling unit, on the corrected scale, at which control should
 *     start; above 0; empty if none
 */
public record DensityEstimator(
        IntervalMethod method,
        double confidenceLevel,
        OptionalDouble givenK,
        KPrior prior,
        Detection detection,
        OptionalDouble actionThreshold) {

    /** Checks the options; throws {@link InvalidInput} naming the first one out of range. */
    public DensityEstimator {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        givenK.ifPresent(GivenK::require);
        actionThreshold.ifPresent(value -> Require.positive("actionThreshold", value));
    }

    /** {@return integrated 95 % interval, k unknown, nothing lost in washing and reading} */
    public static DensityEstimator standard() {
        return new DensityEstimator(
                IntervalMethod.INTEGRATED,
                0.95,
                OptionalDouble.empty(),
                KPrior.standard(),
                Detection.complete(),
                OptionalDouble.empty());
    }

    /**
     * The same with another interval.
     *
     * @param newMethod how the interval is made
     * @return changed options
     */
    public DensityEstimator withMethod(IntervalMethod newMethod) {
        return new DensityEstimator(
                newMethod, confidenceLevel, givenK, prior, detection, actionThreshold);
    }

    /**
     * The same with another level.
     *
     * @param newLevel level of the interval, in (0, 1)
     * @return changed options
     */
    public DensityEstimator withConfidenceLevel(double newLevel) {
        return new DensityEstimator(method, newLevel, givenK, prior, detection, actionThreshold);
    }

    /**
     * The same with k taken as known.
     *
     * @param k dispersion, above 0; infinite for Poisson
     * @return changed options
     */
    public DensityEstimator withGivenK(double k) {
        return new DensityEstimator(
                method, confidenceLevel, OptionalDouble.of(k), prior, detection, actionThreshold);
    }

    /**
     * The same with another prior for k.
     *
     * @param newPrior what is known of k, say from this site's history
     * @return changed options
     */
    public DensityEstimator withPrior(KPrior newPrior) {
        return new DensityEstimator(
                method, confidenceLevel, givenK, newPrior, detection, actionThreshold);
    }

    /**
     * The same with losses in washing and reading.
     *
     * @param newDetection extraction efficiency and reader sensitivity
     * @return changed options
     */
    public DensityEstimator withDetection(Detection newDetection) {
        return new DensityEstimator(
                method, confidenceLevel, givenK, prior, newDetection, actionThreshold);
    }

    /**
     * The same with an action threshold.
     *
     * @param density density per sampling unit, on the corrected scale; above 0
     * @return changed options
     */
    public DensityEstimator withActionThreshold(double density) {
        return new DensityEstimator(
                method, confidenceLevel, givenK, prior, detection, OptionalDouble.of(density));
    }

    /**
     * How many are there per sampling unit, and how sure is that?
     *
     * <p>The estimate is the most likely density, divided by the expected share that is counted.
     * Its standard error is the estimate times the standard error of its logarithm (expected
     * information at the most likely k, with the variance of the logarithm of each measured share
     * added). The default interval is read from the likelihood integrated over k, see
     * docs/methods.md; where it would leave the estimate out, as it can at low levels or very small
     * k, it is drawn out to it. Without a find the upper limit is the one-sided {@link ZeroBound}
     * at the same level.
     *
     * <p><b>Assumes</b> random samples, drawn independently within the group, one density and one
     * k. Targeted samples find pests but do not estimate a mean.
     *
     * <p><b>Source.</b> Bliss and Fisher (1953) for the fit; Berger, Liseo and Wolpert (1999),
     * <i>Statistical Science</i> 14:1-28, for integrated likelihoods (from memory). Reference
     * values: {@code reference/mean-and-k}, {@code reference/zero-bound}; coverage: {@code
     * jarwise.bench.CoverageStudy}.
     *
     * @param observations the samples of one group, in any order; at least 1
     * @return the estimate. One sample without a given k has no upper limit and says so.
     * @throws InvalidInput if there is no sample
     */
    public DensityEstimate estimate(List<Observation> observations) {
        CountData data = CountData.of(observations);
        SampleSummary samples = SampleSummary.of(observations);
        return samples.individuals() == 0
                ? new NothingFound(this, data).estimate(samples)
                : new SomethingFound(this, data).estimate(samples);
    }

    /**
     * The bound that samples without a find set, at any level.
     *
     * @param observations the samples of one group, in any order; at least 1
     * @return the bound
     * @throws InvalidInput if there is no sample, or a find
     */
    public ZeroBound zeroBound(List<Observation> observations) {
        return new NothingFound(this, CountData.of(observations)).bound(detection);
    }

    /**
     * How likely is the density above the action threshold? The same number as in {@link
     * #estimate}, without the interval, which takes most of its time.
     *
     * @param observations the samples of one group, in any order; at least 1
     * @return chance, 0 to 1; empty where the estimate has none: no action threshold, or one sample
     *     without a given k
     * @throws InvalidInput if there is no sample
     */
    public OptionalDouble chanceAboveThreshold(List<Observation> observations) {
        CountData data = CountData.of(observations);
        boolean open = observations.size() == 1 && givenK.isEmpty();
        boolean silent = open && (data.individuals() == 0 || method == IntervalMethod.INTEGRATED);
        return silent || actionThreshold.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(probabilityAboveThreshold(data));
    }

    /** What the interval leaves out on each side; exact from level 0.5 on. */
    double tail() {
        return 0.5 * (1 - confidenceLevel);
    }

    /** The chance to be above the action threshold, which must be there. */
    double probabilityAboveThreshold(CountData data) {
        double threshold = actionThreshold.orElseThrow();
        return data.individuals() == 0
                ? new NothingFound(this, data).bound(detection).probabilityAbove(threshold)
                : new SomethingFound(this, data).probabilityAbove(threshold);
    }

    /**
     * The largest density that the integrated interval considers: 50 (individuals + 1) over the
     * exposure that counts.
     *
     * <p>For large densities the likelihood falls only like density^(−k J), so that without this
     * end the integral over k does not exist: it is part of the method.
     */
    double largestDensityConsidered(CountData data) {
        return 50 * (data.individuals() + 1) / (data.totalExposure() * detection.mean());
    }

    /** Its natural logarithm, also where it is beyond all numbers. */
    double logLargestDensityConsidered(CountData data) {
        double counted = 50 * (data.individuals() + 1) / data.totalExposure();
        return Math.log(counted) - detection.logOfMean();
    }
}
