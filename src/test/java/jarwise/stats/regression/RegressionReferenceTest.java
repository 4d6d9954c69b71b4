package jarwise.stats.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Against general statistics software and printed output; tolerances as its authors suggest. */
class RegressionReferenceTest {

    private static final double CUT = 3.841458820694124; // chi-squared, 1 degree of freedom, 0.95

    static List<ReferenceTable.Row> models() {
        return ReferenceTable.read("regression/models.csv");
    }

    static List<ReferenceTable.Row> published() {
        return ReferenceTable.read("regression/published.csv");
    }

    private static ModelFrame frame(ReferenceTable.Row model) {
        return OpenData.frame(
                OpenData.rows(model.text("data"), model.text("count"), model.text("frequency")),
                List.of(model.text("terms").split(",")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("models")
    void findsTheSameMaximum(ReferenceTable.Row model) {
        RegressionFit fit = NegativeBinomialRegression.fit(frame(model));

        assertThat(fit.converged()).isTrue();
        assertThat(fit.logLikelihood()).isCloseTo(model.number("log_likelihood"), within(1e-8));
        assertThat(fit.aic()).isCloseTo(model.number("aic"), within(1e-8));
        assertThat(fit.k().getAsDouble() / model.number("k")).isCloseTo(1, within(1e-6));
        assertThat(fit.kStandardError().getAsDouble() / model.number("k_standard_error"))
                .isCloseTo(1, within(1e-6));
        assertThat(NegativeBinomialRegression.poisson(frame(model)).logLikelihood())
                .isCloseTo(model.number("poisson_log_likelihood"), within(1e-8));
        ProfileLimits limits = fit.limitsOfK(CUT);
        assertThat(limits.lower().getAsDouble() / model.number("k_lower"))
                .isCloseTo(1, within(1e-6));
        assertThat(limits.upper().getAsDouble() / model.number("k_upper"))
                .isCloseTo(1, within(1e-4));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("models")
    void givesTheSameCoefficients(ReferenceTable.Row model) {
        RegressionFit fit = NegativeBinomialRegression.fit(frame(model));
        List<ReferenceTable.Row> expected =
                ReferenceTable.read("regression/coefficients.csv").stream()
                        .filter(row -> row.text("model").equals(model.text("model")))
                        .toList();

        assertThat(fit.coefficients()).hasSameSizeAs(expected);
        for (int j = 0; j < expected.size(); j++) {
            ReferenceTable.Row row = expected.get(j);
            double[] only = fit.only(j);
            ProfileLimits limits = fit.limits(only, CUT);
            assertThat(fit.estimate(only).getAsDouble())
                    .as(row.toString())
                    .isCloseTo(row.number("estimate"), within(1e-6));
            assertThat(fit.standardError(only).getAsDouble())
                    .isCloseTo(row.number("standard_error"), within(1e-6));
            assertThat(limits.lower().getAsDouble())
                    .isCloseTo(row.number("profile_lower"), within(1e-5));
            assertThat(limits.upper().getAsDouble())
                    .isCloseTo(row.number("profile_upper"), within(1e-5));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    void reproducesPrintedFigures(ReferenceTable.Row model) {
        RegressionFit fit = NegativeBinomialRegression.fit(frame(model));

        assertThat(fit.coefficients()).hasSize((int) model.number("coefficients"));
        assertThat(fit.k().getAsDouble())
                .isCloseTo(model.number("k"), within(model.printedDigits("k")));
        if (model.has("twice_log_likelihood")) {
            assertThat(2 * fit.logLikelihood())
                    .isCloseTo(
                            model.number("twice_log_likelihood"),
                            within(model.printedDigits("twice_log_likelihood")));
        }
    }

    /** Venables and Ripley, as in published.csv: LR 7.627279 (4 df), 16.073723 (10 df). */
    @Test
    void comparesModelsAsPrinted() {
        List<RegressionFit> fits = new ArrayList<>();
        for (ReferenceTable.Row model : published()) {
            if (model.text("data").equals("quine.csv") && model.has("twice_log_likelihood")) {
                fits.add(NegativeBinomialRegression.fit(frame(model)));
            }
        }
        LikelihoodRatio first = LikelihoodRatio.between(fits.get(1), fits.get(0));
        LikelihoodRatio second = LikelihoodRatio.between(fits.get(2), fits.get(1));

        assertThat(first.statistic()).isCloseTo(7.627279, within(1e-6));
        assertThat(first.degreesOfFreedom()).isEqualTo(4);
        assertThat(first.pValue()).isCloseTo(0.10622602, within(1e-8));
        assertThat(second.statistic()).isCloseTo(16.073723, within(1e-6));
        assertThat(second.degreesOfFreedom()).isEqualTo(10);
        assertThat(second.pValue()).isCloseTo(0.09754136, within(1e-8));
    }

    @Test
    void namesTheCombinationThatWasNeverSampled() {
        ModelFrame frame =
                new ModelTerms(List.of("Age", "Lrn", "Age:Lrn"), java.util.Set.of())
                        .frame(OpenData.rows("quine.csv", "Days", ""));

        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> NegativeBinomialRegression.fit(frame))
                .hasMessageContaining("Age:Lrn F3:SL");
    }
}
