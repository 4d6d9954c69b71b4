package jarwise.usecase.intake;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.StageKey;
import jarwise.usecase.intake.SampleDifference.ChangedFact;
import jarwise.usecase.intake.SampleDifference.CountDifference;
import jarwise.usecase.intake.SampleDifference.StepDifference;
import jarwise.usecase.intake.SheetSample.SheetCount;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Holds one sample of a sheet against what is on record of it. What the sheet said before counts as
 * the same even where a person has corrected it here since: the correction stays.
 */
final class Comparison {

    private final SheetSample told;
    private final List<SampleEvent> events;
    private final Set<EventId> slips = new HashSet<>();
    private final Set<String> takenBack;
    private final Optional<LocalDate> day;

    private Comparison(
            SheetSample told,
            Collection<SampleEvent> events,
            Set<String> takenBack,
            Optional<LocalDate> day) {
        this.told = told;
        this.day = day;
        this.events = events.stream().sorted(Comparator.comparing(SampleEvent::at)).toList();
        this.takenBack = takenBack;
        for (SampleEvent event : events) {
            if (event.deed() instanceof Deed.Voided voided) {
                slips.add(voided.slip());
            } else if (event.deed() instanceof Deed.StepTaken step) {
                step.replaces().ifPresent(slips::add);
            }
        }
    }

    /**
     * {@return what is new or different}
     *
     * @param told the sample as the sheet tells it
     * @param events everything on record of it
     * @param takenBack imports that were taken back
     * @param day on which it was cut if neither the sheet nor the record says
     */
    static SampleDifference of(
            SheetSample told,
            Collection<SampleEvent> events,
            Set<String> takenBack,
            Optional<LocalDate> day) {
        return new Comparison(told, events, takenBack, day).difference();
    }

    private SampleDifference difference() {
        List<StepDifference> steps = new ArrayList<>();
        told.facts()
                .forEach(
                        (step, facts) ->
                                compareStep(step, dated(step, facts)).ifPresent(steps::add));
        List<CountDifference> counts = new ArrayList<>();
        List<SheetCount> same = new ArrayList<>();
        for (SheetCount count : told.counts()) {
            Optional<CountDifference> difference = compareCount(count);
            difference.ifPresentOrElse(counts::add, () -> same.add(count));
        }
        return new SampleDifference(
                told.code(), told.row(), events.isEmpty(), steps, counts, same, revived());
    }

    /** A sample ended because its import was taken back lives again when the sheet comes again. */
    private List<EventId> revived() {
        return standing().stream()
                .filter(event -> event.batch().map(takenBack::contains).orElse(false))
                .filter(event -> event.deed() instanceof Deed.StepTaken)
                .map(SampleEvent::id)
                .toList();
    }

    private List<SampleEvent> standing() {
        return events.stream().filter(event -> !slips.contains(event.id())).toList();
    }

    /** A sheet that gives no date takes nothing from the one on record. */
    private Map<String, String> dated(Step step, Map<String, String> facts) {
        if (step != Step.CUT || facts.containsKey(Facts.COLLECTED_ON)) {
            return facts;
        }
        Optional<String> known =
                last(standing().stream().filter(this::counts), step)
                        .map(event -> factsOf(event).get(Facts.COLLECTED_ON))
                        .or(() -> day.map(LocalDate::toString));
        Map<String, String> dated = new HashMap<>(facts);
        known.ifPresent(text -> dated.put(Facts.COLLECTED_ON, text));
        return dated;
    }

