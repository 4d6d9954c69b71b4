package jarwise.stats.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import jarwise.stats.ReferenceTable;
import jarwise.stats.comparison.LevelComparison;
import jarwise.stats.comparison.PairRatio;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Pairs of levels against general statistics software. */
class LevelComparisonReferenceTest {

    private static final double CUT = 3.841458820694124;

    static Stream<Arguments> sheets() {
        return Stream.of(
                arguments("insectsprays", "insectsprays.csv", "count", "", "spray", ""),
                arguments("corn-borers", "freq_corn_borers.csv", "count", "freq", "treat", ""),
                arguments("quine-age", "quine.csv", "Days", "", "Age", "Eth,Sex,Lrn"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void givesTheSameRatios(
            String file, String data, String count, String freq, String by, String blocks) {
        LevelComparison comparison =
                LevelComparison.of(
                        OpenData.rows(data, count, freq),
                        by,
                        blocks.isEmpty() ? List.of() : List.of(blocks.split(",")),
                        CUT);
        List<ReferenceTable.Row> rows = ReferenceTable.read("regression/pairs-" + file + ".csv");

        assertThat(comparison.pairs()).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            ReferenceTable.Row row = rows.get(i);
            PairRatio pair = comparison.pairs().get(i);
            assertThat(pair.a() + " " + pair.b()).isEqualTo(row.text("a") + " " + row.text("b"));
            near(pair.logRatio().getAsDouble(), row.number("log_ratio"), 1e-6);
            near(pair.ratio().getAsDouble(), row.number("ratio"), 1e-6);
            near(pair.standardError().getAsDouble(), row.number("se"), 1e-6);
            near(pair.pValue().getAsDouble(), row.number("p_lr"), 1e-6 * row.number("p_lr"));
            near(pair.pAdjusted().getAsDouble(), row.number("p_lr_holm"), 1e-6);
            double lower = row.number("ratio_profile_lower");
            double upper = row.number("ratio_profile_upper");
            near(pair.limits().lower().getAsDouble(), lower, 1e-5 * lower);
            near(pair.limits().upper().getAsDouble(), upper, 1e-5 * upper);
        }
    }

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
