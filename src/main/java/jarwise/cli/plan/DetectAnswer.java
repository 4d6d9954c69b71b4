package jarwise.cli.plan;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.detect.ClumpedDetection;
import jarwise.stats.detect.DetectionCurve;
import jarwise.stats.detect.FiniteLot;
import jarwise.wire.json.JsonObject;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;

/**
 * A plan to find something, as it is printed.
 *
 * @param curve the chance of a find by number of samples
 * @param confidence wanted chance
 * @param sampleSize samples that reach it, if any number does
 * @param things what is counted: samples, or units of a lot
 * @param json the answer so far
 */
record DetectAnswer(
        DetectionCurve curve,
        double confidence,
        OptionalLong sampleSize,
        String things,
        JsonObject json) {

    static DetectAnswer of(ClumpedDetection plan, double confidence) {
        OptionalLong size = plan.sampleSize(confidence);
        JsonObject json = start(plan, size).put("samplesExact", plan.samplesExact(confidence));
        return new DetectAnswer(plan, confidence, size, "samples", json);
    }

    static DetectAnswer of(FiniteLot lot, double confidence) {
        DetectAnswer answer = of(lot, "hypergeometric", confidence);
        answer.json.put("infestedUnits", lot.infestedUnits());
        return answer;
    }

    static DetectAnswer of(DetectionCurve lot, String method, double confidence) {
        OptionalLong size = lot.sampleSize(confidence);
        return new DetectAnswer(
                lot, confidence, size, "units", start(lot, size).put("method", method));
    }

    private static JsonObject start(DetectionCurve curve, OptionalLong size) {
        return new JsonObject()
                .put("sampleSize", size)
                .put("probability", curve.probability(size.orElse(curve.mostSamples())));
    }

    Answer answer() {
        json.put("confidenceLevel", confidence);
        List<String> warnings = sampleSize.isPresent() ? List.of() : List.of(tooFew());
        return new Answer(json, List.of(), text(), warnings);
    }

    private String tooFew() {
        String wanted = Figures.percent(confidence);
        String chance = Figures.percent(curve.probability(curve.mostSamples()));
        if (curve instanceof FiniteLot lot) {
            return "Not even the whole lot of %d units reaches a chance of %s: it finds it with %s."
                    .formatted(lot.lotSize(), wanted, chance);
        }
        return "Not even %d %s reach a chance of %s: they find it with %s."
                .formatted(curve.mostSamples(), things, wanted, chance);
    }

    private String text() {
        TextTable table = new TextTable(0, List.of(things, "chance of a find"));
        long size = sampleSize.orElse(curve.mostSamples());
        LongStream.of(1, size / 4, size / 2, size, 2 * size)
                .filter(n -> n >= 1 && n <= curve.mostSamples())
                .distinct()
                .forEach(
                        n ->
                                table.add(
                                        List.of(
                                                String.valueOf(n),
                                                Figures.percent(curve.probability(n)))));
        return table.text() + (sampleSize.isPresent() ? "\n" + sentence(size) + "\n" : "");
    }

    private String sentence(long size) {
        return "%d %s find it with a chance of %s, if it is there as planned."
                .formatted(size, things, Figures.percent(curve.probability(size)));
    }
}
