package jarwise.cli.pattern;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.space.BenchCount;
import jarwise.stats.space.NewNextToOld;
import jarwise.stats.space.Permutations;
import jarwise.stats.space.ShareOfBenches;
import jarwise.usecase.pattern.MapSpread;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The spread over a map as it is printed.
 *
 * @param spread what was found
 * @param permutations how the tests were drawn
 */
record SpreadAnswer(MapSpread spread, Permutations permutations) {

    Answer answer() {
        JsonObject json =
                new JsonObject()
                        .put("round", spread.round())
                        .put("benches", spread.benches().size())
                        .put("positive", positive())
                        .put("shareCorrected", share())
                        .put("moran", moran());
        spread.newNextToOld().ifPresent(joins -> json.put("newNextToOld", joins(joins)));
        List<JsonObject> map = spread.benches().stream().map(SpreadAnswer::object).toList();
        json.putObjects("map", map);
        Sentences sentences = new Sentences(1).addNotes(spread.notes());
        spread.warnings().forEach(warning -> sentences.add("", warning));
        return new Answer(json, List.of(), text(), sentences.all());
    }

    private long positive() {
        return spread.benches().stream().filter(BenchCount::isPositive).count();
    }

    private JsonObject share() {
        ShareOfBenches share = spread.share();
        return new JsonObject()
                .put("estimate", share.estimate())
                .put("lower", share.lower())
                .put("upper", share.upper())
                .put("effort", share.effort())
                .put(
                        "k",
                        Double.isInfinite(share.k())
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(share.k()));
    }

    private JsonObject moran() {
        JsonObject object =
                new JsonObject()
                        .put("index", spread.moran().index())
                        .put("expected", spread.moran().expected())
                        .put("pValue", spread.moran().pValue());
        return drawn(object);
    }

    private JsonObject joins(NewNextToOld joins) {
        JsonObject object =
                new JsonObject()
                        .put("earlier", spread.earlier().orElse(""))
                        .put("later", spread.round())
                        .put("oldBenches", joins.oldBenches())
                        .put("couldTurn", joins.couldTurn())
                        .put("newBenches", joins.newBenches())
                        .put("joins", joins.joins())
                        .put("expected", joins.expected())
                        .put("pValue", joins.pValue());
        return drawn(object);
    }

    private JsonObject drawn(JsonObject object) {
        return object.put("permutations", permutations.number()).put("seed", permutations.seed());
    }

    private static JsonObject object(BenchCount bench) {
        return new JsonObject()
                .put("house", bench.house())
                .put("bench", bench.bench())
                .put("x", bench.x())
                .put("y", bench.y())
                .put("samplingUnits", bench.effort())
                .put("individuals", bench.individuals())
                .put("density", bench.density());
    }

    private String text() {
        StringBuilder text = new StringBuilder(table().text()).append('\n');
        ShareOfBenches share = spread.share();
        text.append(
                ("%d of %d benches had a find. With %s sampling units on each: %s, between %s and"
                                + " %s (95 %% sure).\n")
                        .formatted(
                                positive(),
                                spread.benches().size(),
                                Figures.of(share.effort()),
                                Figures.percent(share.estimate()),
                                Figures.percent(share.lower()),
                                Figures.percent(share.upper())));
        spread.moran().pValue().ifPresent(p -> text.append(moranSentence(p)));
        spread.newNextToOld()
                .filter(joins -> joins.pValue().isPresent())
                .ifPresent(joins -> text.append(joinSentence(joins)));
        return text.toString();
    }

    private String moranSentence(double pValue) {
        String what =
                pValue <= 0.05
                        ? "Dense benches lie together"
                        : "No sign that dense benches lie together";
        return "%s (Moran's I %s, by chance %s; p %s).\n"
                .formatted(
                        what,
                        Figures.of(spread.moran().index()),
                        Figures.of(spread.moran().expected()),
                        Figures.of(pValue));
    }

    private static String joinSentence(NewNextToOld joins) {
        double pValue = joins.pValue().orElseThrow();
        String what =
                pValue <= 0.05
                        ? "New finds lie beside old ones"
                        : "No sign that new finds lie beside old ones";
        return "%s (%d pairs, by chance %s; p %s).\n"
                .formatted(what, joins.joins(), Figures.of(joins.expected()), Figures.of(pValue));
    }

    private TextTable table() {
        TextTable table =
                new TextTable(
                        2, List.of("house", "bench", "x", "y", "units", "counted", "density"));
        for (BenchCount bench : spread.benches()) {
            List<String> cells = new ArrayList<>(List.of(bench.house(), bench.bench()));
            cells.add(Figures.of(bench.x()));
            cells.add(Figures.of(bench.y()));
            cells.add(Figures.of(bench.effort()));
            cells.add(String.valueOf(bench.individuals()));
            cells.add(Figures.of(bench.density()));
            table.add(cells);
        }
        return table;
    }
}
