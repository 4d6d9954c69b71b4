package jarwise.cli.laboratory;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.stats.count.FoundShare;
import jarwise.stats.removal.ExtractionEfficiency;
import jarwise.stats.removal.RemovalCatches;
import jarwise.usecase.laboratory.ReadFinds;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;

/**
 * Shares found again as they are printed.
 *
 * @param read found of known, by group
 * @param series repeat washes that tell of the same share; may be empty
 * @param confidenceLevel of the limits
 */
record SensitivityAnswer(ReadFinds read, List<RemovalCatches> series, double confidenceLevel) {

    /** A share with its limits, wherever it is from. */
    private record Share(double estimate, double standardError, double lower, double upper) {}

    Answer answer() {
        List<JsonObject> objects = read.groups().stream().map(this::object).toList();
        JsonObject json =
                new JsonObject()
                        .put("confidenceLevel", confidenceLevel)
                        .putObjects("groups", objects);
        return new Answer(json, objects, text(), warnings());
    }

    private Share share(ReadFinds.Find find) {
        if (series.isEmpty()) {
            FoundShare share = FoundShare.of(find.found(), find.known(), confidenceLevel);
            return new Share(share.estimate(), share.standardError(), share.lower(), share.upper());
        }
        ExtractionEfficiency share =
                ExtractionEfficiency.of(find.found(), find.known(), series, confidenceLevel);
        return new Share(share.estimate(), share.standardError(), share.lower(), share.upper());
    }

    private JsonObject object(ReadFinds.Find find) {
        Share share = share(find);
        return new JsonObject()
                .put("group", find.group())
                .put("found", find.found())
                .put("known", find.known())
                .put("estimate", share.estimate())
                .put("standardError", share.standardError())
                .put("lower", share.lower())
                .put("upper", share.upper());
    }

    private String text() {
        List<String> header = new ArrayList<>(read.groups().get(0).group().keySet());
        int texts = header.size();
        header.addAll(List.of("found", "known", "share", "lower", "upper"));
        TextTable table = new TextTable(texts, header);
        StringBuilder sentences = new StringBuilder();
        for (ReadFinds.Find find : read.groups()) {
            Share share = share(find);
            List<String> cells = new ArrayList<>(find.group().values());
            cells.add(String.valueOf(find.found()));
            cells.add(String.valueOf(find.known()));
            cells.add(Figures.of(share.estimate()));
            cells.add(Figures.of(share.lower()));
            cells.add(Figures.of(share.upper()));
            table.add(cells);
            sentences.append(sentence(find, share)).append('\n');
        }
        return table.text() + "\n" + sentences;
    }

    private String sentence(ReadFinds.Find find, Share share) {
        String name = String.join(", ", find.group().values());
        return "%s%s are found, between %s and %s (%s sure)."
                .formatted(
                        name.isEmpty() ? "" : name + ": ",
                        Figures.percent(share.estimate()),
                        Figures.percent(share.lower()),
                        Figures.percent(share.upper()),
                        Figures.percent(confidenceLevel));
    }

    private List<String> warnings() {
        return read.notes().stream().map(Words.of(Language.ENGLISH)::say).toList();
    }
}
