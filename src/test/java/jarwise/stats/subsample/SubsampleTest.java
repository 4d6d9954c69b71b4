package jarwise.stats.subsample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SubsampleTest {

    static List<Row> aliquots() {
        return ReferenceTable.read("subsample/aliquot.csv");
    }

    static List<Row> twoStage() {
        return ReferenceTable.read("subsample/two-stage.csv");
    }

    static List<Row> ratios() {
        return ReferenceTable.read("subsample/ratio.csv");
    }

    static List<Row> corrected() {
        return ReferenceTable.read("subsample/corrected.csv");
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    }

    private static void assertClose(double value, double expected) {
        assertThat(value).isCloseTo(expected, within(1e-10 * Math.max(1e-3, expected)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("aliquots")
    void totalOfAnExtractEqualsGeneralStatisticsSoftware(Row row) {
        long[] counts =
                Arrays.stream(numbers(row.text("counts"))).mapToLong(x -> (long) x).toArray();
        AliquotTotal total = AliquotTotal.of((int) row.number("squares"), counts, 0.95);

        assertThat(counts).hasSize((int) row.number("counted_squares"));
        assertClose(total.fraction(), row.number("fraction"));
        assertClose((double) total.counted(), row.number("counted"));
        assertClose(total.estimate(), row.number("total"));
        assertClose(total.designError(), row.number("design_error"));
        assertClose(total.mixedError(), row.number("mixed_error"));
        assertThat(total.limits().lower()).isEqualTo((long) row.number("lower"));
        assertThat(total.limits().upper()).isEqualTo((long) row.number("upper"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("twoStage")
    void someUnitsOfSomeClustersEqualGeneralStatisticsSoftware(Row row) {
        double[] units = numbers(row.text("units"));
        String[] counts = row.text("counts").split("\\|", -1);
        List<TwoStageSample.Cluster> clusters = new ArrayList<>();
        for (int i = 0; i < units.length; i++) {
            clusters.add(
                    new TwoStageSample.Cluster(
                            (int) units[i], Arrays.stream(numbers(counts[i])).boxed().toList()));
        }
        TwoStageSample sample = new TwoStageSample((int) row.number("clusters"), clusters);

        assertClose(sample.total().estimate(), row.number("total"));
        assertClose(sample.total().standardError(), row.number("total_error"));
        assertClose(sample.meanPerUnit().estimate(), row.number("per_unit"));
        assertClose(sample.meanPerUnit().standardError(), row.number("per_unit_error"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ratios")
    void ratioPerGrowingPointEqualsGeneralStatisticsSoftware(Row row) {
        RatioPerUnit ratio =
                RatioPerUnit.of(
                        numbers(row.text("units")),
                        numbers(row.text("counts")),
                        row.number("samples_in_all"));

        assertClose(ratio.estimate(), row.number("ratio"));
        assertClose(ratio.standardError(), row.number("error"));
        assertClose(ratio.jackknifeVariance(), row.number("jackknife_variance"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("corrected")
    void totalCorrectedForExtractionEqualsGeneralStatisticsSoftware(Row row) {
        long counted = (long) row.number("counted");
        int squares = (int) Math.round(1 / row.number("fraction"));
        TwoStageTotal total =
                AliquotTotal.of(squares, new long[] {counted}, 0.95)
                        .corrected(
                                row.number("variance"),
                                row.number("efficiency"),
                                row.number("efficiency_error"));

        assertClose(total.estimate(), row.number("total"));
        assertClose(total.standardError(), row.number("error"));
    }

    @Test
    void largeExtractsHaveLimitsAtOnce() {
        AliquotTotal total = AliquotTotal.of(1_000_000, new long[] {1_000_000_000}, 0.999999);

        assertThat(total.limits().lower()).isLessThan(1_000_000_000_000_000L);
        assertThat(total.limits().upper()).isGreaterThan(1_000_000_000_000_000L);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> AliquotTotal.of(2, new long[] {1, 2, 3}, 0.95))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> AliquotTotal.of(2, new long[] {-1}, 0.95))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new TwoStageSample.Cluster(1, List.of(1.0, 2.0)))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> RatioPerUnit.of(new double[] {1, 2}, new double[] {1}, 5))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> RatioPerUnit.of(new double[] {1, 0}, new double[] {1, 1}, 5))
                .isInstanceOf(InvalidInput.class);
    }
}
