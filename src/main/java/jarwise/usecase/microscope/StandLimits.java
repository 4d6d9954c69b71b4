package jarwise.usecase.microscope;

import jarwise.decision.Finding.Subject;
import jarwise.sample.CollectedSample;
import jarwise.sample.CollectedSample.Reading;
import jarwise.sample.Fluid;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.usecase.EstimateDensity;
import jarwise.usecase.findings.Group;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.findings.Sorting;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/**
 * Filters of one stand and round that wait, and what each would do to the verdict on one kind of
 * animal.
 *
 * @param estimate the engine with what the site has chosen
 * @param group all samples of the stand and round
 * @param reader who will read
 */
record StandLimits(EstimateDensity estimate, Group group, Optional<String> reader) {

    /** Filters of which one is as good as another. */
    private record Kind(double samplingUnits, Optional<Fluid> fluid) {}

    /** {@return limits of those of the filters that will enter the mean} */
    Map<SampleCode, StopLimits.Limit> of(List<CollectedSample> waiting) {
        Map<Kind, StopLimits.Limit> known = new HashMap<>();
        Map<SampleCode, StopLimits.Limit> limits = new HashMap<>();
        SiteRules rules = estimate.rules();
        if (rules.lineOn(estimate.subject(), group.day()).isEmpty()) {
            return limits;
        }
        for (CollectedSample filter : waiting) {
            if (entersTheMean(filter)) {
                Kind kind = new Kind(filter.samplingUnits(), filter.wash().fluid());
                limits.put(filter.code(), known.computeIfAbsent(kind, k -> limit(filter)));
            }
        }
        return limits;
    }

    private boolean entersTheMean(CollectedSample filter) {
        Group alone =
                new Group(
                        group.stand(),
                        group.day(),
                        List.of(read(filter)),
                        Map.of(filter.code(), 0L));
        return !new Sorting(alone, estimate.rules().protocolOn(group.day())).used().isEmpty();
    }

    private StopLimits.Limit limit(CollectedSample filter) {
        Subject subject = estimate.subject();
        LimitSearch.Found found =
                LimitSearch.search(chanceAbove(filter), estimate.rules().limitsOn(group.day()));
        return new StopLimits.Limit(
                subject.pest(),
                subject.stageGroup(),
                estimate.rules().stagesOf(subject),
                found.below(),
                found.above(),
                found.belowFrom().orElse(0));
    }

    /** The chance to be above the line by the number on this filter, the others as they stand. */
    private IntFunction<OptionalDouble> chanceAbove(CollectedSample filter) {
        List<CollectedSample> samples = new ArrayList<>();
        Map<SampleCode, Long> individuals = new HashMap<>();
        for (CollectedSample sample : group.samples()) {
            boolean isIt = sample.code().equals(filter.code());
            samples.add(isIt ? read(filter) : sample);
            Long counted = group.individuals().get(sample.code());
            if (counted != null) {
                individuals.put(sample.code(), counted);
            }
        }
        return number -> {
            individuals.put(filter.code(), (long) number);
            return estimate.chanceAbove(
                    new Group(group.stand(), group.day(), samples, individuals));
        };
    }

    private CollectedSample read(CollectedSample filter) {
        return new CollectedSample(
                filter.code(),
                filter.method(),
                filter.purpose(),
                filter.role(),
                filter.collectedOn(),
                filter.place(),
                filter.samplingUnits(),
                filter.wash(),
                filter.times(),
                new Reading(reader, 1, 1, 0, OptionalDouble.empty()),
                filter.known(),
                filter.recountOf(),
                SampleState.READ,
                filter.attributes());
    }
}
