package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.pest.LifeStage;
import jarwise.pest.Pests;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads seeded filters and spikes of which is noted how many of which animals were put there.
 *
 * @param pests what can be counted
 */
record KnownSamples(Pests pests) {

    /** Notes of a sample that say which animals its known number is of. */
    static final String KNOWN_PEST = "known_pest";

    static final String KNOWN_STAGE = "known_stage";

    /** Says that the reader did not know: no find, and no miss of anything else. */
    private static final String UNSURE = "unsure";

    /** {@return the reading; empty where something is not noted or it was not read whole} */
    Optional<KnownReading> reading(TalliedSample tallied) {
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

    List<StageKey> stages(Subject subject) {
        return pests.find(subject.pest()).stream()
                .flatMap(pest -> pest.stagesIn(subject.stageGroup()).stream())
                .map(LifeStage::code)
                .map(stage -> new StageKey(subject.pest(), stage))
                .toList();
    }
}
