package jarwise.usecase.intake;

import jarwise.sample.SamplingMethod;
import jarwise.usecase.intake.ImportChoices.Unnamed;
import jarwise.wire.AttributesJson;
import jarwise.wire.sheet.ColumnMapping;
import jarwise.wire.sheet.KnownColumn;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** How a sheet was understood, as text to be remembered with its columns. */
final class ChoicesText {

    private static final Set<String> FREQUENCY_WORDS =
            Set.of("freq", "frequency", "frecuencia", "fréquence");

    private static final String COLUMN = "column:";
    private static final String COUNT_COLUMN = "count-column:";
    private static final String PEST_WORD = "pest-word:";
    private static final String STAGE_WORD = "stage-word:";

    private ChoicesText() {}

    /** Known columns, one column a stage, and a frequency column are noticed; a person corrects. */
    static ImportChoices guess(List<String> header) {
        ColumnMapping mapping = ColumnMapping.guess(header);
        Optional<String> frequency =
                header.stream()
                        .filter(name -> FREQUENCY_WORDS.contains(name.toLowerCase(Locale.ROOT)))
                        .findFirst();
        return ImportChoices.of(frequency.map(mapping::withFrequency).orElse(mapping));
    }

    static String write(ImportChoices choices) {
        Map<String, String> text = new TreeMap<>();
        ColumnMapping mapping = choices.mapping();
        mapping.columns().forEach((known, name) -> text.put(COLUMN + known.text(), name));
        for (int i = 0; i < mapping.countColumns().size(); i++) {
            text.put("%s%03d".formatted(COUNT_COLUMN, i), mapping.countColumns().get(i));
        }
        mapping.frequency().ifPresent(name -> text.put("frequency", name));
        choices.unnamed().pest().ifPresent(pest -> text.put("pest", pest));
        choices.unnamed().stage().ifPresent(stage -> text.put("stage", stage));
        text.put("method", choices.unnamed().method().name());
        choices.pestWords().forEach((word, pest) -> text.put(PEST_WORD + word, pest));
        choices.stageWords().forEach((word, stage) -> text.put(STAGE_WORD + word, stage));
        return AttributesJson.write(text);
    }

    static ImportChoices read(String json) {
        Map<String, String> text = new TreeMap<>(AttributesJson.read(json));
        Map<KnownColumn, String> columns = new EnumMap<>(KnownColumn.class);
        startingWith(text, COLUMN)
                .forEach(
                        (word, name) ->
                                KnownColumn.of(word).ifPresent(known -> columns.put(known, name)));
        List<String> counts = new ArrayList<>(startingWith(text, COUNT_COLUMN).values());
        return new ImportChoices(
                Optional.empty(),
                new ColumnMapping(columns, counts, Optional.ofNullable(text.get("frequency"))),
                new Unnamed(
                        Optional.ofNullable(text.get("pest")),
                        Optional.ofNullable(text.get("stage")),
                        SamplingMethod.valueOf(text.getOrDefault("method", "WASH")),
                        Optional.empty()),
                startingWith(text, PEST_WORD),
                startingWith(text, STAGE_WORD),
                false,
                false);
    }

    private static Map<String, String> startingWith(Map<String, String> text, String start) {
        Map<String, String> found = new TreeMap<>();
        text.forEach(
                (name, value) -> {
                    if (name.startsWith(start)) {
                        found.put(name.substring(start.length()), value);
                    }
                });
        return found;
    }
}
