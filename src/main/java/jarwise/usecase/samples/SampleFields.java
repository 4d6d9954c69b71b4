package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.sample.Fill;
import jarwise.sample.Fluid;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.tally.Facts;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;

/** The fields of a sample's forms, named as the facts they become. */
public final class SampleFields {

    /** Facts a person can type, by the step that notes them. */
    static final Map<Step, List<String>> FACTS =
            Map.of(
                    Step.REGISTERED,
                    List.of(
                            Facts.METHOD,
                            Facts.PURPOSE,
                            Facts.ROLE,
                            Facts.HOUSE,
                            Facts.BENCH,
                            Facts.CROP_LOT,
                            Facts.CROP,
                            Facts.VARIETY),
                    Step.CUT,
                    List.of(Facts.COLLECTED_ON, Facts.SAMPLING_UNITS),
                    Step.WASHED,
                    List.of(
                            Facts.FLUID,
                            Facts.FILL,
                            Facts.SHAKE_SECONDS,
                            Facts.RINSES,
                            Facts.CONDITION),
                    Step.READ,
                    List.of(
                            Facts.READER,
                            Facts.CELLS_READ,
                            Facts.CELLS_READABLE,
                            Facts.CELLS_OBSCURED,
                            Facts.MINUTES));

    /** Begins the name of a field that holds the count of a stage: {@code count:PEST:stage}. */
    public static final String COUNT = "count:";

    private static final double MOST_UNITS = 100_000;
    private static final double MOST_CELLS = 100_000;
    private static final long MOST_INDIVIDUALS = 1_000_000_000L;

    private final Fields fields;
    private final LocalDate today;

    /** Reads fields at a moment; a day that no clock on earth has reached is refused. */
    SampleFields(Fields fields, Instant now) {
        this.fields = fields;
        this.today = LocalDate.ofInstant(now, ZoneOffset.MAX);
    }

    /**
     * {@return what the typed fields say for each step; a step nothing was typed for is missing}
     */
    Map<Step, Map<String, String>> facts() {
        Map<Step, Map<String, String>> facts = new EnumMap<>(Step.class);
        put(facts, Step.REGISTERED, Facts.METHOD, word(Facts.METHOD, SamplingMethod.class));
        put(facts, Step.REGISTERED, Facts.PURPOSE, word(Facts.PURPOSE, Purpose.class));
        put(facts, Step.REGISTERED, Facts.ROLE, word(Facts.ROLE, SampleRole.class));
        for (String place :
                List.of(Facts.HOUSE, Facts.BENCH, Facts.CROP_LOT, Facts.CROP, Facts.VARIETY)) {
            put(facts, Step.REGISTERED, place, fields.text(place));
        }
        String day = fields.pastDay(Facts.COLLECTED_ON, today).map(Object::toString).orElse("");
        put(facts, Step.CUT, Facts.COLLECTED_ON, day);
        put(facts, Step.CUT, Facts.SAMPLING_UNITS, number(Facts.SAMPLING_UNITS, MOST_UNITS));
        put(facts, Step.WASHED, Facts.FLUID, word(Facts.FLUID, Fluid.class));
        put(facts, Step.WASHED, Facts.FILL, word(Facts.FILL, Fill.class));
        put(facts, Step.WASHED, Facts.SHAKE_SECONDS, whole(Facts.SHAKE_SECONDS, 86_400));
        put(facts, Step.WASHED, Facts.RINSES, whole(Facts.RINSES, 1_000));
        put(facts, Step.WASHED, Facts.CONDITION, fields.text(Facts.CONDITION));
        put(facts, Step.READ, Facts.READER, fields.text(Facts.READER));
        cells(facts);
        put(facts, Step.READ, Facts.MINUTES, number(Facts.MINUTES, 10_000));
        return facts;
    }

    private void cells(Map<Step, Map<String, String>> facts) {
        OptionalDouble read = fields.number(Facts.CELLS_READ, 0, MOST_CELLS);
        OptionalDouble readable = fields.number(Facts.CELLS_READABLE, 0, MOST_CELLS);
        if (read.isPresent() != readable.isPresent()) {
            String missing = read.isPresent() ? Facts.CELLS_READABLE : Facts.CELLS_READ;
            fields.fault(missing, Message.of("sample.cells.both"));
        } else if (read.isPresent() && read.getAsDouble() > readable.getAsDouble()) {
            fields.fault(
                    Facts.CELLS_READ,
                    Message.of("sample.cells.more", plain(read), plain(readable)));
        }
        put(facts, Step.READ, Facts.CELLS_READ, plain(read));
        put(facts, Step.READ, Facts.CELLS_READABLE, plain(readable));
        put(facts, Step.READ, Facts.CELLS_OBSCURED, whole(Facts.CELLS_OBSCURED, 100_000));
    }

    /** {@return the counts that were typed; a blank field is a stage not read} */
    Map<StageKey, Long> counts() {
        Map<StageKey, Long> counts = new LinkedHashMap<>();
        for (String name : new TreeMap<>(fields.typed()).keySet()) {
            String[] parts = name.split(":", -1);
            if (name.startsWith(COUNT) && parts.length == 3) {
                OptionalLong count = fields.whole(name, 0, MOST_INDIVIDUALS);
                count.ifPresent(n -> counts.put(new StageKey(parts[1], parts[2]), n));
            }
        }
        return counts;
    }

    private <E extends Enum<E>> String word(String name, Class<E> type) {
        return fields.word(name, type).map(Fields::wordOf).orElse("");
    }

    private String number(String name, double most) {
        return plain(fields.number(name, 0, most));
    }

    private String whole(String name, long most) {
        OptionalLong value = fields.whole(name, 0, most);
        return value.isPresent() ? String.valueOf(value.getAsLong()) : "";
    }

    static String plain(OptionalDouble value) {
        return value.isPresent()
                ? BigDecimal.valueOf(value.getAsDouble()).stripTrailingZeros().toPlainString()
                : "";
    }

    private static void put(
            Map<Step, Map<String, String>> facts, Step step, String name, String value) {
        if (!value.isEmpty()) {
            facts.computeIfAbsent(step, taken -> new TreeMap<>()).put(name, value);
        }
    }
}
