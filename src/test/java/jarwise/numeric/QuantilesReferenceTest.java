package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
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
