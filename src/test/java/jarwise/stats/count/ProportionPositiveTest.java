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

class ProportionPositiveTest {

    static List<Row> limits() {
        return ReferenceTable.read("proportion-positive/clopper-pearson.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("limits")
    void hasExactLimits(Row row) {
        int positive = Integer.parseInt(row.text("x"));
        int samples = Integer.parseInt(row.text("n"));

        ProportionPositive share = ProportionPositive.of(positive, samples, 0.95);

        assertThat(share.estimate()).isEqualTo((double) positive / samples);
        assertThat(share.lower()).isCloseTo(row.number("lower95"), within(1e-9));
        assertThat(share.upper()).isCloseTo(row.number("upper95"), within(1e-9));
        assertThat(ProportionPositive.of(positive, samples, 0.90).upper())
                .isCloseTo(row.number("one_sided_upper95"), within(1e-9));
    }

    @Test
    void refusesMorePositiveSamplesThanThereAre() {
        assertThatThrownBy(() -> ProportionPositive.of(9, 8, 0.95))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("0 to 8");
    }
}
