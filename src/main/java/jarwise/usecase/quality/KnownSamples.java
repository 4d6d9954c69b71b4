package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.pest.LifeStage;
import jarwise.pest.Pests;
import jarwise.sample.CollectedSample;
import jarwise.sample.DerivedCode;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SeededFilter;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads seeded filters and spikes of which is known how many of which animals were put there.
 *
 * @param pests what can be counted
 * @param filters filters of which is known what lies where, by the code on their label
 */
record KnownSamples(Pests pests, Map<SampleCode, SeededFilter> filters) {

    /** Notes of a sample that say which animals its known number is of. */
    static final String KNOWN_PEST = "known_pest";

    static final String KNOWN_STAGE = "known_stage";

    /** Says that the reader did not know: no find, and no miss of anything else. */
    static final String UNSURE = "unsure";

    /**
     * {@return a reading for each kind of animal that was there; none where something is not noted
     * or it was not read whole}
     */
    List<KnownReading> readings(TalliedSample tallied) {
        return filterOf(tallied.sample())
                .map(filter -> ofFilter(tallied, filter))
                .orElseGet(() -> ofNotes(tallied).stream().toList());
    }

    private Optional<SeededFilter> filterOf(CollectedSample sample) {
        return DerivedCode.of(sample.code())
                .filter(derived -> derived.role() == SampleRole.SEEDED)
                .map(derived -> filters.get(derived.base()));
    }

    /**
     * What lies on the filter is on record; from the day it was retired on nobody vouches for it.
     */
    private List<KnownReading> ofFilter(TalliedSample tallied, SeededFilter filter) {
        CollectedSample sample = tallied.sample();
        Optional<String> reader = sample.reading().reader();
        Optional<LocalDate> day =
                sample.collectedOn()
                        .filter(
                                on ->
                                        filter.retiredOn()
                                                .filter(end -> !on.isBefore(end))
                                                .isEmpty());
        if (reader.isEmpty() || day.isEmpty() || !readWhole(sample)) {
            return List.of();
        }
        List<KnownReading> readings = new ArrayList<>();
        for (Map.Entry<Subject, Long> known : placed(filter).entrySet()) {
            finds(tallied.individuals(), known.getKey(), known.getValue(), day.get())
                    .map(finds -> withoutOthers(finds, tallied, filter, known.getKey()))
                    .map(
                            finds ->
                                    new KnownReading(
                                            sample.code(),
                                            reader.get(),
                                            reader.get(),
                                            known.getKey(),
                                            finds))
                    .ifPresent(readings::add);
        }
        return readings;
    }

    private Map<Subject, Long> placed(SeededFilter filter) {
        Map<Subject, Long> placed = new LinkedHashMap<>();
        for (SeededFilter.Placed one : filter.placed()) {
            pests.find(one.pest()).stream()
                    .flatMap(pest -> pest.lifeStages().stream())
                    .filter(stage -> stage.code().equals(one.lifeStage()))
                    .map(stage -> new Subject(one.pest(), stage.group()))
                    .forEach(subject -> placed.merge(subject, 1L, Long::sum));
        }
        return placed;
    }

    /** Other animals that were placed as well are no false finds. */
    private KnownFinds withoutOthers(
            KnownFinds finds, TalliedSample tallied, SeededFilter filter, Subject subject) {
        long there = 0;
        for (Map.Entry<Subject, Long> other : placed(filter).entrySet()) {
            if (!other.getKey().equals(subject)) {
                long counted =
                        stages(other.getKey()).stream()
                                .mapToLong(key -> tallied.individuals().getOrDefault(key, 0L))
                                .sum();
                there += Math.min(counted, other.getValue());
            }
        }
        return new KnownFinds(
                finds.readings(),
                finds.found(),
                finds.known(),
                finds.falseFinds() - there,
                finds.first(),
                finds.last());
    }

    private Optional<KnownReading> ofNotes(TalliedSample tallied) {
        CollectedSample sample = tallied.sample();
        Optional<Subject> subject = subject(sample.attributes());
        Optional<String> reader = sample.reading().reader();
        Optional<LocalDate> day = sample.collectedOn();
        Optional<String> whose =
                sample.role() == SampleRole.SPIKE
                        ? sample.wash().fluid().map(Fields::wordOf)
                        : reader;
        if (subject.isEmpty()
                || day.isEmpty()
                || whose.isEmpty()
                || sample.known().isEmpty()
                || sample.known().getAsInt() < 1
                || !readWhole(sample)) {
            return Optional.empty();
        }
        return finds(tallied.individuals(), subject.get(), sample.known().getAsInt(), day.get())
                .map(
                        finds ->
                                new KnownReading(
                                        sample.code(),
                                        whose.get(),
                                        reader.orElse(""),
                                        subject.get(),
                                        finds));
    }

    private static boolean readWhole(CollectedSample sample) {
        return sample.state() == SampleState.READ && sample.reading().cellsObscured() == 0;
    }

    private Optional<Subject> subject(Map<String, String> notes) {
        String group = notes.getOrDefault(KNOWN_STAGE, "");
        return pests.find(notes.getOrDefault(KNOWN_PEST, ""))
                .filter(pest -> pest.stageGroups().contains(group))
                .map(pest -> new Subject(pest.code(), group));
    }

    private Optional<KnownFinds> finds(
            Map<StageKey, Long> counts, Subject subject, long known, LocalDate day) {
        Set<StageKey> placed = Set.copyOf(stages(subject));
        if (!counts.keySet().containsAll(placed)) {
            return Optional.empty();
        }
        long counted = 0;
        long others = 0;
        for (Map.Entry<StageKey, Long> count : counts.entrySet()) {
            if (placed.contains(count.getKey())) {
                counted += count.getValue();
            } else if (!count.getKey().pest().equals(UNSURE)) {
                others += count.getValue();
            }
        }
        long found = Math.min(counted, known);
        return Optional.of(new KnownFinds(1, found, known, others + counted - found, day, day));
    }

    private List<StageKey> stages(Subject subject) {
        return stages(pests, subject);
    }

    /** {@return the stages of a kind of animal} */
    static List<StageKey> stages(Pests pests, Subject subject) {
        return pests.find(subject.pest()).stream()
                .flatMap(pest -> pest.stagesIn(subject.stageGroup()).stream())
                .map(LifeStage::code)
                .map(stage -> new StageKey(subject.pest(), stage))
                .toList();
    }
}
