package jarwise.stats.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PoissonLimitsTest {

    static List<Row> exact() {
        return ReferenceTable.read("poisson-limits/exact.csv");
    }

    static List<Row> garwood() {
        return ReferenceTable.read("poisson-limits/garwood.csv");
    }

    static List<Row> zeroOfN() {
        return ReferenceTable.read("detection/zero-of-n.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("exact")
    void equalsGeneralStatisticsSoftware(Row row) {
        PoissonLimits limits = PoissonLimits.of((long) row.number("x"), row.number("level"));

        assertThat(limits.lower())
                .isCloseTo(row.number("lower"), within(1e-9 * row.number("lower")));
        assertThat(limits.upper())
                .isCloseTo(row.number("upper"), within(1e-9 * row.number("upper")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("garwood")
    void equalsGarwoodsTable(Row row) {
        PoissonLimits limits = PoissonLimits.of((long) row.number("count"), 0.95);

        assertThat(limits.lower()).isCloseTo(row.number("lower"), within(1e-6));
        assertThat(limits.upper()).isCloseTo(row.number("upper"), within(1e-6));
    }

    /** None of n: the rule of three is an upper bound of the exact one-sided limits. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("zeroOfN")
    void ofNoneInNSamples(Row row) {
        int n = (int) row.number("n");
        ProportionPositive twoSided = ProportionPositive.of(0, n, 0.95);
        double oneSided = ProportionPositive.of(0, n, 0.9).upper();
        double poisson = PoissonLimits.of(0, 0.9).upper() / n;

        assertThat(twoSided.lower()).isZero();
        assertThat(twoSided.upper()).isCloseTo(row.number("two_sided"), within(1e-7));
        assertThat(oneSided).isCloseTo(row.number("one_sided"), within(1e-7));
        assertThat(poisson).isCloseTo(row.number("poisson"), within(1e-7));
        assertThat(row.number("rule_of_three"))
                .isCloseTo(3.0 / n, within(1e-12))
                .isGreaterThan(Math.max(oneSided, poisson));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> PoissonLimits.of(-1, 0.95)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> PoissonLimits.of(1, 1)).isInstanceOf(InvalidInput.class);
    }
}
