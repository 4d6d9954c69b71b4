package jarwise.cli.pattern;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.stats.growth.TrendFigure;
import jarwise.usecase.pattern.GrowthOptions;
import jarwise.usecase.pattern.JudgeGrowth;
import jarwise.wire.json.JsonObject;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Growth as it is printed.
 *
 * @param growth what was found
 * @param options how it was judged
 */
record GrowthAnswer(JudgeGrowth growth, GrowthOptions options) {

    Answer answer() {
        TrendFigure rate = growth.trend().rate();
        JsonObject json =
                new JsonObject()
                        .put("confidenceLevel", options.confidenceLevel())
                        .put("time", unit())
                        .putTexts("rounds", growth.rounds().stream().map(String::valueOf).toList())
                        .put("sampleSize", growth.sampleSize())
                        .put("samplingUnits", growth.samplingUnits())
                        .put("rate", rate(rate))
                        .put("doublingTime", doubling(rate))
                        .put("density", density())
                        .put("k", growth.trend().fit().k())
                        .put("logLikelihood", growth.trend().fit().logLikelihood());
        if (options.threshold().isPresent()) {
            json.put("threshold", options.threshold())
                    .putObjects("passing", growth.passing().stream().map(this::object).toList());
        }
        return new Answer(json, List.of(), text(rate), warnings(rate));
    }

    private String unit() {
        return options.degreeDays().isPresent() ? "degree-days" : "days";
    }

    private static JsonObject rate(TrendFigure rate) {
        return new JsonObject()
                .put("estimate", rate.estimate())
                .put("standardError", rate.standardError())
                .put("lower", rate.lower())
                .put("upper", rate.upper())
                .put("pValue", rate.pValue());
    }

    private static JsonObject doubling(TrendFigure rate) {
        return new JsonObject()
                .put("estimate", doubling(rate.estimate()))
                .put("lower", doubling(rate.upper()))
                .put("upper", doubling(rate.lower()));
    }

    /** Only what grows doubles. */
    private static OptionalDouble doubling(OptionalDouble rate) {
        return rate.isPresent() && rate.getAsDouble() > 0
                ? OptionalDouble.of(Math.log(2) / rate.getAsDouble())
                : OptionalDouble.empty();
    }

    private JsonObject density() {
        TrendFigure log = growth.trend().logDensity(0);
        return new JsonObject()
                .put("estimate", exponential(log.estimate()))
                .put("lower", exponential(log.lower()))
                .put("upper", exponential(log.upper()));
    }

    private static OptionalDouble exponential(OptionalDouble log) {
        return log.isPresent()
                ? OptionalDouble.of(Math.exp(log.getAsDouble()))
                : OptionalDouble.empty();
    }

    private JsonObject object(JudgeGrowth.Passing passing) {
        JsonObject object =
                new JsonObject()
                        .put("probability", passing.probability())
                        .put("time", passing.time());
        if (options.degreeDays().isEmpty()) {
            object.putText(
                    "date",
                    passing.time().isPresent()
                            ? Optional.of(date(passing.time().getAsDouble()))
                            : Optional.empty());
        }
        return object;
    }

    private String date(double days) {
        LocalDate last = growth.rounds().get(growth.rounds().size() - 1);
        return last.plusDays((long) days).toString();
    }

    private List<String> warnings(TrendFigure rate) {
        Sentences sentences = new Sentences(1).addNotes(growth.notes());
        if (growth.rounds().size() == 2) {
            sentences.add("", "Two rounds make a line whatever happened; three or more tell more.");
        }
        if (rate.estimate().isEmpty()) {
            sentences.add("", "No rate: a density of 0 at one end has no rate of growth.");
        } else if (doubling(rate.estimate()).isEmpty()) {
            sentences.add("", "No doubling time: the density does not grow.");
        } else if (doubling(rate.lower()).isEmpty()) {
            sentences.add(
                    "", "No longest doubling time: these samples do not exclude that it stands.");
        }
        for (JudgeGrowth.Passing passing : growth.passing()) {
            if (passing.time().isEmpty()) {
                sentences.add(
                        "",
                        "The threshold is not passed with a chance of %s within the time looked at."
                                .formatted(Figures.percent(passing.probability())));
            }
        }
        if (!growth.passing().isEmpty()) {
            sentences.add("", "What lies ahead holds only if growth goes on as it did.");
        }
        return sentences.all();
    }

    private String text(TrendFigure rate) {
        StringBuilder text = new StringBuilder();
        text.append(
                "%d samples of %d rounds: ln(density) changes by %s a %s, between %s and %s.\n"
                        .formatted(
                                growth.sampleSize(),
                                growth.rounds().size(),
                                Figures.of(rate.estimate()),
                                options.degreeDays().isPresent() ? "degree-day" : "day",
                                Figures.of(rate.lower()),
                                Figures.of(rate.upper())));
        if (doubling(rate.estimate()).isPresent()) {
            text.append(
                    "It doubles in %s %s, between %s and %s.\n"
                            .formatted(
                                    Figures.of(doubling(rate.estimate())),
                                    unit(),
                                    Figures.of(doubling(rate.upper())),
                                    Figures.of(doubling(rate.lower()))));
        }
        for (JudgeGrowth.Passing passing : growth.passing()) {
            passing.time().ifPresent(time -> text.append(sentence(passing.probability(), time)));
        }
        return text.toString();
    }

    private String sentence(double probability, double time) {
        String when =
                options.degreeDays().isPresent()
                        ? "%s degree-days after the last round".formatted(Figures.of(time))
                        : "on " + date(time);
        return "Above the threshold with a chance of %s or more %s.\n"
                .formatted(Figures.percent(probability), when);
    }
}
