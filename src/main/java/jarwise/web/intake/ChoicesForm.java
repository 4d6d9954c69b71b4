package jarwise.web.intake;

import io.javalin.http.Context;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.SamplingMethod;
import jarwise.usecase.intake.ImportChoices;
import jarwise.wire.sheet.ColumnMapping;
import jarwise.wire.sheet.KnownColumn;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How a sheet is understood, as the fields of a form. Fields: {@code column0}, {@code column1}, … a
 * meaning for each column; {@code pest}, {@code stage}, {@code method} of rows that name none;
 * {@code pest-word:…} and {@code stage-word:…} for words of the sheet.
 */
record ChoicesForm(ImportChoices choices, List<String> header) {

    static final String OWN = "own";
    static final String STAGE_COUNTS = "stage-counts";
    static final String FREQUENCY = "frequency";
    private static final String PEST_WORD = "pest-word:";
    private static final String STAGE_WORD = "stage-word:";

    /** {@return every meaning a column can have} */
    static List<String> meanings() {
        List<String> meanings = new ArrayList<>(List.of(OWN));
        Arrays.stream(KnownColumn.values()).map(KnownColumn::text).forEach(meanings::add);
        meanings.add(STAGE_COUNTS);
        meanings.add(FREQUENCY);
        return meanings;
    }

    /** {@return what a form says; empty if it was never filled in} */
    static Optional<ChoicesForm> read(Context http, List<String> header) {
        if (param(http, "column0").isEmpty()) {
            return Optional.empty();
        }
        Map<KnownColumn, String> columns = new EnumMap<>(KnownColumn.class);
        List<String> counts = new ArrayList<>();
        Optional<String> frequency = Optional.empty();
        for (int i = 0; i < header.size(); i++) {
            String name = header.get(i);
            String meaning = param(http, "column" + i).orElse(OWN);
            if (meaning.equals(STAGE_COUNTS)) {
                counts.add(name);
            } else if (meaning.equals(FREQUENCY)) {
                frequency = Optional.of(name);
            } else {
                KnownColumn.of(meaning).ifPresent(known -> columns.put(known, name));
            }
        }
        ImportChoices choices =
                new ImportChoices(
                        Optional.empty(),
                        new ColumnMapping(columns, counts, frequency),
                        unnamed(http),
                        words(http, PEST_WORD),
                        words(http, STAGE_WORD),
                        param(http, "as_new").isPresent(),
                        param(http, "add_places").isPresent());
        return Optional.of(new ChoicesForm(choices, header));
    }

    private static ImportChoices.Unnamed unnamed(Context http) {
        return new ImportChoices.Unnamed(
                param(http, "pest"),
                param(http, "stage"),
                param(http, "method").flatMap(ChoicesForm::method).orElse(SamplingMethod.WASH),
                param(http, "day").flatMap(ChoicesForm::day));
    }

    private static Optional<SamplingMethod> method(String word) {
        return Arrays.stream(SamplingMethod.values())
                .filter(method -> method.name().equalsIgnoreCase(word))
                .findAny();
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            Refused refused = new Refused(Message.of("import.day.unknown", text));
            refused.initCause(e);
            throw refused;
        }
    }

    private static Map<String, String> words(Context http, String start) {
        Map<String, String> words = new LinkedHashMap<>();
        Map<String, List<String>> all = new LinkedHashMap<>(http.queryParamMap());
        all.putAll(http.formParamMap());
        all.forEach(
                (name, values) -> {
                    if (name.startsWith(start) && !values.get(0).isBlank()) {
                        words.put(name.substring(start.length()), values.get(0));
                    }
                });
        return words;
    }

    /** A form of the preview comes as a query, the one that imports as a body. */
    private static Optional<String> param(Context http, String name) {
        String value = http.queryParam(name);
        return Optional.ofNullable(value == null ? http.formParam(name) : value)
                .filter(text -> !text.isBlank());
    }

    /** {@return the meaning chosen for a column} */
    String meaningOf(int column) {
        String name = header.get(column);
        ColumnMapping mapping = choices.mapping();
        if (mapping.countColumns().contains(name)) {
            return STAGE_COUNTS;
        }
        if (mapping.frequency().equals(Optional.of(name))) {
            return FREQUENCY;
        }
        return mapping.columns().entrySet().stream()
                .filter(entry -> entry.getValue().equals(name))
                .map(entry -> entry.getKey().text())
                .findFirst()
                .orElse(OWN);
    }

    /** {@return every field with its value, to be sent once more with the import} */
    Map<String, String> fields() {
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = 0; i < header.size(); i++) {
            fields.put("column" + i, meaningOf(i));
        }
        fields.put("pest", choices.unnamed().pest().orElse(""));
        fields.put("stage", choices.unnamed().stage().orElse(""));
        fields.put("day", choices.unnamed().day().map(LocalDate::toString).orElse(""));
        fields.put("method", choices.unnamed().method().name().toLowerCase(Locale.ROOT));
        choices.pestWords().forEach((word, pest) -> fields.put(PEST_WORD + word, pest));
        choices.stageWords().forEach((word, stage) -> fields.put(STAGE_WORD + word, stage));
        if (choices.asNew()) {
            fields.put("as_new", "yes");
        }
        return fields;
    }
}
