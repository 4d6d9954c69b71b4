package jarwise.cli.plan;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.sequential.GreenLine;
import jarwise.stats.sequential.KunoLine;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/**
 * A fixed-precision stop line, as it is printed.
 *
 * @param line cumulative count by number of samples
 * @param precision wanted standard error as a share of the mean
 * @param stopsAtOrOver whether to stop at or over the line, else at or under it
 * @param why why there is no line where there is none
 * @param json the answer so far
 */
record PrecisionLineAnswer(
        IntFunction<OptionalDouble> line,
        double precision,
        boolean stopsAtOrOver,
        String why,
        JsonObject json) {

    static PrecisionLineAnswer of(GreenLine green) {
        String fixed =
                "With b = 2 the precision depends on the number of samples alone, a/D² = %s: there"
                        + " is no line.";
        double squared = green.relativeStandardError() * green.relativeStandardError();
        return new PrecisionLineAnswer(
                green::cumulativeCount,
                green.relativeStandardError(),
                green.stopsAtOrOver(),
                green.taylorB() == 2
                        ? fixed.formatted(Figures.of(green.taylorA() / squared))
                        : "Where there is no line, the total is beyond all numbers.",
                new JsonObject()
                        .put("method", "green")
                        .put("taylorA", green.taylorA())
                        .put("taylorB", green.taylorB()));
    }

    static PrecisionLineAnswer of(KunoLine kuno) {
        return new PrecisionLineAnswer(
                kuno::cumulativeCount,
                kuno.relativeStandardError(),
                true,
                ("There is no line up to %s samples, (beta - 1)/D²: so few never reach the"
                                + " precision.")
                        .formatted(Figures.of(kuno.sampleSizeWithoutLine())),
                new JsonObject()
                        .put("method", "kuno")
                        .put("iwaoAlpha", kuno.iwaoAlpha())
                        .put("iwaoBeta", kuno.iwaoBeta()));
    }

    Answer answer(double units, int maxSamples) {
        TextTable table =
                new TextTable(
                        0,
                        List.of(
                                "samples",
                                stopsAtOrOver ? "stop at or over" : "stop at or under",
                                "density there"));
        List<JsonObject> entries = new ArrayList<>();
        boolean whole = true;
        for (int n = 1; n <= maxSamples; n++) {
            OptionalDouble count = line.apply(n);
            double samplingUnits = n * units;
            OptionalDouble density =
                    count.isPresent()
                            ? OptionalDouble.of(count.getAsDouble() / samplingUnits)
                            : count;
            whole &= count.isPresent();
            table.add(List.of(String.valueOf(n), wholeCount(count), Figures.of(density)));
            entries.add(
                    new JsonObject()
                            .put("sampleSize", n)
                            .put("cumulativeCount", count)
                            .put("density", density));
        }
        json.put("precision", precision)
                .put("units", units)
                .put("maxSamples", maxSamples)
                .put("stopWhen", stopsAtOrOver ? "at or over" : "at or under")
                .putObjects("stopLines", entries);
        String text = table.text() + '\n' + sentence() + '\n';
        return new Answer(json, entries, text, warnings(whole));
    }

    private String wholeCount(OptionalDouble count) {
        if (count.isEmpty()) {
            return "-";
        }
        double value = count.getAsDouble();
        return "%.0f".formatted(stopsAtOrOver ? Math.ceil(value) : Math.floor(value));
    }

    private String sentence() {
        return "Stop when the total is %s the line: the standard error is then %s of the mean."
                .formatted(
                        stopsAtOrOver ? "at or over" : "at or under", Figures.percent(precision));
    }

    private List<String> warnings(boolean whole) {
        List<String> warnings = new ArrayList<>();
        if (!whole) {
            warnings.add(why);
        }
        if (!stopsAtOrOver && whole) {
            warnings.add(
                    "With b over 2 dense populations need more samples: stop at or under the"
                            + " line.");
        }
        return warnings;
    }
}
