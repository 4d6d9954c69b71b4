package jarwise.stats.detect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PoolTest {

    static List<Row> printed() {
        return ReferenceTable.read("detection/pools.csv");
    }

    static List<Row> passing() {
        return ReferenceTable.read("detection/pools-passing.csv");
    }

    static List<Row> needed() {
        return ReferenceTable.read("detection/pools-needed.csv");
    }

    static List<Row> prevalence() {
        return ReferenceTable.read("detection/pooled-prevalence.csv");
    }

    static List<Row> unequal() {
        return ReferenceTable.read("detection/pooled-prevalence-unequal.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("printed")
    void chanceOfAFindEqualsThePublishedOutput(Row row) {
        PooledDetection pools =
                new PooledDetection(
                        row.number("proportion"),
                        (int) row.number("pool_size"),
                        row.number("sensitivity"),
                        row.number("specificity"));

        assertThat(pools.probability((long) row.number("pools")))
                .isCloseTo(row.number("probability"), within(row.printedDigits("probability")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("passing")
    void aSoundCropPassesAsOftenAsPublished(Row row) {
        PooledDetection pools = new PooledDetection(0, 5, 0.9, row.number("specificity"));
        long tested = (long) row.number("pools");

        assertThat(pools.allNegative(tested))
                .isCloseTo(row.number("all_negative"), within(row.printedDigits("all_negative")));
        assertThat(pools.missed(tested)).isCloseTo(pools.allNegative(tested), within(1e-12));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("needed")
    void poolsNeededEqualThePublishedOutput(Row row) {
        PooledDetection pools =
                new PooledDetection(
                        row.number("proportion"),
                        (int) row.number("pool_size"),
                        row.number("sensitivity"),
                        1);

        assertThat(pools.sampleSize(row.number("confidence"))).hasValue((long) row.number("pools"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("prevalence")
    void shareOfInfestedUnitsFromPools(Row row) {
        PoolGroup group =
                new PoolGroup(
                        (int) row.number("pool_size"),
                        (int) row.number("pools"),
                        (int) row.number("positive"));
        PooledPrevalence share = PooledPrevalence.of(group, row.number("sensitivity"), 1, 0.95);

        assertClose(row, "estimate", share.estimate());
        if (row.has("lower")) {
            assertClose(row, "standard_error", share.standardError().orElseThrow());
            assertClose(row, "lower", share.lower());
            assertClose(row, "upper", share.upper());
            assertClose(row, "less_biased", PooledPrevalence.lessBiased(group));
        } else {
            assertThat(share.standardError()).isEmpty();
        }
    }

    private static void assertClose(Row row, String column, double value) {
        assertThat(value).isCloseTo(row.number(column), within(row.printedDigits(column)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("unequal")
    void shareOfInfestedUnitsFromPoolsOfDifferentSize(Row row) {
        List<PoolGroup> groups = new ArrayList<>();
        String[] sizes = row.text("sizes").split(" ", -1);
        for (int i = 0; i < sizes.length; i++) {
            groups.add(
                    new PoolGroup(
                            Integer.parseInt(sizes[i]),
                            Integer.parseInt(row.text("pools").split(" ", -1)[i]),
                            Integer.parseInt(row.text("positives").split(" ", -1)[i])));
        }

        assertClose(row, "estimate", PooledPrevalence.likeliest(groups));
    }

    @Test
    void poolsOfOneSizeGiveTheSameBothWays() {
        PoolGroup group = new PoolGroup(5, 20, 3);

        assertThat(PooledPrevalence.likeliest(List.of(group)))
                .isCloseTo(PooledPrevalence.of(group, 1, 1, 0.95).estimate(), within(1e-12));
    }

    @Test
    void noneOrAllPositiveAreOrdinary() {
        PooledPrevalence none = PooledPrevalence.of(new PoolGroup(5, 20, 0), 1, 1, 0.95);
        PooledPrevalence all = PooledPrevalence.of(new PoolGroup(5, 20, 20), 0.9, 1, 0.95);

        assertThat(none.estimate()).isZero();
        assertThat(none.standardError()).isEmpty();
        assertThat(none.upper()).isBetween(0.03, 0.04);
        assertThat(all.estimate()).isEqualTo(1);
        assertThat(PooledPrevalence.likeliest(List.of(new PoolGroup(5, 20, 0)))).isZero();
        assertThat(PooledPrevalence.likeliest(List.of(new PoolGroup(5, 20, 20)))).isEqualTo(1);
    }

    @Test
    void refusesATestThatTellsNothing() {
        assertThatThrownBy(() -> new PooledDetection(0.1, 5, 0.4, 0.6))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("tells nothing");
        assertThatThrownBy(() -> new PoolGroup(5, 3, 4)).isInstanceOf(InvalidInput.class);
    }
}
