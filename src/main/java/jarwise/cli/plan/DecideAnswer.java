package jarwise.cli.plan;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.sequential.CountedSamples;
import jarwise.stats.sequential.SampleModel;
import jarwise.stats.sequential.SequentialOutcome;
import jarwise.stats.sequential.SequentialPlan;
import jarwise.stats.sequential.StopLines;
import jarwise.stats.sequential.WaldApproximation;
import jarwise.stats.sequential.WaldDesign;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A sequential plan, as it is printed.
 *
 * @param plan the plan
 * @param truth how counts really are spread
 * @param curve what becomes of it at some densities
 * @param chosen whether the densities were asked for
 */
record DecideAnswer(SequentialPlan plan, SampleModel truth, List<Point> curve, boolean chosen) {

    private static final double MUCH = 0.05;
    private static final int SHOWN = 5;

    /** The plan at one true density. */
    record Point(double density, SequentialOutcome exact, WaldApproximation wald) {}

    static DecideAnswer of(SequentialPlan plan, SampleModel truth, List<Double> densities) {
        boolean chosen = !densities.isEmpty();
        List<Double> all = chosen ? densities : plan.usualDensities();
        return new DecideAnswer(
                plan, truth, all.stream().map(d -> point(plan, truth, d)).toList(), chosen);
    }

    private static Point point(SequentialPlan plan, SampleModel truth, double density) {
        return new Point(
                density, plan.outcome(density, truth), plan.waldApproximation(density, truth));
    }

    Answer answer() {
        List<JsonObject> points = curve.stream().map(DecideAnswer::json).toList();
        StopLines lines = plan.lines();
        JsonObject json =
                inputs().put("slope", lines.slope())
                        .put("lowerIntercept", lines.lowerIntercept())
                        .put("upperIntercept", lines.upperIntercept())
                        .putObjects("stopLines", stopLines(lines))
                        .putObjects("curve", points);
        return new Answer(json, points, text(), warnings());
    }

    private JsonObject inputs() {
        WaldDesign design = plan.design();
        JsonObject json = new JsonObject().put("distribution", distribution());
        putK(json, "k", design.model());
        putK(json, "trueK", truth);
        return json.put("low", design.lowerDensity())
                .put("high", design.upperDensity())
                .put("alpha", design.alpha())
                .put("beta", design.beta())
                .put("units", design.unitsPerSample())
                .put("minSamples", plan.minSamples())
                .put("maxSamples", plan.maxSamples());
    }

    private String distribution() {
        if (plan.design().model() instanceof CountedSamples counted) {
            return counted.isPoisson() ? "poisson" : "negative binomial";
        }
        return "binomial";
    }

    private static void putK(JsonObject json, String field, SampleModel model) {
        if (model instanceof CountedSamples counted && !counted.isPoisson()) {
            json.put(field, counted.k());
        }
    }

    private static List<JsonObject> stopLines(StopLines lines) {
        return IntStream.rangeClosed(1, lines.maxSamples())
                .mapToObj(
                        n ->
                                new JsonObject()
                                        .put("sampleSize", n)
                                        .put("lower", lines.lower(n))
                                        .put("upper", lines.upper(n))
                                        .put("stopBelow", lines.stopBelow(n))
                                        .put("stopAbove", lines.stopAbove(n)))
                .toList();
    }

    private static JsonObject json(Point point) {
        SequentialOutcome exact = point.exact();
        JsonObject quantiles = new JsonObject();
        for (double share : new double[] {0.5, 0.9, 0.95}) {
            quantiles.put(String.valueOf(share), exact.sampleNumberQuantile(share));
        }
        return new JsonObject()
                .put("density", point.density())
                .put("probabilityBelow", exact.probabilityBelow())
                .put("probabilityAbove", exact.probabilityAbove())
                .put("probabilityUndecided", exact.probabilityUndecided())
                .put("averageSampleNumber", exact.averageSampleNumber())
                .put("sampleNumberQuantiles", quantiles)
                .put("waldProbabilityBelow", point.wald().probabilityBelow())
                .put("waldAverageSampleNumber", point.wald().averageSampleNumber());
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        StopLines lines = plan.lines();
        long without =
                IntStream.rangeClosed(1, lines.maxSamples())
                        .filter(n -> lines.stopBelow(n).isEmpty())
                        .count();
        if (without > 0) {
            warnings.add(
                    "Up to sample %d no total is low enough to stop below: no number stands there."
                            .formatted(without));
        }
        if (!truth.equals(plan.design().model())) {
            warnings.add(
                    "The stop lines are drawn for %s, the chances worked out for %s."
                            .formatted(spread(plan.design().model()), spread(truth)));
        }
        worst().filter(point -> point.exact().probabilityUndecided() > MUCH)
                .forEach(point -> warnings.add(undecided(point)));
        return warnings;
    }

    private static String spread(SampleModel model) {
        return model instanceof CountedSamples counted && !counted.isPoisson()
                ? "k " + Figures.of(counted.k())
                : "counts that do not clump";
    }

    private Stream<Point> worst() {
        return curve.stream()
                .max(
                        (a, b) ->
                                Double.compare(
                                        a.exact().probabilityUndecided(),
                                        b.exact().probabilityUndecided()))
                .stream();
    }

    private String undecided(Point point) {
        return ("At a density of %s, %s of rounds are still undecided after %d samples; they are"
                        + " not shared out.")
                .formatted(
                        Figures.of(point.density()),
                        Figures.percent(point.exact().probabilityUndecided()),
                        plan.maxSamples());
    }

    private String text() {
        return stopTable().text() + '\n' + curveTable().text() + '\n' + sentence() + '\n';
    }

    private TextTable stopTable() {
        StopLines lines = plan.lines();
        TextTable table =
                new TextTable(0, List.of("samples", "below at or under", "above at or over"));
        for (int n = lines.minSamples(); n <= lines.maxSamples(); n++) {
            OptionalLong below = lines.stopBelow(n);
            table.add(
                    List.of(
                            String.valueOf(n),
                            below.isPresent() ? String.valueOf(below.getAsLong()) : "-",
                            String.valueOf(lines.stopAbove(n))));
        }
        return table;
    }

    private TextTable curveTable() {
        TextTable table =
                new TextTable(
                        0,
                        List.of(
                                "density",
                                "below",
                                "above",
                                "undecided",
                                "samples",
                                "95 % within"));
        for (int i = 0; i < curve.size(); i += chosen ? 1 : SHOWN) {
            SequentialOutcome exact = curve.get(i).exact();
            table.add(
                    List.of(
                            Figures.of(curve.get(i).density()),
                            Figures.percent(exact.probabilityBelow()),
                            Figures.percent(exact.probabilityAbove()),
                            Figures.percent(exact.probabilityUndecided()),
                            Figures.of(exact.averageSampleNumber()),
                            String.valueOf(exact.sampleNumberQuantile(0.95))));
        }
        return table;
    }

    private String sentence() {
        WaldDesign design = plan.design();
        SequentialOutcome low = plan.outcome(design.lowerDensity(), truth);
        SequentialOutcome high = plan.outcome(design.upperDensity(), truth);
        return ("At %s it says \"below\" with a chance of %s, after %s samples on average; at %s"
                        + " it says \"above\" with a chance of %s, after %s.")
                .formatted(
                        Figures.of(design.lowerDensity()),
                        Figures.percent(low.probabilityBelow()),
                        Figures.of(low.averageSampleNumber()),
                        Figures.of(design.upperDensity()),
                        Figures.percent(high.probabilityAbove()),
                        Figures.of(high.averageSampleNumber()));
    }
}
