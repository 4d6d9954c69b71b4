package jarwise.stats.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.numeric.Quantiles;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every figure of the small-sample intervals of general statistics software. */
class CoxReidReferenceTest {

    private static final double LEVEL = 0.95;

    static List<Row> rows() {
        return ReferenceTable.read("regression/small-sample.csv");
    }

    /** The designs that the reference names by their data. */
    private static ModelFrame frame(String data) {
        if (data.equals("quine.csv")) {
            return new ModelTerms(List.of("Eth", "Sex", "Age", "Lrn"), Set.of())
                    .frame(OpenData.rows(data, "Days", ""));
        }
        if (data.equals("synthetic_baci.csv")) {
            return trial(OpenData.rows(data, "count", ""));
        }
        ModelFrame.Builder mean = new ModelFrame.Builder(List.of(Coefficient.INTERCEPT));
        OpenData.rows(data, "count", "freq")
                .forEach(row -> mean.add(new double[] {1}, 1, row.individuals(), row.frequency()));
        return mean.build();
    }

    private static ModelFrame trial(List<ModelRow> rows) {
        ModelFrame.Builder frame =
                new ModelFrame.Builder(
                        List.of(
                                Coefficient.INTERCEPT,
                                new Coefficient("trt", Optional.empty()),
                                new Coefficient("aft", Optional.empty()),
                                new Coefficient("trt:aft", Optional.empty())));
        for (ModelRow row : rows) {
            double treated = is(row, "treat", "treated");
            double after = is(row, "time", "after");
            frame.add(
                    new double[] {1, treated, after, treated * after},
                    row.exposure(),
                    row.individuals(),
                    row.frequency());
        }
        return frame.build();
    }

    private static double is(ModelRow row, String column, String value) {
        return Objects.equals(row.values().get(column), value) ? 1 : 0;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsGeneralStatisticsSoftware(Row row) {
        ModelFrame frame = frame(row.text("data"));
        double expected = row.number("value");

        double value = value(row, frame, coefficient(row, frame));

        assertThat(value).isCloseTo(expected, within(tolerance(row.text("quantity"), expected)));
    }

    private static double tolerance(String quantity, double expected) {
        return switch (quantity) {
            case "n", "p" -> 0;
            case "k_ml", "k_cox_reid" -> 1e-6 * expected;
            case "adjusted_loglik" -> 1e-8;
            case "t_quantile", "F_cutoff" -> 1e-9;
            case "coef_at_k_cr", "se_at_k_cr" -> 1e-6;
            default -> 1e-5;
        };
    }

    /** Names as that software writes them: a factor and its level without a sign between. */
    private static int coefficient(Row row, ModelFrame frame) {
        for (int j = 0; j < frame.coefficients().size(); j++) {
            Coefficient one = frame.coefficients().get(j);
            String name = one.term() + one.level().orElse("");
            if (name.equals(row.text("coefficient").replace("(Intercept)", "intercept"))) {
                return j;
            }
        }
        assertThat(row.text("coefficient")).isEmpty();
        return -1;
    }

    private static double value(Row row, ModelFrame frame, int coefficient) {
        CoxReidFit fit = CoxReidFit.of(frame);
        String quantity = row.text("quantity");
        return switch (quantity) {
            case "n" -> fit.degreesOfFreedom() + frame.coefficients().size();
            case "p" -> frame.coefficients().size();
            case "k_ml" -> NegativeBinomialRegression.fit(frame).k().orElseThrow();
            case "k_cox_reid" -> fit.k().orElseThrow();
            case "adjusted_loglik" -> fit.adjustedLogLikelihood();
            case "t_quantile" -> Quantiles.student(LEVEL, fit.degreesOfFreedom());
            case "F_cutoff" -> cut(fit);
            case "coef_at_k_cr" -> fit.estimate(coefficient);
            case "se_at_k_cr" -> fit.standardError(coefficient);
            case "wald_t_lower" -> fit.waldLimits(coefficient, LEVEL).lower().orElseThrow();
            case "wald_t_upper" -> fit.waldLimits(coefficient, LEVEL).upper().orElseThrow();
            case "profile_F_lower" -> profile(frame, fit, coefficient).lower().orElseThrow();
            case "profile_F_upper" -> profile(frame, fit, coefficient).upper().orElseThrow();
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    /** The quantile of F with 1 and n − p degrees of freedom. */
    private static double cut(CoxReidFit fit) {
        double t = Quantiles.student(LEVEL, fit.degreesOfFreedom());
        return t * t;
    }

    private static ProfileLimits profile(ModelFrame frame, CoxReidFit fit, int coefficient) {
        RegressionFit full = NegativeBinomialRegression.fit(frame);
        return full.limits(full.only(coefficient), cut(fit));
    }
}
