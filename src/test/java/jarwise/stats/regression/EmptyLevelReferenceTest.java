package jarwise.stats.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class EmptyLevelReferenceTest {

    private static final double CUT = 3.841458820694124;

    /** reference: R 4.2.2 likelihood drop where treated-after is all zero (two-sided 95 %). */
    @Test
    void givesTheOneLimitThereIsWhereALevelHasNoFind() {
        ModelFrame frame =
                OpenData.frame(
                        OpenData.rows("synthetic_baci_zero_after.csv", "count", ""),
                        List.of("treat", "time", "treat:time"));
        RegressionFit fit = NegativeBinomialRegression.fit(frame);
        double[] interaction = fit.only(3);

        near(fit.logLikelihood(), -107.390790569454, 1e-8);
        near(fit.k().getAsDouble(), 3.73279844578697, 1e-5);
        assertThat(fit.estimate(interaction)).isEmpty();
        assertThat(fit.standardError(interaction)).isEmpty();
        // the factor's first level is after, there it was before: the sign is the other one
        near(fit.limits(interaction, CUT).lower().getAsDouble(), 4.4961873188386, 1e-5);
        assertThat(fit.limits(interaction, CUT).upper()).isEmpty();
        double cutOf90 = 2.705543454095404;
        near(fit.limits(interaction, cutOf90).lower().getAsDouble(), 4.87919056450148, 1e-5);
    }

    private static void near(double found, double expected, double tolerance) {
        assertThat(found).isCloseTo(expected, within(tolerance));
    }
}
