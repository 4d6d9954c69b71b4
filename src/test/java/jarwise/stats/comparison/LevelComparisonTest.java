package jarwise.stats.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.regression.ModelRow;
import jarwise.stats.regression.OpenData;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What must hold of a comparison of levels, and what is said where a level is empty. */
class LevelComparisonTest {

    private static final double CUT = 3.841458820694124;

    private static ModelRow row(String bench, String week, double units, long count) {
        return new ModelRow(Map.of("bench", bench, "week", week), units, count, 1);
    }

    /** Bench a has 2, 4, 3, bench b 1, 0, 2, bench c nothing; week 3 has no find. */
    private static List<ModelRow> rows() {
        List<ModelRow> rows = new ArrayList<>();
        long[][] counts = {{2, 1, 0}, {4, 0, 0}, {0, 0, 0}, {3, 2, 0}};
        for (int week = 0; week < counts.length; week++) {
            for (int bench = 0; bench < 3; bench++) {
                String name = String.valueOf((char) ('a' + bench));
                rows.add(row(name, "w" + (week + 1), 1, counts[week][bench]));
            }
        }
        return rows;
    }

    /** The maximum of the likelihood of a level's mean is the mean of its counts. */
    @Test
    void withoutBlocksTheDensityOfALevelIsItsMeanCount() {
        LevelComparison sprays =
                LevelComparison.of(
                        OpenData.rows("insectsprays.csv", "count", ""), "spray", List.of(), CUT);

        double[] means = {14.5, 46 / 3.0, 25 / 12.0, 59 / 12.0, 3.5, 50 / 3.0};
        for (int i = 0; i < means.length; i++) {
            LevelComparison.LevelDensity density = sprays.levels().get(i);
            assertThat(density.level()).isEqualTo(String.valueOf((char) ('A' + i)));
            near(density.estimate(), means[i], 1e-7);
            assertThat(density.lower().getAsDouble()).isLessThan(means[i]);
            assertThat(density.upper().getAsDouble()).isGreaterThan(means[i]);
        }
        assertThat(sprays.emptyBlocks()).isEmpty();
    }

    /** reference: R 4.2.2, MASS 7.3-58.2: 2 (logLik(count ~ spray) − logLik(count ~ 1)), glm.nb. */
    @Test
    void theTestThatAllLevelsAreOneIsThatOfGeneralStatisticsSoftware() {
        LevelComparison sprays =
                LevelComparison.of(
                        OpenData.rows("insectsprays.csv", "count", ""), "spray", List.of(), CUT);

        near(sprays.test().statistic(), 107.742494815432, 1e-6);
        assertThat(sprays.test().degreesOfFreedom()).isEqualTo(5);
    }

    /** reference: R 4.2.2, MASS 7.3-58.2: glm.nb(Days ~ Age + Eth + Sex + Lrn, quine). */
    @Test
    void withBlocksEachBlockHasTheSameWeightInTheDensity() {
        LevelComparison ages =
                LevelComparison.of(
                        OpenData.rows("quine.csv", "Days", ""),
                        "Age",
                        List.of("Eth", "Sex", "Lrn"),
                        CUT);

        double[] expected = {
            16.3971716921204, 10.4717453625396, 17.9069519451868, 23.4298261751095
        };
        for (int i = 0; i < expected.length; i++) {
            near(ages.levels().get(i).estimate(), expected[i], 1e-5);
        }
        near(ages.test().statistic(), 11.5237885424413, 1e-6);
        near(ages.test().pValue(), 0.00920591983302221, 1e-8);
    }

    @Test
    void aLevelWithoutAFindHasDensityNoneAndRatiosWithOneLimit() {
        LevelComparison benches = LevelComparison.of(rows(), "bench", List.of(), CUT);

        LevelComparison.LevelDensity empty = benches.levels().get(2);
        assertThat(empty.estimate()).isZero();
        assertThat(empty.lower()).hasValue(0);
        assertThat(empty.upper().getAsDouble()).isPositive();

        PairRatio found = benches.pairs().get(0);
        near(found.ratio().getAsDouble(), 3, 1e-6);
        near(found.logRatio().getAsDouble(), Math.log(3), 1e-6);
        PairRatio overNothing = benches.pairs().get(1);
        assertThat(overNothing.a() + overNothing.b()).isEqualTo("ac");
        assertThat(overNothing.ratio()).isEmpty();
        assertThat(overNothing.logRatio()).isEmpty();
        assertThat(overNothing.limits().lower().getAsDouble()).isGreaterThan(1);
        assertThat(overNothing.limits().upper()).isEmpty();
        assertThat(overNothing.pValue().getAsDouble()).isLessThan(0.05);
    }

