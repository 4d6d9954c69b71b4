package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class QuantilesReferenceTest {

    static List<Row> rows() {
        return ReferenceTable.read("quantiles/high-precision.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void keepsItsDigitsAtAnyLevelADoubleCanHold(Row row) {
        double expected = row.number("value");

        assertThat(quantile(row)).isCloseTo(expected, within(1e-11 * expected));
    }

    /** Φ⁻¹(0.975) and its square, the upper 5 % of χ² with 1 degree: R 4.2.2 qnorm, qchisq. */
    @Test
    void theNormalAndItsSquareAtTheUsualLevel() {
        assertThat(Quantiles.normal(0.95)).isCloseTo(1.95996398454005, within(1e-13));
        assertThat(Quantiles.normalAbove(0.025)).isCloseTo(1.95996398454005, within(1e-13));
        assertThat(Quantiles.normalAbove(0.9)).isCloseTo(-1.2815515655446, within(1e-13));
        assertThat(Quantiles.normalAbove(0.5)).isZero();
        assertThat(Quantiles.chiSquared(0.95)).isCloseTo(3.84145882069412, within(1e-13));
    }

    private static double quantile(Row row) {
        double p = row.number("probability");
        return switch (row.text("distribution")) {
            case "normal" -> Quantiles.normal(p);
            case "student" -> Quantiles.student(p, row.number("a"));
            case "beta" -> Quantiles.beta(row.number("a"), row.number("b"), p);
            case "gamma" -> Quantiles.gamma(row.number("a"), p);
            default -> Quantiles.gammaAbove(row.number("a"), p);
        };
    }
}
