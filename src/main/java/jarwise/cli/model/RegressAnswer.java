package jarwise.cli.model;

import jarwise.base.Message;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.stats.regression.Coefficient;
import jarwise.stats.regression.LikelihoodRatio;
import jarwise.stats.regression.ProfileLimits;
import jarwise.stats.regression.RegressionFit;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A regression as it is printed.
 *
 * @param fit the regression
 * @param notes about the sheet
 */
record RegressAnswer(RegressionFit fit, List<Message> notes) {

    private record Line(
            Coefficient coefficient,
            OptionalDouble estimate,
            OptionalDouble standardError,
            ProfileLimits limits,
            OptionalDouble pValue) {}

    Answer answer() {
        List<Line> lines =
                IntStream.range(0, fit.coefficients().size())
                        .parallel()
                        .mapToObj(this::line)
                        .toList();
        List<JsonObject> objects = lines.stream().map(RegressAnswer::object).toList();
        JsonObject json = FitFields.of(fit).putObjects("coefficients", objects);
        return new Answer(json, objects, text(lines), warnings(lines));
    }

    private Line line(int j) {
        double[] only = fit.only(j);
        boolean anything = fit.logLikelihood() < 0;
        return new Line(
                fit.coefficients().get(j),
                fit.estimate(only),
                fit.standardError(only),
                fit.limits(only, Cuts.OF_95_PERCENT),
                anything
                        ? OptionalDouble.of(LikelihoodRatio.of(fit.deviance(only, 0), 1).pValue())
                        : OptionalDouble.empty());
    }

    private static JsonObject object(Line line) {
        JsonObject object = new JsonObject().put("term", line.coefficient().term());
        line.coefficient().level().ifPresent(level -> object.put("level", level));
        return object.put("estimate", line.estimate())
                .put("standardError", line.standardError())
                .put("lower", line.limits().lower())
                .put("upper", line.limits().upper())
                .put("pValue", line.pValue());
    }

    private List<String> warnings(List<Line> lines) {
        List<String> warnings = new ArrayList<>();
        notes.forEach(note -> warnings.add(Words.of(Language.ENGLISH).say(note)));
        for (Line line : lines) {
            if (line.estimate().isEmpty() && fit.logLikelihood() < 0) {
                warnings.add(
                        ("\"%s\" has no estimate: nothing was found at a level, so that it could be"
                                        + " as far off as one likes; only one limit exists.")
                                .formatted(line.coefficient()));
            }
        }
        warnings.addAll(FitFields.warnings(fit));
        return warnings;
    }

    private String text(List<Line> lines) {
        TextTable table =
                new TextTable(1, List.of("term", "estimate", "std. error", "lower", "upper", "p"));
        for (Line line : lines) {
            table.add(
                    List.of(
                            line.coefficient().toString(),
                            Figures.of(line.estimate()),
                            Figures.of(line.standardError()),
                            Figures.of(line.limits().lower()),
                            Figures.of(line.limits().upper()),
                            Figures.p(line.pValue())));
        }
        String k =
                fit.k().isPresent()
                        ? "One k for all: %s.".formatted(Figures.of(fit.k()))
                        : "The counts scatter no more than Poisson counts.";
        return table.text()
                + ("\nEstimates are natural logarithms: 0.69 is twice as many. %s"
                                + " Log-likelihood %s.\n")
                        .formatted(k, Figures.of(fit.logLikelihood()));
    }
}
