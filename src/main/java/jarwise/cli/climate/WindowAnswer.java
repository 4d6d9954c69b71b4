package jarwise.cli.climate;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.phenology.window.SetWindow;
import jarwise.phenology.window.TreatmentWindow;
import jarwise.usecase.climate.FindWindow;
import jarwise.usecase.climate.FindWindow.Found;
import jarwise.wire.json.JsonObject;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A window as an answer of the command line.
 *
 * @param asked what was asked
 * @param found the window
 */
record WindowAnswer(FindWindow asked, Found found) {

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    Answer answer() {
        List<JsonObject> sets = found.window().sets().stream().map(this::set).toList();
        JsonObject json =
                new JsonObject()
                        .put("pest", asked.pest())
                        .put("stage", asked.stage())
                        .put("treatedAt", time(found.treatedAt()))
                        .putText("earliest", found.window().earliest().map(this::time))
                        .putText("latest", found.window().latest().map(this::time))
                        .putObjects("sets", sets)
                        .put(
                                "perDegree",
                                new JsonObject()
                                        .put("earliest", earliestPerDegree())
                                        .put("latest", latestPerDegree()))
                        .put("assumedAfterLog", found.assumption().afterLog());
        return new Answer(json, sets, text(), WindowWarnings.of(asked, found));
    }

    private JsonObject set(SetWindow set) {
        return new JsonObject()
                .put("source", set.constants().source())
                .put(
                        "lowerDevelopmentalTemperature",
                        set.constants().egg().lowerDevelopmentalTemperature())
                .put(
                        "larvaLowerDevelopmentalTemperature",
                        set.constants().hit().lowerDevelopmentalTemperature())
                .put("eggDegreeDays", set.constants().egg().degreeDays())
                .put("larvaDegreeDays", set.constants().hit().degreeDays())
                .putText("earliest", set.earliest().map(this::time))
                .putText("latest", set.latest().map(this::time))
                .put("surrogate", set.constants().surrogate())
                .putTexts("followUps", set.followUps().stream().map(this::time).toList());
    }

    /** To the minute, with the offset if the log has one. */
    private String time(LocalDateTime time) {
        LocalDateTime minute = time.truncatedTo(ChronoUnit.MINUTES);
        return found.climate()
                .offset()
                .map(offset -> minute.atOffset(offset).toString())
                .orElse(minute.toString());
    }

    private OptionalDouble earliestPerDegree() {
        return TreatmentWindow.perDegree(found.warmer().earliest(), found.cooler().earliest());
    }

    private OptionalDouble latestPerDegree() {
        return TreatmentWindow.perDegree(found.warmer().latest(), found.cooler().latest());
    }

    private String text() {
        TextTable table =
                new TextTable(1, List.of("constants", "T0", "egg", asked.stage(), "from", "to"));
        for (SetWindow set : found.window().sets()) {
            table.add(
                    List.of(
                            set.constants().source(),
                            Figures.of(set.constants().egg().lowerDevelopmentalTemperature()),
                            Figures.of(set.constants().egg().degreeDays()),
                            Figures.of(set.constants().hit().degreeDays()),
                            shown(set.earliest()),
                            shown(set.latest())));
        }
        return table.text() + "\n" + sentence() + "\n";
    }

    private String sentence() {
        Optional<LocalDateTime> earliest = found.window().earliest();
        Optional<LocalDateTime> latest = found.window().latest();
        if (earliest.isEmpty() || latest.isEmpty()) {
            return "There is no window within %d days: it is too cool."
                    .formatted(SetWindow.FARTHEST.toDays());
        }
        if (latest.get().isBefore(earliest.get())) {
            return ("No single time meets all: the last eggs hatch up to %s, when the first %s is"
                            + " long gone (%s). See below for treatments that do.")
                    .formatted(shown(earliest), asked.stage(), shown(latest));
        }
        String moved =
                latestPerDegree().isPresent() && earliestPerDegree().isPresent()
                        ? " A degree warmer moves its beginning by %s and its end by %s days."
                                .formatted(
                                        Figures.of(earliestPerDegree().getAsDouble()),
                                        Figures.of(latestPerDegree().getAsDouble()))
                        : "";
        return ("What was an egg at the treatment of %s is a %s between %s and %s, over all"
                                + " published constants.")
                        .formatted(
                                SHOWN.format(found.treatedAt()),
                                asked.stage(),
                                shown(earliest),
                                shown(latest))
                + moved;
    }

    private static String shown(Optional<LocalDateTime> time) {
        return time.map(SHOWN::format).orElse("-");
    }
}