    private Optional<StepDifference> compareStep(Step step, Map<String, String> facts) {
        Optional<SampleEvent> sheetBefore = last(events.stream().filter(this::isOfSheet), step);
        if (sheetBefore.map(event -> factsOf(event).equals(facts)).orElse(false)) {
            return Optional.empty();
        }
        Optional<SampleEvent> onRecord = last(standing().stream().filter(this::counts), step);
        if (onRecord.isEmpty()) {
            return Optional.of(new StepDifference(step, facts, Optional.empty(), List.of()));
        }
        Map<String, String> known = factsOf(onRecord.get());
        Map<String, String> merged = new HashMap<>(known);
        sheetBefore.ifPresent(before -> merged.keySet().removeAll(factsOf(before).keySet()));
        merged.putAll(facts);
        List<ChangedFact> changed = changed(known, merged);
        return changed.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new StepDifference(
                                step, merged, Optional.of(onRecord.get().id()), changed));
    }

    private Optional<SampleEvent> last(java.util.stream.Stream<SampleEvent> among, Step step) {
        return among.filter(
                        event ->
                                event.deed() instanceof Deed.StepTaken taken
                                        && taken.step() == step)
                .reduce((earlier, later) -> later);
    }

    /** What an import that was taken back said counts for nothing. */
    private boolean counts(SampleEvent event) {
        return event.batch().map(batch -> !takenBack.contains(batch)).orElse(true);
    }

    private boolean isOfSheet(SampleEvent event) {
        return event.batch().isPresent() && counts(event);
    }

    private static Map<String, String> factsOf(SampleEvent event) {
        return event.deed() instanceof Deed.StepTaken step ? step.facts() : Map.of();
    }

    private static List<ChangedFact> changed(
            Map<String, String> before, Map<String, String> after) {
        Set<String> names = new TreeSet<>(before.keySet());
        names.addAll(after.keySet());
        names.remove(Facts.AT);
        return names.stream()
                .map(
                        name ->
                                new ChangedFact(
                                        name,
                                        before.getOrDefault(name, ""),
                                        after.getOrDefault(name, "")))
                .filter(fact -> !fact.before().equals(fact.after()))
                .toList();
    }

    private Optional<CountDifference> compareCount(SheetCount count) {
        List<SampleEvent> ofKey =
                events.stream().filter(event -> isCountOf(event, count.key())).toList();
        Optional<SampleEvent> sheetBefore =
                ofKey.stream().filter(this::isOfSheet).reduce((earlier, later) -> later);
        if (sheetBefore.isPresent() && individuals(sheetBefore.get()) == count.individuals()) {
            return Optional.empty();
        }
        List<SampleEvent> onRecord =
                ofKey.stream().filter(event -> !slips.contains(event.id())).toList();
        boolean readToEnd = onRecord.isEmpty() && doneFor(count.key());
        if (onRecord.isEmpty() && !readToEnd) {
            return Optional.of(
                    new CountDifference(
                            count.key(), Optional.empty(), count.individuals(), List.of()));
        }
        long known = onRecord.stream().mapToLong(Comparison::individuals).sum();
        return known == count.individuals()
                ? Optional.empty()
                : Optional.of(
                        new CountDifference(
                                count.key(),
                                Optional.of(known),
                                count.individuals(),
                                onRecord.stream().map(SampleEvent::id).toList()));
    }

    /** A filter called done says zero for every stage that has no press. */
    private boolean doneFor(StageKey key) {
        Set<EventId> reopened = new HashSet<>();
        events.stream()
                .map(SampleEvent::deed)
                .filter(Deed.Reopened.class::isInstance)
                .forEach(deed -> reopened.add(((Deed.Reopened) deed).done()));
        return standing().stream()
                .filter(event -> !reopened.contains(event.id()))
                .anyMatch(
                        event ->
                                event.deed() instanceof Deed.FilterDone done
                                        && done.pests().contains(key.pest()));
    }

    private static boolean isCountOf(SampleEvent event, StageKey key) {
        return event.deed() instanceof Deed.Counted counted
                && counted.pest().equals(key.pest())
                && counted.lifeStage().equals(key.lifeStage());
    }

    private static long individuals(SampleEvent event) {
        return event.deed() instanceof Deed.Counted counted ? counted.individuals() : 0;
    }

    static List<SampleDifference> ofAll(
            List<SheetSample> samples,
            Map<SampleCode, List<SampleEvent>> events,
            Set<String> takenBack,
            Optional<LocalDate> day) {
        return samples.stream()
                .map(
                        sample ->
                                of(
                                        sample,
                                        Objects.requireNonNullElse(
                                                events.get(sample.code()), List.<SampleEvent>of()),
                                        takenBack,
                                        day))
                .toList();
    }
}
