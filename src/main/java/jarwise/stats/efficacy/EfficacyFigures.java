package jarwise.stats.efficacy;

import jarwise.stats.efficacy.ClassicalEfficacy.BeforeAfter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The figures of one estimate while they are put together; what is not put is not there. */
final class EfficacyFigures {

    private final EfficacyTrial trial;
    private final double target;
    private final List<String> warnings = new ArrayList<>();
    private OptionalDouble efficacy = OptionalDouble.empty();
    private OptionalDouble lower = OptionalDouble.empty();
    private OptionalDouble upper = OptionalDouble.empty();
    private OptionalDouble interaction = OptionalDouble.empty();
    private OptionalDouble standardError = OptionalDouble.empty();
    private OptionalDouble k = OptionalDouble.empty();
    private OptionalDouble pValue = OptionalDouble.empty();
    private double logLikelihood;

    EfficacyFigures(EfficacyTrial trial, double target) {
        this.trial = trial;
        this.target = target;
    }

    void warn(String warning) {
        warnings.add(warning);
    }

    void fit(TrialModel.Fit fit) {
        k = fit.finiteK();
        logLikelihood = fit.logLikelihood();
    }

    void pValue(double value) {
        pValue = OptionalDouble.of(value);
    }

    void efficacy(double value) {
        efficacy = OptionalDouble.of(value);
    }

    void interaction(double value, double error) {
        interaction = OptionalDouble.of(value);
        standardError = OptionalDouble.of(error);
        efficacy(-Math.expm1(value));
    }

    void limits(OptionalDouble from, OptionalDouble to) {
        lower = from;
        upper = to;
    }

    EfficacyEstimate estimate() {
        if (efficacy.isPresent() && (lower.isEmpty() || upper.isEmpty())) {
            warn(EfficacyWarnings.LIMIT_MISSING);
        }
        BeforeAfter treated =
                new BeforeAfter(
                        GroupTotals.density(trial.treatedBefore()),
                        GroupTotals.density(trial.treatedAfter()));
        BeforeAfter check =
                new BeforeAfter(
                        GroupTotals.density(trial.checkBefore()),
                        GroupTotals.density(trial.checkAfter()));
        warnings.addAll(EfficacyWarnings.ofDesign(trial, k));
        return new EfficacyEstimate(
                efficacy,
                lower,
                upper,
                interaction,
                standardError,
                k,
                logLikelihood,
                pValue,
                ClassicalEfficacy.hendersonTilton(treated, check),
                ClassicalEfficacy.abbott(treated.after(), check.after()),
                EfficacyVerdict.of(lower, upper, target),
                warnings);
    }
}
