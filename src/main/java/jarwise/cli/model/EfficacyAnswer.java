package jarwise.cli.model;

import jarwise.base.Message;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.stats.efficacy.EfficacyEstimate;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.efficacy.EfficacyTrial;
import jarwise.usecase.model.EstimateEfficacy;
import jarwise.usecase.model.GroupEfficacy;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Efficacies as they are printed.
 *
 * @param estimator how they were made
 * @param groups one a group, in order
 * @param warnings sentences about the sheet, then about the groups
 */
record EfficacyAnswer(
        EfficacyEstimator estimator, List<GroupEfficacy> groups, List<String> warnings) {

    private static final String NOT_SEEN =
            "Corpses are washed off, too: samples taken too soon after the treatment count them as"
                    + " alive. Eggs and soil pupae are not seen.";

    static EfficacyAnswer of(
            EfficacyEstimator estimator, EstimateEfficacy.Done done, List<Message> notes) {
        LinkedHashSet<String> warnings = new LinkedHashSet<>();
        notes.forEach(note -> warnings.add(Words.of(Language.ENGLISH).say(note)));
        warnings.addAll(done.warnings());
        for (GroupEfficacy group : done.groups()) {
            String prefix = group.name().isEmpty() ? "" : group.name() + ": ";
            group.estimate().warnings().forEach(warning -> warnings.add(prefix + warning));
        }
        warnings.add(NOT_SEEN);
        return new EfficacyAnswer(estimator, done.groups(), List.copyOf(warnings));
    }

    Answer answer() {
        List<JsonObject> objects = groups.stream().map(EfficacyAnswer::object).toList();
        JsonObject json =
                new JsonObject()
                        .put("target", estimator.target())
                        .put("confidenceLevel", estimator.confidenceLevel())
                        .put("interval", estimator.interval().name().toLowerCase(Locale.ROOT))
                        .putObjects("groups", objects);
        return new Answer(json, objects, text(), warnings);
    }

    private static JsonObject object(GroupEfficacy group) {
        EfficacyEstimate estimate = group.estimate();
        EfficacyTrial trial = group.trial();
        return new JsonObject()
                .put("group", group.group())
                .put("efficacy", estimate.efficacy())
                .put("lower", estimate.lower())
                .put("upper", estimate.upper())
                .put("interaction", estimate.interaction())
                .put("standardError", estimate.standardError())
                .put("k", estimate.k())
                .put("logLikelihood", estimate.logLikelihood())
                .put("pValue", estimate.pValue())
                .put("hendersonTilton", estimate.hendersonTilton())
                .put("abbott", estimate.abbott())
                .put("verdict", estimate.verdict().text())
                .put(
                        "samples",
                        new JsonObject()
                                .put("treatedBefore", trial.treatedBefore().size())
                                .put("treatedAfter", trial.treatedAfter().size())
                                .put("checkBefore", trial.checkBefore().size())
                                .put("checkAfter", trial.checkAfter().size()));
    }

    private String text() {
        StringBuilder text = new StringBuilder(table().text()).append('\n');
        groups.forEach(group -> text.append(sentence(group)).append('\n'));
        return text.toString();
    }

    private TextTable table() {
        List<String> header = new ArrayList<>(groups.get(0).group().keySet());
        int texts = header.size();
        header.addAll(List.of("samples", "efficacy", "lower", "upper", "k", "p", "verdict"));
        TextTable table = new TextTable(texts, header);
        for (GroupEfficacy group : groups) {
            EfficacyEstimate estimate = group.estimate();
            List<String> cells = new ArrayList<>(group.group().values());
            cells.add(String.valueOf(group.trial().sampleSize()));
            cells.add(percent(estimate.efficacy()));
            cells.add(percent(estimate.lower()));
            cells.add(percent(estimate.upper()));
            cells.add(Figures.of(estimate.k()));
            cells.add(Figures.of(estimate.pValue()));
            cells.add(estimate.verdict().text());
            table.add(cells);
        }
        return table;
    }

    private static String percent(OptionalDouble share) {
        return share.isPresent() ? Figures.percent(share.getAsDouble()) : "-";
    }

    private String sentence(GroupEfficacy group) {
        EfficacyEstimate estimate = group.estimate();
        String name = group.name().isEmpty() ? "" : group.name() + ": ";
        String efficacy =
                estimate.efficacy().isEmpty()
                        ? "no efficacy can be given"
                        : "the treatment took %s, between %s and %s (%s sure)"
                                .formatted(
                                        percent(estimate.efficacy()),
                                        percent(estimate.lower()),
                                        percent(estimate.upper()),
                                        Figures.percent(estimator.confidenceLevel()));
        String others =
                ("Henderson-Tilton %s (also called Sun-Shepard), Abbott %s (also called"
                                + " Schneider-Orelli).")
                        .formatted(percent(estimate.hendersonTilton()), percent(estimate.abbott()));
        return "%s%s; against the %s wanted: %s. %s"
                .formatted(
                        name,
                        efficacy,
                        percent(OptionalDouble.of(estimator.target())),
                        estimate.verdict().text(),
                        others);
    }
}
