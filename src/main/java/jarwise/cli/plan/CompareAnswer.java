package jarwise.cli.plan;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.plan.ComparisonOutlook;
import jarwise.plan.ComparisonPlan;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.efficacy.EfficacyVerdict;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a trial could tell, as it is printed.
 *
 * @param plan the trial
 * @param estimator how it will be estimated
 * @param outlook what came out
 * @param seed of the simulation
 */
record CompareAnswer(
        ComparisonPlan plan, EfficacyEstimator estimator, ComparisonOutlook outlook, long seed) {

    Answer answer() {
        JsonObject json =
                new JsonObject()
                        .put("efficacy", plan.efficacy())
                        .put("lowerMedian", outlook.lowerMedian())
                        .put("upperMedian", outlook.upperMedian())
                        .put("probabilityWorked", outlook.probability(EfficacyVerdict.WORKED))
                        .put("probabilityPartly", outlook.probability(EfficacyVerdict.PARTLY))
                        .put("probabilityFailed", outlook.probability(EfficacyVerdict.FAILED))
                        .put(
                                "probabilityCannotTell",
                                outlook.probability(EfficacyVerdict.CANNOT_TELL))
                        .put("method", "simulation")
                        .put("seed", seed)
                        .put("trials", PlanCompareCommand.TRIALS)
                        .put("target", estimator.target())
                        .put("confidenceLevel", estimator.confidenceLevel());
        return new Answer(json, List.of(), text(), warnings());
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        warnings.add(
                ("Chances are from %d drawn trials: give or take 3 in 100. One bench an arm: what a"
                                + " bench does by itself is not in them.")
                        .formatted(PlanCompareCommand.TRIALS));
        if (outlook.lowerMedian().isEmpty() || outlook.upperMedian().isEmpty()) {
            warnings.add("The trial in the middle sets no limit on one side or both.");
        }
        return warnings;
    }

    private String text() {
        TextTable table = new TextTable(1, List.of("verdict", "chance"));
        for (EfficacyVerdict verdict : EfficacyVerdict.values()) {
            String chance = Figures.percent(outlook.probability(verdict));
            table.add(List.of(verdict.text(), chance));
        }
        return ("%s%nIf the treatment takes %s, %d jars in each arm before and after speak as"
                        + " above; the interval in the middle is %s to %s.%n")
                .formatted(
                        table.text(),
                        Figures.percent(plan.efficacy()),
                        plan.jarsPerGroup(),
                        percent(outlook.lowerMedian()),
                        percent(outlook.upperMedian()))
                .replace("\r", "");
    }

    private static String percent(OptionalDouble share) {
        return share.isPresent() ? Figures.percent(share.getAsDouble()) : "no limit";
    }
}
