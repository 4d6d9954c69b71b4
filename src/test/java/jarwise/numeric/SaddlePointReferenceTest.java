package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SaddlePointReferenceTest {

    private static final double THIRTEEN_DIGITS = 1e-13;
    private static final double ELEVEN_DIGITS = 1e-11;

    static List<Row> errors() {
        return ReferenceTable.read("negative-binomial/stirling.csv");
    }

    static List<Row> deviances() {
        return ReferenceTable.read("negative-binomial/deviance.csv");
    }

    static List<Row> nearPoisson() {
        return ReferenceTable.read("negative-binomial/near-poisson.csv");
    }

    @ParameterizedTest(name = "z: {0}")
    @MethodSource("errors")
    void stirlingErrorKeepsThirteenDigits(Row row) {
        double expected = row.number("error");

        assertThat(StirlingError.of(row.number("z")))
                .isCloseTo(expected, within(THIRTEEN_DIGITS * Math.abs(expected)));
    }

    @ParameterizedTest(name = "x, mean: {0}")
    @MethodSource("deviances")
    void devianceKeepsThirteenDigits(Row row) {
        double expected = row.number("deviance");

        assertThat(StirlingError.deviance(row.number("x"), row.number("mean")))
                .isCloseTo(expected, within(THIRTEEN_DIGITS * Math.abs(expected)));
    }

    @ParameterizedTest(name = "mean, k, x: {0}")
    @MethodSource("nearPoisson")
    void keepsElevenDigitsNearPoissonAndAtIt(Row row) {
        var distribution = new NegativeBinomial(row.number("mu"), row.number("k"));
        long x = Long.parseLong(row.text("x"));

        assertThat(distribution.probability(x))
                .isCloseTo(row.number("pmf"), withinPercentage(100 * ELEVEN_DIGITS));
        assertThat(distribution.cumulativeProbability(x))
                .isCloseTo(row.number("cdf"), withinPercentage(100 * ELEVEN_DIGITS));
        assertThat(distribution.exceedanceProbability(x))
                .isCloseTo(row.number("sf"), withinPercentage(100 * ELEVEN_DIGITS));
    }

    @Test
    void varianceIsMeanPlusMeanSquaredOverK() {
        assertThat(new NegativeBinomial(3, 0.5).variance()).isEqualTo(21);
        assertThat(new NegativeBinomial(3, Double.POSITIVE_INFINITY).variance()).isEqualTo(3);
    }
}
