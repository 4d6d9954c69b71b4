package jarwise.usecase.findings;

import jarwise.decision.Stand;
import jarwise.sample.CollectedSample;
import jarwise.sample.Fluid;
import jarwise.sample.SamplingMethod;
import jarwise.stats.count.Observation;
import jarwise.store.CountQuery;
import jarwise.store.CountedSample;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** The samples cut on one day, and what was worked out from them. */
final class SampleDay {

    private final String nursery;
    private final LocalDate day;
    private final List<TalliedSample> samples;
    private final Map<List<StageKey>, List<List<Observation>>> washed = new ConcurrentHashMap<>();

    SampleDay(String nursery, LocalDate day, List<TalliedSample> samples) {
        this.nursery = nursery;
        this.day = day;
        this.samples = List.copyOf(samples);
    }

    List<TalliedSample> samples() {
        return samples;
    }

    boolean isEmpty() {
        return samples.isEmpty();
    }

    /**
     * {@return random washed samples in groups of one stand, by stand; without jars of plain water,
     * in which fewer animals come off}
     */
    List<List<Observation>> washed(List<StageKey> stages) {
        return washed.computeIfAbsent(stages, this::grouped);
    }

    private List<List<Observation>> grouped(List<StageKey> stages) {
        CountQuery query = CountQuery.random(nursery, SamplingMethod.WASH, stages, day, day);
        Map<Stand, List<Observation>> groups = new TreeMap<>();
        for (TalliedSample tallied : samples) {
            query.of(tallied)
                    .filter(counted -> says(counted.sample()))
                    .ifPresent(
                            counted ->
                                    groups.computeIfAbsent(
                                                    SiteCounts.standOf(counted.sample()),
                                                    stand -> new ArrayList<>())
                                            .add(observation(counted)));
        }
        return groups.values().stream().map(List::copyOf).toList();
    }

    private static boolean says(CollectedSample sample) {
        return !sample.wash().fluid().equals(Optional.of(Fluid.WATER))
                && sample.reading().filterShare() > 0;
    }

    private static Observation observation(CountedSample counted) {
        CollectedSample sample = counted.sample();
        return new Observation(
                counted.individuals(), sample.samplingUnits(), sample.reading().filterShare());
    }
}
