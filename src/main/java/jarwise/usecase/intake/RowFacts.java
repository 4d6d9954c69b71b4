package jarwise.usecase.intake;

import jarwise.sample.Fill;
import jarwise.sample.Fluid;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.tally.Facts;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.KnownColumn;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Turns the columns of a row into what the steps of its sample note. */
final class RowFacts {

    /** Columns without a meaning of their own in a sheet whose names are those of facts. */
    private static final Map<String, List<String>> WORDS =
            Map.of(
                    Facts.PURPOSE, words(Purpose.values()),
                    Facts.ROLE, words(SampleRole.values()),
                    Facts.FLUID, words(Fluid.values()),
                    Facts.FILL, words(Fill.values()),
                    Facts.CROP_LOT, List.of(),
                    Facts.CONDITION, List.of());

    private final ImportChoices choices;
    private final Faults faults;

    RowFacts(ImportChoices choices, Faults faults) {
        this.choices = choices;
        this.faults = faults;
    }

    /** {@return what each step notes; the reading is added by who knows whether there was one} */
    Map<Step, Map<String, String>> of(CountRow row) {
        Map<Step, Map<String, String>> facts = new EnumMap<>(Step.class);
        Map<String, String> registered = new TreeMap<>();
        registered.put(Facts.METHOD, method(row));
        put(registered, Facts.HOUSE, row.text(KnownColumn.HOUSE));
        put(registered, Facts.BENCH, row.text(KnownColumn.BENCH));
        put(registered, Facts.CROP, row.text(KnownColumn.CROP));
        put(registered, Facts.VARIETY, row.text(KnownColumn.VARIETY));
        Map<String, String> washed = new TreeMap<>();
        row.others().forEach((name, text) -> other(row, name, text, registered, washed));
        Map<String, String> cut = new TreeMap<>();
        cut.put(Facts.SAMPLING_UNITS, number(row.units()));
        row.date().ifPresent(day -> cut.put(Facts.COLLECTED_ON, day.toString()));
        facts.put(Step.REGISTERED, registered);
        facts.put(Step.CUT, cut);
        if (!washed.isEmpty()) {
            facts.put(Step.WASHED, washed);
        }
        return facts;
    }

    /** {@return what the reading of the filter notes} */
    static Map<String, String> reading(CountRow row) {
        Map<String, String> read = new TreeMap<>();
        read.put(Facts.CELLS_READ, number(row.cellsRead()));
        read.put(Facts.CELLS_READABLE, number(row.cellsTotal()));
        put(read, Facts.READER, row.text(KnownColumn.READER));
        return read;
    }

    private String method(CountRow row) {
        String text = row.text(KnownColumn.METHOD).toLowerCase(Locale.ROOT);
        if (text.isEmpty()) {
            return word(choices.unnamed().method());
        }
        List<String> allowed = words(SamplingMethod.values());
        if (!allowed.contains(text)) {
            refuse(row, KnownColumn.METHOD.text(), row.text(KnownColumn.METHOD), allowed);
        }
        return text;
    }

    private void other(
            CountRow row,
            String name,
            String text,
            Map<String, String> registered,
            Map<String, String> washed) {
        if (choices.mapping().frequency().filter(name::equals).isPresent()) {
            return;
        }
        String known = name.toLowerCase(Locale.ROOT).replace(' ', '_');
        List<String> allowed = WORDS.get(known);
        if (allowed == null) {
            registered.put(Facts.OTHER + name, text);
            return;
        }
        String value = allowed.isEmpty() ? text : text.toLowerCase(Locale.ROOT);
        if (!allowed.isEmpty() && !allowed.contains(value)) {
            refuse(row, name, text, allowed);
        }
        boolean ofWash = List.of(Facts.FLUID, Facts.FILL, Facts.CONDITION).contains(known);
        (ofWash ? washed : registered).put(known, value);
    }

    private void refuse(CountRow row, String column, String value, List<String> allowed) {
        faults.add(
                Fault.in(
                        row.row(),
                        column,
                        value,
                        FaultKind.WORD_NOT_ALLOWED,
                        String.join(", ", allowed)));
    }

    private static void put(Map<String, String> facts, String name, String text) {
        if (!text.isEmpty()) {
            facts.put(name, text);
        }
    }

    /** {@return 10 for 10.0, 2.5 for 2.5} */
    static String number(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static List<String> words(Enum<?>[] values) {
        return Arrays.stream(values).map(RowFacts::word).toList();
    }
}
