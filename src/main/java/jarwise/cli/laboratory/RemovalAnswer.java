package jarwise.cli.laboratory;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.removal.FirstWashTest;
import jarwise.stats.removal.RemovalCatches;
import jarwise.stats.removal.RemovalEstimate;
import jarwise.stats.removal.RemovalFit;
import jarwise.stats.removal.RemovalMethod;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A total from repeat washes as it is printed.
 *
 * @param catches what came off, wash by wash
 * @param estimate the total
 * @param first whether the first wash differs, where that was asked
 */
record RemovalAnswer(
        RemovalCatches catches, RemovalEstimate estimate, Optional<FirstWashTest> first) {

    private static final double UNLIKELY = 0.05;

    Answer answer() {
        JsonObject json =
                new JsonObject()
                        .put("confidenceLevel", estimate.confidenceLevel())
                        .put("total", catches.total())
                        .put("estimate", estimate.estimate());
        if (estimate.method() != RemovalMethod.ML) {
            json.put("standardError", estimate.standardError());
        }
        json.put("lower", estimate.lower())
                .put("upper", estimate.upper())
                .put("removalProbability", estimate.removalProbability())
                .put("finite", estimate.finite());
        estimate.fit().ifPresent(fit -> json.put("fit", object(fit)));
        first.ifPresent(test -> json.put("firstWash", object(test)));
        return new Answer(json, List.of(), text(), warnings());
    }

    private static JsonObject object(RemovalFit fit) {
        return new JsonObject()
                .put("statistic", fit.statistic())
                .put("degreesOfFreedom", fit.degreesOfFreedom())
                .put("pValue", fit.pValue());
    }

    private static JsonObject object(FirstWashTest test) {
        return new JsonObject()
                .put("estimate", test.estimate())
                .put("lower", test.lower())
                .put("upper", test.upper())
                .put("firstRemovalProbability", test.firstRemovalProbability())
                .put("removalProbability", test.removalProbability())
                .put("statistic", test.statistic())
                .put("degreesOfFreedom", 1)
                .put("pValue", test.pValue());
    }

    private String text() {
        TextTable table =
                new TextTable(0, List.of("came off", "were there", "lower", "upper", "per wash"));
        table.add(
                List.of(
                        String.valueOf(catches.total()),
                        Figures.of(estimate.estimate()),
                        Figures.of(estimate.lower()),
                        Figures.of(estimate.upper()),
                        Figures.of(estimate.removalProbability())));
        return table.text() + "\n" + sentence() + "\n";
    }

    private String sentence() {
        if (estimate.estimate().isEmpty()) {
            return "At least %d were there; how many, these washes do not say."
                    .formatted(catches.total());
        }
        String upper =
                estimate.upper().isPresent()
                        ? Figures.of(estimate.upper())
                        : "no limit that these washes could set";
        return "%s were there, between %s and %s (%s sure); one wash brings off %s."
                .formatted(
                        Figures.of(estimate.estimate()),
                        Figures.of(estimate.lower()),
                        upper,
                        Figures.percent(estimate.confidenceLevel()),
                        Figures.percent(estimate.removalProbability().orElseThrow()));
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        if (!estimate.finite()) {
            warnings.add(
                    "The washes do not fall off enough for this method to say how many were there:"
                            + " only the lower limit exists. Maybe wash again.");
        } else if (estimate.upper().isEmpty()) {
            warnings.add("These washes set no upper limit. Maybe wash again.");
        }
        if (estimate.fit().filter(fit -> fit.pValue() < UNLIKELY).isPresent()) {
            warnings.add(
                    "The washes do not fall off as they would if each brought off the same share;"
                            + " the total may be far off.");
        }
        if (estimate.standardError().orElse(1) == 0) {
            warnings.add(
                    "The standard error is 0 because all came off in the first wash; that is not"
                            + " certainty. Maybe use --method ml, whose limits know it.");
        }
        first.filter(test -> test.pValue() < UNLIKELY)
                .map(RemovalAnswer::firstWashDiffers)
                .ifPresent(warnings::add);
        return warnings;
    }

    private static String firstWashDiffers(FirstWashTest test) {
        return "The first wash brings off another share than those after it; "
                + (test.estimate().isPresent()
                        ? "see firstWash for the total that allows for it."
                        : "no total can be told that allows for it.");
    }
}
