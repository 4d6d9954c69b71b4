package jarwise.stats.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import jarwise.stats.ReferenceTable;
import jarwise.stats.regression.OpenData;
import java.util.List;
import java.util.stream.Stream;
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

    private static void near(double found, double expected, double tolerance) {
        assertThat(found).isCloseTo(expected, within(tolerance));
    }
}
