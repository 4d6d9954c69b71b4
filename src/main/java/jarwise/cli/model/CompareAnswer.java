package jarwise.cli.model;

import jarwise.base.Message;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.stats.comparison.LevelComparison;
import jarwise.stats.comparison.LevelComparison.LevelDensity;
import jarwise.stats.comparison.PairRatio;
import jarwise.stats.regression.LikelihoodRatio;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;

/**
 * A comparison as it is printed.
 *
 * @param comparison what was found
 * @param column whose levels are compared
 * @param notes about the sheet
 */
record CompareAnswer(LevelComparison comparison, String column, List<Message> notes) {

    Answer answer() {
        JsonObject json = FitFields.of(comparison.fit());
        List<JsonObject> levels = comparison.levels().stream().map(CompareAnswer::level).toList();
        List<JsonObject> pairs = comparison.pairs().stream().map(CompareAnswer::pair).toList();
        LikelihoodRatio test = comparison.test();
        json.putObjects("levels", levels)
                .putObjects("pairs", pairs)
                .put(
                        "test",
                        new JsonObject()
                                .put("statistic", test.statistic())
                                .put("degreesOfFreedom", test.degreesOfFreedom())
                                .put("pValue", test.pValue()));
        List<JsonObject> inside = new ArrayList<>(levels);
        inside.addAll(pairs);
        return new Answer(json, inside, text(), warnings());
    }

    private static JsonObject level(LevelDensity level) {
        return new JsonObject()
                .put("level", level.level())
                .put("estimate", level.estimate())
                .put("lower", level.lower())
                .put("upper", level.upper());
    }

    private static JsonObject pair(PairRatio pair) {
        return new JsonObject()
                .put("a", pair.a())
                .put("b", pair.b())
                .put("ratio", pair.ratio())
                .put("lower", pair.limits().lower())
                .put("upper", pair.limits().upper())
                .put("logRatio", pair.logRatio())
                .put("standardError", pair.standardError())
                .put("pValue", pair.pValue())
                .put("pAdjusted", pair.pAdjusted());
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        notes.forEach(note -> warnings.add(Words.of(Language.ENGLISH).say(note)));
        comparison
                .emptyBlocks()
                .forEach(
                        block ->
                                warnings.add(
                                        ("Nothing was found in block \"%s\"; it says nothing of the"
                                                        + " ratios and is left out.")
                                                .formatted(block)));
        for (LevelDensity level : comparison.levels()) {
            if (level.estimate() == 0 && comparison.fit().logLikelihood() < 0) {
                warnings.add(
                        "Nothing was found in %s \"%s\"; its ratios have one limit only."
                                .formatted(column, level.level()));
            }
        }
        warnings.addAll(FitFields.warnings(comparison.fit()));
        return warnings;
    }

    private String text() {
        TextTable levels = new TextTable(1, List.of(column, "density", "lower", "upper"));
        for (LevelDensity level : comparison.levels()) {
            levels.add(
                    List.of(
                            level.level(),
                            Figures.of(level.estimate()),
                            Figures.of(level.lower()),
                            Figures.of(level.upper())));
        }
        TextTable pairs =
                new TextTable(1, List.of("times as many", "ratio", "lower", "upper", "p", "Holm"));
        for (PairRatio pair : comparison.pairs()) {
            pairs.add(
                    List.of(
                            pair.a() + " to " + pair.b(),
                            Figures.of(pair.ratio()),
                            Figures.of(pair.limits().lower()),
                            Figures.of(pair.limits().upper()),
                            Figures.p(pair.pValue()),
                            Figures.p(pair.pAdjusted())));
        }
        return levels.text() + "\n" + pairs.text() + "\n" + sentence() + "\n";
    }

    private String sentence() {
        double p = comparison.test().pValue();
        String k = Figures.of(comparison.fit().k());
        String said =
                p < 0.05
                        ? "The %s differ: by chance alone they would lie this far apart in %s of"
                                + " such sheets"
                        : "That the %s differ can't be told: by chance alone they would lie this"
                                + " far apart in %s of such sheets";
        return said.formatted(values(), Figures.percent(p))
                + (k.equals("-") ? " (counts as Poisson)." : " (k %s for all).".formatted(k));
    }

    private String values() {
        return "values of " + column;
    }
}
