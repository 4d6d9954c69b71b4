package jarwise.cli;

import jarwise.base.Message;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.decision.Verdict;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.usecase.GroupEstimate;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Estimates as they are printed.
 *
 * @param estimator how they were made
 * @param groups one a group, in order
 * @param warnings sentences about the sheet, then about the groups
 */
record EstimateAnswer(
        DensityEstimator estimator, List<GroupEstimate> groups, List<String> warnings) {

    static EstimateAnswer of(
            DensityEstimator estimator, List<GroupEstimate> groups, List<Message> notes) {
        LinkedHashSet<String> warnings = new LinkedHashSet<>();
        notes.forEach(note -> warnings.add(Words.of(Language.ENGLISH).say(note)));
        for (GroupEstimate group : groups) {
            String name = name(group);
            String prefix = name.isEmpty() ? "" : name + ": ";
            group.estimate().warnings().forEach(warning -> warnings.add(prefix + warning));
        }
        return new EstimateAnswer(estimator, groups, List.copyOf(warnings));
    }

    private static String name(GroupEstimate group) {
        List<String> parts = new ArrayList<>();
        group.group().forEach((column, value) -> parts.add(column + " " + value));
        return String.join(", ", parts);
    }

    Answer answer() {
        List<JsonObject> objects = groups.stream().map(this::object).toList();
        JsonObject json =
                new JsonObject()
                        .put("confidenceLevel", estimator.confidenceLevel())
                        .put("interval", interval())
                        .putObjects("groups", objects);
        return new Answer(json, objects, text(), warnings);
    }

    private String interval() {
        return estimator.method().name().toLowerCase(Locale.ROOT);
    }

    private JsonObject object(GroupEstimate group) {
        DensityEstimate estimate = group.estimate();
        JsonObject object =
                new JsonObject()
                        .put("group", group.group())
                        .put("sampleSize", estimate.sampleSize())
                        .put("samplingUnits", estimate.samplingUnits())
                        .put("individuals", estimate.individuals())
                        .put("estimate", estimate.estimate())
                        .put("standardError", estimate.standardError())
                        .put("lower", estimate.lower())
                        .put("upper", estimate.upper())
                        .put("k", estimate.k())
                        .put("logLikelihood", estimate.logLikelihood())
                        .put("proportionPositive", estimate.proportionPositive());
        if (estimate.largestDensityConsidered().isPresent()) {
            object.put("largestDensityConsidered", estimate.largestDensityConsidered());
        }
        estimate.apparent()
                .ifPresent(
                        apparent ->
                                object.put(
                                        "apparent",
                                        new JsonObject()
                                                .put("estimate", apparent.estimate())
                                                .put("lower", apparent.lower())
                                                .put("upper", apparent.upper())));
        group.verdict()
                .map(Verdict::text)
                .ifPresent(
                        verdict ->
                                object.put(
                                                "probabilityAboveThreshold",
                                                estimate.probabilityAboveThreshold())
                                        .put("verdict", verdict));
        return object;
    }

    private String text() {
        StringBuilder text = new StringBuilder(table().text()).append('\n');
        groups.forEach(group -> text.append(sentence(group)).append('\n'));
        return text.toString();
    }

    private TextTable table() {
        List<String> header = new ArrayList<>(groups.get(0).group().keySet());
        int texts = header.size();
        header.addAll(List.of("samples", "units", "counted", "density", "lower", "upper", "k"));
        if (estimator.actionThreshold().isPresent()) {
            header.addAll(List.of("chance above", "verdict"));
        }
        TextTable table = new TextTable(texts, header);
        groups.forEach(group -> table.add(cells(group)));
        return table;
    }

    private static List<String> cells(GroupEstimate group) {
        DensityEstimate estimate = group.estimate();
        List<String> cells = new ArrayList<>(group.group().values());
        cells.add(String.valueOf(estimate.sampleSize()));
        cells.add(Figures.of(estimate.samplingUnits()));
        cells.add(String.valueOf(estimate.individuals()));
        cells.add(Figures.of(estimate.estimate()));
        cells.add(Figures.of(estimate.lower()));
        cells.add(Figures.of(estimate.upper()));
        cells.add(Figures.of(estimate.k()));
        group.verdict()
                .ifPresent(
                        verdict -> {
                            OptionalDouble above = estimate.probabilityAboveThreshold();
                            cells.add(
                                    above.isPresent() ? Figures.percent(above.getAsDouble()) : "-");
                            cells.add(verdict.text());
                        });
        return cells;
    }

    private String sentence(GroupEstimate group) {
        DensityEstimate estimate = group.estimate();
        String name = name(group).isEmpty() ? "" : name(group) + ": ";
        String level = Figures.percent(estimator.confidenceLevel());
        String upper =
                estimate.upper().isPresent()
                        ? Figures.of(estimate.upper())
                        : "no limit that these samples could set";
        String found =
                estimate.individuals() == 0
                        ? "none found in %d samples; up to %s per sampling unit can still be there"
                                .formatted(estimate.sampleSize(), upper)
                        : "%s per sampling unit, between %s and %s"
                                .formatted(
                                        Figures.of(estimate.estimate()),
                                        Figures.of(estimate.lower()),
                                        upper);
        return name + found + " (" + level + " sure).";
    }
}
