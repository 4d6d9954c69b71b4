package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.store.PestStore;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Adds counts of stages that have none yet. A blank is "not read", a zero is a count.
 *
 * @param log where events go
 * @param pests what can be counted
 * @param first acts on first counts
 */
public record EnterCounts(SampleLog log, PestStore pests, FirstCounts first) {

    /**
     * Adds counts.
     *
     * @param fields {@code count:PEST:stage}, and the facts of the reading
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, String person, SampleCode code, Fields fields) {
        SampleFields typed = new SampleFields(fields, log.now());
        Map<StageKey, Long> counts = typed.counts();
        Map<String, String> reading = typed.facts().getOrDefault(Step.READ, Map.of());
        CountDeeds.checkStages(fields, counts.keySet(), pests.pests());
        if (counts.isEmpty()) {
            fields.fault("counts", Message.of("sample.counts.none"));
        }
        log.alone(
                () -> {
                    SampleFold fold = log.find(nursery, code);
                    if (SampleLog.hasEnded(fold)) {
                        fields.fault("counts", Message.of("sample.ended"));
                    }
                    counts.keySet().stream()
                            .filter(key -> fold.tally().of(key).isPresent())
                            .forEach(key -> refuseTwice(fields, key));
                    fields.refuseIfAny();
                    List<Deed> deeds = deeds(fold, counts, reading);
                    first.around(
                            nursery, List.of(code), () -> log.append(nursery, person, code, deeds));
                    return code;
                });
    }

    private static void refuseTwice(Fields fields, StageKey key) {
        fields.fault(
                SampleFields.COUNT + key.pest() + ":" + key.lifeStage(),
                Message.of("sample.counts.there"));
    }

    private static List<Deed> deeds(
            SampleFold fold, Map<StageKey, Long> counts, Map<String, String> reading) {
        List<Deed> deeds = new ArrayList<>();
        boolean read =
                SampleLog.standing(fold).stream()
                        .anyMatch(
                                event ->
                                        event.deed() instanceof Deed.StepTaken step
                                                && step.step() == Step.READ);
        if (!read) {
            Map<String, String> noted = new TreeMap<>(reading);
            noted.put(Facts.AT, "");
            deeds.add(new Deed.StepTaken(Step.READ, noted, Optional.empty(), Optional.empty()));
        }
        counts.forEach((key, number) -> deeds.add(CountDeeds.counted(key, number)));
        return deeds;
    }
}
