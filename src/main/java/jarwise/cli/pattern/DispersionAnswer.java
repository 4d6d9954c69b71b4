package jarwise.cli.pattern;

import jarwise.base.Message;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.dispersion.ChiSquaredTest;
import jarwise.stats.dispersion.CountDispersion;
import jarwise.stats.dispersion.IwaoRegression;
import jarwise.stats.dispersion.LineConstant;
import jarwise.stats.dispersion.MeanVarianceLines;
import jarwise.stats.dispersion.TaylorRegression;
import jarwise.usecase.pattern.DescribeDispersion;
import jarwise.usecase.pattern.GroupDispersion;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Indices of dispersion as they are printed.
 *
 * @param described the indices
 * @param warnings sentences about the sheet, then about the groups
 */
record DispersionAnswer(DescribeDispersion described, List<String> warnings) {

    static DispersionAnswer of(DescribeDispersion described, List<Message> notes) {
        Sentences sentences = new Sentences(described.groups().size()).addNotes(notes);
        for (GroupDispersion group : described.groups()) {
            group.dispersion().warnings().forEach(w -> sentences.add(group.name(), w));
        }
        described.lines().ifPresent(l -> l.warnings().forEach(w -> sentences.add("", w)));
        return new DispersionAnswer(described, sentences.all());
    }

    Answer answer() {
        List<JsonObject> objects =
                new ArrayList<>(described.groups().stream().map(this::object).toList());
        JsonObject json = new JsonObject().putObjects("groups", objects);
        described.lines().flatMap(MeanVarianceLines::taylor).ifPresent(t -> put(json, t));
        described.lines().flatMap(MeanVarianceLines::iwao).ifPresent(i -> put(json, i));
        return new Answer(json, objects, text(), warnings);
    }

    private JsonObject object(GroupDispersion group) {
        CountDispersion indices = group.dispersion();
        JsonObject object =
                new JsonObject()
                        .put("group", group.group())
                        .put("sampleSize", indices.sampleSize())
                        .put("mean", indices.mean())
                        .put("variance", indices.variance())
                        .put("varianceToMeanRatio", indices.varianceToMeanRatio());
        putTest(object, indices.test());
        object.put("kMoments", indices.kMoments())
                .put("kZeroClass", indices.kZeroClass())
                .put("kMaximumLikelihood", indices.kMaximumLikelihood())
                .put("meanCrowding", indices.meanCrowding())
                .put("patchiness", indices.patchiness());
        JsonObject morisita = new JsonObject();
        morisita.put("index", number(indices.morisita().map(m -> m.index())));
        putTest(morisita, indices.morisita().map(m -> m.test()));
        return object.put("morisita", morisita);
    }

    private static void putTest(JsonObject object, Optional<ChiSquaredTest> test) {
        object.put("statistic", number(test.map(ChiSquaredTest::statistic)));
        if (test.isPresent()) {
            object.put("degreesOfFreedom", test.get().degreesOfFreedom());
        } else {
            object.put("degreesOfFreedom", OptionalDouble.empty());
        }
        object.put("pValue", number(test.map(ChiSquaredTest::pValue)));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private static void put(JsonObject json, TaylorRegression taylor) {
        JsonObject object =
                new JsonObject()
                        .put("a", taylor.a())
                        .put("b", taylor.b().estimate())
                        .put("standardErrorB", taylor.b().standardError())
                        .put("rSquared", taylor.rSquared())
                        .put("lowerA", Math.pow(10, taylor.log10A().lower()))
                        .put("upperA", Math.pow(10, taylor.log10A().upper()))
                        .put("lowerB", taylor.b().lower())
                        .put("upperB", taylor.b().upper())
                        .put("confidenceLevel", 0.95);
        json.put("taylor", object);
    }

    private static void put(JsonObject json, IwaoRegression iwao) {
        LineConstant alpha = iwao.alpha();
        LineConstant beta = iwao.beta();
        JsonObject object =
                new JsonObject()
                        .put("alpha", alpha.estimate())
                        .put("beta", beta.estimate())
                        .put("standardErrorAlpha", alpha.standardError())
                        .put("standardErrorBeta", beta.standardError())
                        .put("rSquared", iwao.rSquared())
                        .put("lowerAlpha", alpha.lower())
                        .put("upperAlpha", alpha.upper())
                        .put("lowerBeta", beta.lower())
                        .put("upperBeta", beta.upper())
                        .put("confidenceLevel", 0.95);
        json.put("iwao", object);
    }

    private String text() {
        StringBuilder text = new StringBuilder(table().text()).append('\n');
        described.groups().forEach(group -> text.append(sentence(group)).append('\n'));
        described.lines().ifPresent(lines -> text.append(lines(lines)));
        return text.toString();
    }

    private TextTable table() {
        List<String> header = new ArrayList<>(described.groups().get(0).group().keySet());
        int texts = header.size();
        header.addAll(
                List.of("samples", "mean", "variance", "ratio", "p", "k (moments)", "k (zeros)"));
        header.addAll(List.of("k (likelihood)", "crowding", "patchiness", "Morisita"));
        TextTable table = new TextTable(texts, header);
        for (GroupDispersion group : described.groups()) {
            CountDispersion indices = group.dispersion();
            List<String> cells = new ArrayList<>(group.group().values());
            cells.add(String.valueOf(indices.sampleSize()));
            cells.add(Figures.of(indices.mean()));
            cells.add(Figures.of(indices.variance()));
            cells.add(Figures.of(indices.varianceToMeanRatio()));
            cells.add(indices.test().map(test -> p(test.pValue())).orElse("-"));
            cells.add(Figures.of(indices.kMoments()));
            cells.add(Figures.of(indices.kZeroClass()));
            cells.add(Figures.of(indices.kMaximumLikelihood()));
            cells.add(Figures.of(indices.meanCrowding()));
            cells.add(Figures.of(indices.patchiness()));
            cells.add(Figures.of(number(indices.morisita().map(m -> m.index()))));
            table.add(cells);
        }
        return table;
    }

    private static String p(double pValue) {
        return pValue < 0.0001 ? "< 0.0001" : Figures.of(Math.round(pValue * 1e4) / 1e4);
    }

    private static String sentence(GroupDispersion group) {
        String name = group.name().isEmpty() ? "" : group.name() + ": ";
        CountDispersion indices = group.dispersion();
        if (indices.test().isEmpty()) {
            return name + "these samples cannot tell.";
        }
        double pValue = indices.test().get().pValue();
        if (pValue < 0.05) {
            return name + "clumped; the counts vary more than by chance.";
        }
        return name
                + (pValue > 0.95
                        ? "not clumped; the counts vary less than by chance."
                        : "no sign of clumping beyond chance.");
    }

    private static String lines(MeanVarianceLines lines) {
        StringBuilder text = new StringBuilder();
        lines.taylor()
                .ifPresent(
                        taylor ->
                                text.append(
                                        "Taylor: variance = %s mean^%s, slope between %s and %s.\n"
                                                .formatted(
                                                        Figures.of(taylor.a()),
                                                        Figures.of(taylor.b().estimate()),
                                                        Figures.of(taylor.b().lower()),
                                                        Figures.of(taylor.b().upper()))));
        lines.iwao()
                .ifPresent(
                        iwao ->
                                text.append(
                                        "Iwao: crowding = %s + %s mean, slope between %s and %s.\n"
                                                .formatted(
                                                        Figures.of(iwao.alpha().estimate()),
                                                        Figures.of(iwao.beta().estimate()),
                                                        Figures.of(iwao.beta().lower()),
                                                        Figures.of(iwao.beta().upper()))));
        return text.toString();
    }
}
