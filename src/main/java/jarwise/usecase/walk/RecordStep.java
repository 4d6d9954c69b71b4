package jarwise.usecase.walk;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.plan.PlannedJar;
import jarwise.sample.Fill;
import jarwise.sample.Fluid;
import jarwise.sample.LidAndBase;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.usecase.form.Fields;
import jarwise.usecase.samples.SampleLog;
import jarwise.wire.walk.WalkSheet;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * Records the next step of a jar from a form, for phones on which the page's script does not run.
 *
 * @param log where events go
 * @param walk what may not be entered
 */
public record RecordStep(SampleLog log, ShowWalk walk) {

    private static final int MOST_GROWING_POINTS = 1_000;
    private static final int MOST_SEEN = 100_000;
    private static final int LONGEST_SHAKE = 3_600;
    private static final int MOST_RINSES = 20;
    private static final Map<Step, SampleState> COMES_AFTER =
            Map.of(
                    Step.CUT, SampleState.PLANNED,
                    Step.WASHED, SampleState.CUT,
                    Step.FREEZER_IN, SampleState.WASHED);

    /**
     * Records.
     *
     * @param jar the jar
     * @param now by the clocks of the site
     * @param fields {@code step} and what was noted, by the names of {@link Facts}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(
            String nursery, String person, PlannedJar jar, ZonedDateTime now, Fields fields) {
        fields.needed("step");
        Step step = fields.word("step", Step.class).orElse(Step.REGISTERED);
        Map<String, String> facts =
                switch (step) {
                    case CUT -> cut(nursery, jar, now, fields);
                    case WASHED -> washed(jar, now, fields);
                    case FREEZER_IN -> frozen(jar, fields);
                    default -> notSo(fields);
                };
        log.alone(
                () -> {
                    if (stateOf(nursery, jar, step) != COMES_AFTER.get(step)) {
                        fields.fault("step", Message.of("walk.step.taken", jar.code().text()));
                    }
                    fields.refuseIfAny();
                    Deed deed = new Deed.StepTaken(step, facts, none(), none());
                    log.append(nursery, person, jar.code(), List.of(deed));
                    return deed;
                });
    }

    private static <T> Optional<T> none() {
        return Optional.empty();
    }

    /** A control is never cut: its first step is the wash. */
    private SampleState stateOf(String nursery, PlannedJar jar, Step step) {
        SampleState state = log.find(nursery, jar.code()).sample().state();
        boolean fresh = !jar.isOfCrop() && state == SampleState.PLANNED && step == Step.WASHED;
        return fresh ? SampleState.CUT : state;
    }

    private Map<String, String> cut(
            String nursery, PlannedJar jar, ZonedDateTime now, Fields fields) {
        Map<String, String> facts = new TreeMap<>();
        facts.put(Facts.COLLECTED_ON, now.toLocalDate().toString());
        number(fields, facts, Facts.SAMPLING_UNITS, 1, MOST_GROWING_POINTS, true);
        number(fields, facts, Facts.DAMAGE, 0, 3, false);
        for (String seen :
                List.of(
                        Facts.BENEFICIALS,
                        Facts.TAPPED_PLANTS,
                        Facts.TAPPED_INSECTS,
                        Facts.CARD_INSECTS)) {
            number(fields, facts, seen, 0, MOST_SEEN, false);
        }
        boolean closed =
                walk.noEntry(nursery, now.toInstant()).stream().anyMatch(place -> isIn(jar, place));
        if (closed) {
            for (String exception :
                    List.of(
                            Facts.EARLY_ENTRY_BY,
                            Facts.EARLY_ENTRY_REASON,
                            Facts.EARLY_ENTRY_PROTECTION)) {
                facts.put(exception, fields.needed(exception));
            }
        }
        return facts;
    }

    private static boolean isIn(PlannedJar jar, WalkSheet.NoEntry place) {
        return place.house().equals(jar.house())
                && (place.benches().isEmpty() || place.benches().contains(jar.bench()));
    }

    private static Map<String, String> washed(PlannedJar jar, ZonedDateTime now, Fields fields) {
        Map<String, String> facts = new TreeMap<>();
        if (jar.isOfCrop()) {
            word(fields, facts, Facts.FILL, Fill.class);
        } else {
            facts.put(Facts.COLLECTED_ON, now.toLocalDate().toString());
        }
        word(fields, facts, Facts.FLUID, Fluid.class);
        number(fields, facts, Facts.SHAKE_SECONDS, 0, LONGEST_SHAKE, true);
        number(fields, facts, Facts.RINSES, 0, MOST_RINSES, true);
        number(fields, facts, Facts.KNOWN, 0, MOST_SEEN, false);
        String foam = fields.text(Facts.FOAM);
        if (!foam.isEmpty()) {
            facts.put(Facts.FOAM, foam.equals("yes") ? "yes" : "no");
        }
        return facts;
    }

    private static Map<String, String> frozen(PlannedJar jar, Fields fields) {
        Optional<SampleCode> lid = code(fields, Facts.LID);
        Optional<SampleCode> base = code(fields, Facts.BASE);
        if (lid.isEmpty() || base.isEmpty()) {
            return Map.of();
        }
        switch (LidAndBase.of(lid.get(), base.get(), List.of(jar.code()))) {
            case NO_PAIR ->
                    fields.fault(
                            Facts.LID,
                            Message.of("walk.pair.no", lid.get().text(), base.get().text()));
            case NOT_WASHED ->
                    fields.fault(
                            Facts.BASE,
                            Message.of("walk.pair.other", base.get().text(), jar.code().text()));
            case PAIR -> {}
        }
        return Map.of(Facts.LID, lid.get().text(), Facts.BASE, base.get().text());
    }

    private static Optional<SampleCode> code(Fields fields, String name) {
        String text = fields.needed(name).toUpperCase(java.util.Locale.ROOT);
        try {
            return text.isEmpty() ? none() : Optional.of(new SampleCode(text));
        } catch (InvalidInput e) {
            fields.fault(name, Message.of("sample.code.unusable", text));
            return none();
        }
    }

    private static Map<String, String> notSo(Fields fields) {
        fields.fault("step", Message.of("sample.step.not-so"));
        return Map.of();
    }

    private static <E extends Enum<E>> void word(
            Fields fields, Map<String, String> facts, String name, Class<E> type) {
        fields.needed(name);
        fields.word(name, type).ifPresent(one -> facts.put(name, Fields.wordOf(one)));
    }

    private static void number(
            Fields fields,
            Map<String, String> facts,
            String name,
            long least,
            long most,
            boolean needed) {
        if (needed) {
            fields.needed(name);
        }
        OptionalLong value = fields.whole(name, least, most);
        value.ifPresent(number -> facts.put(name, String.valueOf(number)));
    }
}
