package jarwise.usecase.samples;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.Occupancy;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Puts a sample on record that was cut, and perhaps read, away from this program. What follows from
 * the bench is filled in: its house, and the crop lot that stood there alone on that day.
 *
 * @param log where events go
 * @param sites benches and what stood on them
 * @param pests what can be counted
 */
public record RecordSample(SampleLog log, SiteStore sites, PestStore pests) {

    /**
     * Records.
     *
     * @param fields {@code code}, the facts of the sample by their names, {@code count:PEST:stage}
     * @return the code of the sample
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public SampleCode run(String nursery, String person, Fields fields) {
        Optional<SampleCode> code = code(fields);
        SampleFields typed = new SampleFields(fields, log.now());
        Map<Step, Map<String, String>> facts = new LinkedHashMap<>(typed.facts());
        Map<StageKey, Long> counts = typed.counts();
        if (fields.text(Facts.SAMPLING_UNITS).isEmpty()) {
            fields.fault(Facts.SAMPLING_UNITS, Message.of("form.needed"));
        }
        if (fields.text(Facts.COLLECTED_ON).isEmpty()) {
            fields.fault(Facts.COLLECTED_ON, Message.of("form.needed"));
        }
        if (counts.isEmpty()) {
            // Without a count nothing was read: a reader alone would look like a filter read.
            facts.getOrDefault(Step.READ, Map.of()).keySet().stream()
                    .findFirst()
                    .ifPresent(fact -> fields.fault(fact, Message.of("sample.counts.none")));
        }
        CountDeeds.checkStages(fields, counts.keySet(), pests.pests());
        return log.alone(
                () -> {
                    code.filter(known -> log.knows(nursery, known))
                            .ifPresent(
                                    known ->
                                            fields.fault(
                                                    "code",
                                                    Message.of("sample.code.taken", known.text())));
                    fields.refuseIfAny();
                    log.append(nursery, person, code.orElseThrow(), deeds(nursery, facts, counts));
                    return code.orElseThrow();
                });
    }

    private static Optional<SampleCode> code(Fields fields) {
        String text = fields.needed("code");
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(new SampleCode(text));
        } catch (InvalidInput e) {
            fields.fault("code", Message.of("sample.code.unusable", text));
            return Optional.empty();
        }
    }

    private List<Deed> deeds(
            String nursery, Map<Step, Map<String, String>> facts, Map<StageKey, Long> counts) {
        List<Deed> deeds = new ArrayList<>();
        Map<String, String> cut = facts.getOrDefault(Step.CUT, Map.of());
        Optional<LocalDate> day =
                Optional.ofNullable(cut.get(Facts.COLLECTED_ON)).map(LocalDate::parse);
        Map<String, String> registered =
                filledIn(nursery, facts.getOrDefault(Step.REGISTERED, Map.of()), day);
        deeds.add(new Deed.StepTaken(Step.REGISTERED, registered, none(), none()));
        deeds.add(timeless(Step.CUT, cut));
        if (facts.containsKey(Step.WASHED)) {
            deeds.add(timeless(Step.WASHED, facts.getOrDefault(Step.WASHED, Map.of())));
        }
        if (!counts.isEmpty()) {
            deeds.add(timeless(Step.READ, facts.getOrDefault(Step.READ, Map.of())));
        }
        counts.forEach((key, number) -> deeds.add(CountDeeds.counted(key, number)));
        return deeds;
    }

    /** Typed at the desk: when the step really was, nobody has said. */
    private static Deed timeless(Step step, Map<String, String> facts) {
        Map<String, String> noted = new TreeMap<>(facts);
        noted.put(Facts.AT, "");
        return new Deed.StepTaken(step, noted, none(), none());
    }

    private static <T> Optional<T> none() {
        return Optional.empty();
    }

    private Map<String, String> filledIn(
            String nursery, Map<String, String> typed, Optional<LocalDate> day) {
        Map<String, String> facts = new TreeMap<>(typed);
        facts.putIfAbsent(Facts.METHOD, Fields.wordOf(SamplingMethod.WASH));
        facts.putIfAbsent(Facts.PURPOSE, Fields.wordOf(Purpose.RANDOM));
        facts.putIfAbsent(Facts.ROLE, Fields.wordOf(SampleRole.CROP));
        String bench = facts.getOrDefault(Facts.BENCH, "");
        sites.benches(nursery).stream()
                .filter(known -> known.code().equals(bench))
                .map(Bench::house)
                .forEach(house -> facts.putIfAbsent(Facts.HOUSE, house));
        if (!facts.containsKey(Facts.CROP_LOT) && !facts.containsKey(Facts.VARIETY)) {
            day.flatMap(on -> onlyLot(nursery, bench, on))
                    .ifPresent(lot -> facts.put(Facts.CROP_LOT, lot));
        }
        sites.cropLots(nursery).stream()
                .filter(lot -> lot.code().equals(facts.get(Facts.CROP_LOT)))
                .forEach(lot -> fillIn(facts, lot));
        return facts;
    }

    private static void fillIn(Map<String, String> facts, CropLot lot) {
        facts.putIfAbsent(Facts.VARIETY, lot.variety());
        if (!lot.crop().isBlank()) {
            facts.putIfAbsent(Facts.CROP, lot.crop());
        }
    }

    private Optional<String> onlyLot(String nursery, String bench, LocalDate day) {
        List<String> lots =
                sites.occupancies(nursery).stream()
                        .filter(stand -> stand.bench().equals(bench) && stand.covers(day))
                        .map(Occupancy::cropLot)
                        .distinct()
                        .toList();
        return lots.size() == 1 ? Optional.of(lots.get(0)) : Optional.empty();
    }
}
