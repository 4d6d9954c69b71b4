package jarwise.tally;

import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.stats.filter.CellWalk;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Everything that the events of one sample say.
 *
 * @param sample facts and state
 * @param tally counts
 * @param openQuestions steps recorded twice that nobody has settled
 * @param history all events, each once, by device time, then identity
 */
public record SampleFold(
        CollectedSample sample,
        Tally tally,
        List<OpenQuestion> openQuestions,
        List<SampleEvent> history) {

    /**
     * Folds the events of one sample. Order and repeats make no difference.
     *
     * @param code the sample
     * @param events its events
     * @param stagesOf life stages of each pest, by pest code
     */
    public static SampleFold of(
            SampleCode code, Collection<SampleEvent> events, Map<String, List<String>> stagesOf) {
        Map<EventId, SampleEvent> distinct = Tally.distinct(events);
        Set<EventId> slips = Tally.slips(distinct.values());
        List<OpenQuestion> questions = new ArrayList<>();
        Map<Step, SampleEvent> steps = new EnumMap<>(Step.class);
        for (Step step : Step.values()) {
            List<SampleEvent> records =
                    distinct.values().stream()
                            .filter(event -> Tally.isStep(event, step))
                            .filter(event -> !slips.contains(event.id()))
                            .toList();
            if (!records.isEmpty()) {
                steps.put(step, records.get(0));
                if (records.stream().map(SampleFold::facts).distinct().count() > 1) {
                    questions.add(new OpenQuestion(step, records));
                }
            }
        }
        FactReader reader = new FactReader(code, facts(steps), attributesOf(steps));
        Tally tally = Tally.of(distinct.values(), stagesOf, reader.walk());
        CollectedSample sample =
                reader.sample(timesOf(steps), tally, stateOf(steps, tally, facts(steps)));
        return new SampleFold(sample, tally, List.copyOf(questions), history(distinct));
    }

    /** {@return the events that no other one takes back or replaces, by identity} */
    List<SampleEvent> standing() {
        Set<EventId> slips = Tally.slips(history);
        return history.stream()
                .filter(event -> !slips.contains(event.id()))
                .sorted(Comparator.comparing(SampleEvent::id))
                .toList();
    }

    /** {@return the passes in which the filter was read; empty where nobody noted them} */
    Optional<CellWalk> walk() {
        Map<Step, SampleEvent> steps = new EnumMap<>(Step.class);
        for (SampleEvent event : standing()) {
            if (event.deed() instanceof Deed.StepTaken taken) {
                steps.putIfAbsent(taken.step(), event);
            }
        }
        return new FactReader(sample.code(), facts(steps), Map.of()).walk();
    }

    private static Map<String, String> facts(SampleEvent event) {
        return event.deed() instanceof Deed.StepTaken step ? step.facts() : Map.of();
    }

    private static Map<String, String> facts(Map<Step, SampleEvent> steps) {
        Map<String, String> facts = new TreeMap<>();
        steps.values().forEach(event -> facts.putAll(facts(event)));
        return facts;
    }

    private static Map<String, String> attributesOf(Map<Step, SampleEvent> steps) {
        Map<String, String> attributes = new TreeMap<>();
        facts(steps)
                .forEach(
                        (name, value) -> {
                            if (name.startsWith(Facts.OTHER)) {
                                attributes.put(name.substring(Facts.OTHER.length()), value);
                            }
                        });
        return attributes;
    }

    private static CollectedSample.Times timesOf(Map<Step, SampleEvent> steps) {
        return new CollectedSample.Times(
                at(steps, Step.CUT),
                at(steps, Step.WASHED),
                at(steps, Step.FREEZER_IN),
                at(steps, Step.FREEZER_OUT),
                at(steps, Step.READ));
    }

    private static Optional<Instant> at(Map<Step, SampleEvent> steps, Step step) {
        return Optional.ofNullable(steps.get(step)).flatMap(SampleFold::stepTime);
    }

    /**
     * A step typed in later says when it really was, or that nobody noted it; else the device's
     * clock did. The clock of an import says nothing about the jar.
     */
    private static Optional<Instant> stepTime(SampleEvent event) {
        String said = facts(event).get(Facts.AT);
        if (said == null) {
            return Optional.of(event.at()).filter(at -> event.batch().isEmpty());
        }
        return said.isBlank() ? Optional.empty() : Optional.of(Instant.parse(said));
    }

    private static SampleState stateOf(
            Map<Step, SampleEvent> steps, Tally tally, Map<String, String> facts) {
        if (steps.containsKey(Step.DISCARDED)) {
            return SampleState.DISCARDED;
        }
        if (steps.containsKey(Step.LOST)) {
            return SampleState.LOST;
        }
        if (steps.containsKey(Step.SPILLED)) {
            return SampleState.SPILLED;
        }
        if (tally.hasCounts()) {
            if (tally.byCell() && !tally.done() && !steps.containsKey(Step.READ)) {
                return SampleState.READING;
            }
            return FactReader.partlyRead(facts, tally) ? SampleState.PARTLY_READ : SampleState.READ;
        }
        if (steps.containsKey(Step.FREEZER_IN)) {
            return SampleState.FROZEN;
        }
        if (steps.containsKey(Step.WASHED)) {
            return SampleState.WASHED;
        }
        return steps.containsKey(Step.CUT) ? SampleState.CUT : SampleState.PLANNED;
    }

    private static List<SampleEvent> history(Map<EventId, SampleEvent> distinct) {
        return distinct.values().stream()
                .sorted(Comparator.comparing(SampleEvent::at).thenComparing(SampleEvent::id))
                .toList();
    }
}
