package jarwise.stats.estimate;

import jarwise.stats.count.CountData;
import jarwise.stats.count.CountFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Estimate of a group without a find: 0, with a one-sided bound on what could still be there. */
record NothingFound(DensityEstimator options, CountData data) {

    DensityEstimate estimate(SampleSummary samples) {
        boolean open = samples.sampleSize() == 1 && options.givenK().isEmpty();
        ZeroBound bound = bound(options.detection());
        OptionalDouble upper =
                open ? OptionalDouble.empty() : bound.upper(options.confidenceLevel());
        DensityInterval interval =
                new DensityInterval(
                        0,
                        OptionalDouble.empty(),
                        0,
                        upper,
                        options.confidenceLevel(),
                        OptionalDouble.empty());
        return new DensityEstimate(
                samples,
                interval,
                CountFit.givenK(data, options.givenK().orElse(Double.POSITIVE_INFINITY)),
                options.detection().isComplete() ? Optional.empty() : Optional.of(apparent(open)),
                open || options.actionThreshold().isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                bound.probabilityAbove(options.actionThreshold().getAsDouble())),
                warnings(open, upper));
    }

    ZeroBound bound(Detection detection) {
        return options.givenK().isPresent()
                ? ZeroBound.givenK(data, options.givenK().getAsDouble(), detection)
                : ZeroBound.withPrior(data, options.prior(), detection);
    }

    private ApparentDensity apparent(boolean open) {
        return new ApparentDensity(
                0,
                0,
                open
                        ? OptionalDouble.empty()
                        : bound(Detection.complete()).upper(options.confidenceLevel()));
    }

    private List<String> warnings(boolean open, OptionalDouble upper) {
        if (open) {
            return List.of(Warnings.ONE_SAMPLE);
        }
        if (upper.orElse(Double.POSITIVE_INFINITY) <= options.largestDensityConsidered(data)) {
            return List.of();
        }
        if (options.givenK().isPresent()) {
            return List.of(Warnings.HARDLY_LIMITED_AT_K);
        }
        List<String> warnings = new ArrayList<>();
        warnings.add(Warnings.hardlyLimited(samplesThatWouldLimit()));
        double median = options.prior().medianK();
        ZeroBound.givenK(data, median, options.detection())
                .upper(options.confidenceLevel())
                .ifPresent(known -> warnings.add(Warnings.ifKWereKnown(median, known)));
        return warnings;
    }

    private OptionalInt samplesThatWouldLimit() {
        return Warnings.smallest(
                more -> {
                    CountData larger = data.repeated(1 + more / data.samples());
                    OptionalDouble upper =
                            new NothingFound(options, larger)
                                    .bound(options.detection())
                                    .upper(options.confidenceLevel());
                    return upper.orElse(Double.POSITIVE_INFINITY)
                            <= options.largestDensityConsidered(larger);
                });
    }
}