    @Test
    void nothingOverSomethingIsNoneAndNothingOverNothingSaysNothing() {
        List<ModelRow> rows = new ArrayList<>(rows());
        rows.add(row("0", "w1", 1, 0));
        rows.add(row("0", "w2", 1, 0));
        rows.add(row("0", "w4", 1, 0));
        LevelComparison benches = LevelComparison.of(rows, "bench", List.of(), CUT);

        PairRatio nothingOverSomething = benches.pairs().get(0);
        assertThat(nothingOverSomething.a() + nothingOverSomething.b()).isEqualTo("0a");
        assertThat(nothingOverSomething.ratio()).hasValue(0);
        assertThat(nothingOverSomething.limits().lower()).hasValue(0);
        assertThat(nothingOverSomething.limits().upper().getAsDouble()).isLessThan(1);
        PairRatio nothing = benches.pairs().get(2);
        OptionalDouble none = OptionalDouble.empty();
        assertThat(nothing.a() + nothing.b()).isEqualTo("0c");
        assertThat(nothing)
                .extracting(
                        PairRatio::ratio,
                        PairRatio::logRatio,
                        PairRatio::standardError,
                        PairRatio::pValue,
                        PairRatio::pAdjusted)
                .containsOnly(none);
        assertThat(nothing.limits().lower()).isEmpty();
        assertThat(nothing.limits().upper()).isEmpty();
    }

    /** A block without a find multiplies the likelihood by a number without the ratios in it. */
    @Test
    void aBlockWithoutAFindIsNamedAndChangesNoRatio() {
        LevelComparison with = LevelComparison.of(rows(), "bench", List.of("week"), CUT);
        LevelComparison without =
                LevelComparison.of(
                        rows().stream().filter(r -> !"w3".equals(r.values().get("week"))).toList(),
                        "bench",
                        List.of("week"),
                        CUT);

        assertThat(with.emptyBlocks()).containsExactly("week w3");
        assertThat(without.emptyBlocks()).isEmpty();
        assertThat(with.pairs()).isEqualTo(without.pairs());
        assertThat(with.levels()).isEqualTo(without.levels());
    }

    @Test
    void whereNothingWasFoundAtAllNoBlockIsLeftOut() {
        List<ModelRow> rows =
                List.of(
                        row("a", "w1", 1, 0),
                        row("b", "w1", 1, 0),
                        row("a", "w2", 1, 0),
                        row("b", "w2", 1, 0));
        LevelComparison benches = LevelComparison.of(rows, "bench", List.of("week"), CUT);

        assertThat(benches.emptyBlocks()).isEmpty();
        assertThat(benches.levels()).allMatch(density -> density.estimate() == 0);
    }

    @Test
    void oneLevelIsNoComparisonAndItIsSaidWhich() {
        assertThatThrownBy(
                        () ->
                                LevelComparison.of(
                                        List.of(row("a", "w1", 1, 2), row("a", "w2", 1, 3)),
                                        "bench",
                                        List.of(),
                                        CUT))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("\"bench\" has the value \"a\" in every row");
    }

    /** reference: R 4.2.2, p.adjust(c(0.04, 0.01, 0.3, 0.03, 0.9, 0.01, 0.6), "holm"). */
    @Test
    void pValuesAreAdjustedAsByGeneralStatisticsSoftware() {
        double[] adjusted = HolmAdjustment.of(new double[] {0.04, 0.01, 0.3, 0.03, 0.9, 0.01, 0.6});

        assertThat(adjusted)
                .containsExactly(new double[] {0.16, 0.07, 0.9, 0.15, 1, 0.07, 1}, within(1e-12));
        assertThat(HolmAdjustment.of(new double[0])).isEmpty();
    }

    private static void near(double found, double expected, double tolerance) {
        assertThat(found).isCloseTo(expected, within(tolerance));
    }
}
