package jarwise.stats.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThermalConstantsTest {

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("thermal/durations.csv");
    }

    static List<ReferenceTable.Row> observed() {
        return rows().stream().filter(row -> row.has("observed")).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void daysEqualTheReference(ReferenceTable.Row row) {
        assertThat(days(row)).isCloseTo(row.number("days"), within(row.printedDigits("days") / 2));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("observed")
    void saysTooLongNearTheLowerLimitAndTooShortInHeat(ReferenceTable.Row row) {
        boolean cool = row.number("celsius") - row.number("t0") < 5;

        assertThat(days(row) > row.number("observed")).isEqualTo(cool);
    }

    @Test
    void neverEndsAtTheLowerLimitOrBelowIt() {
        ThermalConstants constants = new ThermalConstants(9.5, 194);

        assertThat(constants.days(9.5)).isEmpty();
        assertThat(constants.days(3)).isEmpty();
    }

    @Test
    void refusesConstantsThatCannotBe() {
        assertThatThrownBy(() -> new ThermalConstants(9.5, 0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new ThermalConstants(Double.NaN, 194))
                .isInstanceOf(InvalidInput.class);
    }

    private static double days(ReferenceTable.Row row) {
        return new ThermalConstants(row.number("t0"), row.number("k"))
                .days(row.number("celsius"))
                .orElseThrow();
    }
}
