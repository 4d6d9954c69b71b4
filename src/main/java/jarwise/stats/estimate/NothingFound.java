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
        double upper = bound.upper(options.confidenceLevel());
        DensityInterval interval =
                new DensityInterval(
                        0,
                        OptionalDouble.empty(),
                        0,
                        open ? OptionalDouble.empty() : OptionalDouble.of(upper),
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
        double upper = bound(Detection.complete()).upper(options.confidenceLevel());
        return new ApparentDensity(0, 0, open ? OptionalDouble.empty() : OptionalDouble.of(upper));
    }

    private List<String> warnings(boolean open, double upper) {
        List<String> warnings = new ArrayList<>();
        if (open) {
            warnings.add(Warnings.ONE_SAMPLE);
        } else if (options.givenK().isEmpty() && upper > options.largestDensityConsidered(data)) {
            double median = options.prior().medianK();
            double known =
                    ZeroBound.givenK(data, median, options.detection())
                            .upper(options.confidenceLevel());
            warnings.add(Warnings.hardlyLimited(samplesThatWouldLimit()));
            warnings.add(
                    "The bound takes k as unknown; if k were known to be %s it would be %s."
                            .formatted(Warnings.number(median), Warnings.number(known)));
        }
        return warnings;
    }

    private OptionalInt samplesThatWouldLimit() {
        return Warnings.smallest(
                more -> {
                    CountData larger = data.repeated(1 + more / data.samples());
                    double upper =
                            new NothingFound(options, larger)
                                    .bound(options.detection())
                                    .upper(options.confidenceLevel());
                    return upper <= options.largestDensityConsidered(larger);
                });
    }
}
