package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Corrects what a step noted, or adds a step that nobody recorded. The old record stays.
 *
 * @param log where events go
 */
public record CorrectSample(SampleLog log) {

    /**
     * Corrects facts.
     *
     * @param fields the facts by their names, and {@code reason}; a field that is missing is left
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, String person, SampleCode code, Fields fields) {
        Map<Step, Map<String, String>> facts = new SampleFields(fields, log.now()).facts();
        String reason = fields.needed("reason");
        log.alone(
                () -> {
                    SampleFold fold = log.find(nursery, code);
                    List<Deed> deeds = new ArrayList<>();
                    for (Map.Entry<Step, List<String>> step : SampleFields.FACTS.entrySet()) {
                        Map<String, String> typed = facts.getOrDefault(step.getKey(), Map.of());
                        change(fold, step.getKey(), typed, fields, reason).ifPresent(deeds::add);
                    }
                    if (deeds.isEmpty()) {
                        fields.fault("reason", Message.of("sample.correct.nothing"));
                    }
                    fields.refuseIfAny();
                    log.append(nursery, person, code, deeds);
                    return code;
                });
    }

    /** The step as it is now with what was typed, if that differs; a field left out stays. */
    private static Optional<Deed> change(
            SampleFold fold, Step step, Map<String, String> typed, Fields fields, String reason) {
        Optional<SampleEvent> record = recordOf(fold, step);
        Map<String, String> before = record.map(CorrectSample::factsOf).orElse(Map.of());
        Map<String, String> after = new TreeMap<>(before);
        for (String fact : Objects.requireNonNull(SampleFields.FACTS.get(step))) {
            if (fields.typed().containsKey(fact)) {
                after.remove(fact);
            }
        }
        after.putAll(typed);
        if (after.equals(before)) {
            return Optional.empty();
        }
        // A correction says what was noted, not when the step was: the time stays as it was.
        after.putIfAbsent(Facts.AT, record.map(CorrectSample::timeOf).orElse(""));
        return Optional.of(
                new Deed.StepTaken(step, after, record.map(SampleEvent::id), Optional.of(reason)));
    }

    /**
     * Says when a step was taken.
     *
     * @param fields {@code at}, and {@code reason} where the step is on record already
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void timeOfStep(
            String nursery, String person, SampleCode code, Step step, ZoneId zone, Fields fields) {
        fields.needed("at");
        Optional<Instant> at = fields.moment("at", zone);
        at.filter(moment -> moment.isAfter(log.now()))
                .ifPresent(moment -> fields.fault("at", Message.of("sample.step.future")));
        if (step.endsWithoutCount() || step == Step.REGISTERED) {
            fields.fault("at", Message.of("sample.step.not-so"));
        }
        log.alone(
                () -> {
                    SampleFold fold = log.find(nursery, code);
                    notBeforeItWasCut(
                            fold, at.map(then -> then.atZone(zone).toLocalDate()), fields);
                    Optional<SampleEvent> record = recordOf(fold, step);
                    Optional<String> reason = record.map(known -> fields.needed("reason"));
                    fields.refuseIfAny();
                    Map<String, String> facts =
                            new TreeMap<>(record.map(CorrectSample::factsOf).orElse(Map.of()));
                    facts.put(Facts.AT, at.orElseThrow().toString());
                    log.append(
                            nursery,
                            person,
                            code,
                            List.of(
                                    new Deed.StepTaken(
                                            step, facts, record.map(SampleEvent::id), reason)));
                    return code;
                });
    }

    private static void notBeforeItWasCut(SampleFold fold, Optional<LocalDate> day, Fields fields) {
        Optional<LocalDate> cut = fold.sample().collectedOn();
        if (cut.isPresent() && day.filter(then -> then.isBefore(cut.get())).isPresent()) {
            fields.fault("at", Message.of("sample.step.before-cut", cut.get().toString()));
        }
    }

    static Optional<SampleEvent> recordOf(SampleFold fold, Step step) {
        return SampleLog.standing(fold).stream()
                .filter(
                        event ->
                                event.deed() instanceof Deed.StepTaken taken
                                        && taken.step() == step)
                .min(java.util.Comparator.comparing(SampleEvent::id));
    }

    private static Map<String, String> factsOf(SampleEvent event) {
        return event.deed() instanceof Deed.StepTaken step ? step.facts() : Map.of();
    }

    private static String timeOf(SampleEvent event) {
        return event.batch().isPresent() ? "" : event.at().toString();
    }
}
