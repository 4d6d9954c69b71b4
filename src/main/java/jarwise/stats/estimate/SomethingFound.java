package jarwise.stats.estimate;

import jarwise.numeric.Quantiles;
import jarwise.stats.count.CountData;
import jarwise.stats.count.CountFit;
import jarwise.stats.count.CountLikelihood;
import jarwise.stats.count.DensityProfile;
import jarwise.stats.count.GivenK;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;

/** Estimate of a group with at least one find. */
final class SomethingFound {

    /** Share by which halving the largest density considered may move the upper limit. */
    private static final double MOST_CHANGE = 0.1;

    private static final double LN_2 = Math.log(2);

    private final DensityEstimator options;
    private final CountData data;
    private final CountFit fit;

    SomethingFound(DensityEstimator options, CountData data) {
        this.options = options;
        this.data = data;
        fit =
                options.givenK().isPresent()
                        ? CountFit.givenK(data, options.givenK().getAsDouble())
                        : CountFit.of(data);
    }

    /** Limits, and the chance to be above the action threshold. */
    record Limits(double lower, OptionalDouble upper, OptionalDouble above, List<String> warnings) {

        ApparentDensity around(double estimate) {
            return new ApparentDensity(estimate, lower, upper);
        }

        /** Equal tails leave the estimate out where the distribution leans far to one side. */
        Limits drawnOutTo(double estimate) {
            return new Limits(
                    Math.min(lower, estimate),
                    upper.isPresent()
                            ? OptionalDouble.of(Math.max(upper.getAsDouble(), estimate))
                            : upper,
                    above,
                    warnings);
        }
    }

    DensityEstimate estimate(SampleSummary samples) {
        Detection detection = options.detection();
        boolean open = samples.sampleSize() == 1 && options.givenK().isEmpty();
        double estimate = fit.density() / detection.mean();
        Limits limits = limits(detection, open).drawnOutTo(estimate);
        boolean cut = options.method() == IntervalMethod.INTEGRATED && !open;
        double errorOfLog =
                Math.hypot(
                        fit.standardErrorOfLog().orElseThrow(),
                        Math.sqrt(detection.varianceOfLog()));
        DensityInterval interval =
                new DensityInterval(
                        estimate,
                        OptionalDouble.of(estimate * errorOfLog),
                        limits.lower(),
                        limits.upper(),
                        options.confidenceLevel(),
                        cut
                                ? OptionalDouble.of(options.largestDensityConsidered(data))
                                : OptionalDouble.empty());
        return new DensityEstimate(
                samples,
                interval,
                fit,
                detection.isComplete() ? Optional.empty() : Optional.of(apparent(open)),
                limits.above(),
                limits.warnings());
    }

    private ApparentDensity apparent(boolean open) {
        double counted = fit.density();
        return limits(Detection.complete(), open).drawnOutTo(counted).around(counted);
    }

    private Limits limits(Detection detection, boolean open) {
        if (options.method() == IntervalMethod.PROFILE) {
            return profiled(detection, open);
        }
        return open
                ? new Limits(
                        0,
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        List.of(Warnings.ONE_SAMPLE))
                : integrated(detection);
    }

    private Limits integrated(Detection detection) {
        DensityEstimator corrected = options.withDetection(detection);
        double logLargest = corrected.logLargestDensityConsidered(data);
        IntegratedDensity distribution = distribution(detection, logLargest);
        double tail = options.tail();
        double upper = distribution.upper(tail);
        double halved = distribution.upperBelow(logLargest - LN_2, tail);
        return new Limits(
                distribution.lower(tail),
                OptionalDouble.of(upper),
                options.actionThreshold().isPresent()
                        ? OptionalDouble.of(
                                distribution.probabilityAbove(
                                        options.actionThreshold().getAsDouble()))
                        : OptionalDouble.empty(),
                halved < (1 - MOST_CHANGE) * upper
                        ? List.of(Warnings.hardlyLimited(samplesThatWouldLimit()))
                        : List.of());
    }

    private IntegratedDensity distribution(Detection detection, double logLargest) {
        CountLikelihood likelihood = new CountLikelihood(data);
        KNodes nodes =
                options.givenK().isPresent()
                        ? KNodes.given(GivenK.forShape(options.givenK().getAsDouble()))
                        : KNodes.where(
                                likelihood,
                                options.prior(),
                                fit,
                                logLargest + detection.logOfMean(),
                                options.tail());
        return IntegratedDensity.of(
                new MixedLikelihood(likelihood, nodes, Math.log(fit.density())),
                fit,
                detection,
                logLargest,
                options.tail());
    }

    /** {@return the chance that the density is above one} */
    double probabilityAbove(double density) {
        return options.method() == IntervalMethod.PROFILE
                ? ProfileDensity.of(profile(), options.detection(), options.tail())
                        .probabilityAbove(density)
                : distribution().probabilityAbove(density);
    }

    private IntegratedDensity distribution() {
        return distribution(options.detection(), options.logLargestDensityConsidered(data));
    }

    private OptionalInt samplesThatWouldLimit() {
        return Warnings.smallest(
                more ->
                        new SomethingFound(options, data.repeated(1 + more / data.samples()))
                                .isLimited());
    }

    private boolean isLimited() {
        double logHalf = options.logLargestDensityConsidered(data) - LN_2;
        IntegratedDensity distribution = distribution();
        return distribution.upperBelow(logHalf, options.tail())
                >= (1 - MOST_CHANGE) * distribution.upper(options.tail());
    }

    private Limits profiled(Detection detection, boolean open) {
        ProfileDensity corrected = ProfileDensity.of(profile(), detection, options.tail());
        double cut = Quantiles.chiSquared(options.confidenceLevel());
        OptionalDouble upper = corrected.upper(cut);
        return new Limits(
                corrected.lower(cut),
                upper,
                options.actionThreshold().isPresent()
                        ? OptionalDouble.of(
                                corrected.probabilityAbove(options.actionThreshold().getAsDouble()))
                        : OptionalDouble.empty(),
                Stream.of(
                                open ? Warnings.ONE_SAMPLE_PROFILED : "",
                                upper.isPresent() ? "" : Warnings.NO_UPPER_LIMIT)
                        .filter(warning -> !warning.isEmpty())
                        .toList());
    }

    private DensityProfile profile() {
        return options.givenK().isPresent()
                ? DensityProfile.givenK(data, options.givenK().getAsDouble())
                : DensityProfile.of(data);
    }
}
