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

class NegativeBinomialReferenceTest {

    private static final double ELEVEN_DIGITS = 1e-11 * 100;

    static List<Row> distribution() {
        return ReferenceTable.read("negative-binomial/distribution.csv");
    }

    static List<Row> quantiles() {
        return ReferenceTable.read("negative-binomial/quantiles.csv");
    }

    @ParameterizedTest(name = "mean, k, x: {0}")
    @MethodSource("distribution")
    void keepsElevenDigitsOfEveryProbability(Row row) {
        var distribution = new NegativeBinomial(row.number("mu"), row.number("k"));
        long x = Long.parseLong(row.text("x"));

        assertThat(distribution.logProbability(x))
                .isCloseTo(row.number("log_pmf"), withinPercentage(ELEVEN_DIGITS));
        assertThat(distribution.probability(x))
                .isCloseTo(row.number("pmf"), withinPercentage(ELEVEN_DIGITS));
        assertThat(distribution.cumulativeProbability(x))
                .isCloseTo(row.number("cdf"), withinPercentage(ELEVEN_DIGITS));
        assertThat(distribution.exceedanceProbability(x))
                .isCloseTo(row.number("sf"), withinPercentage(ELEVEN_DIGITS));
    }

    @ParameterizedTest(name = "mean, k: {0}")
    @MethodSource("quantiles")
    void findsTheSmallestCountThatReachesAProbability(Row row) {
        var distribution = new NegativeBinomial(row.number("mu"), row.number("k"));

        row.cells()
                .forEach(
                        (column, value) -> {
                            if (column.startsWith("q")) {
                                double p = Double.parseDouble(column.substring(1));
                                assertThat(distribution.quantile(p))
                                        .as("quantile at %s", p)
                                        .isEqualTo(Long.parseLong(value));
                            }
                        });
    }

    @Test
    void expectsAsManyLeavesWithEachCountAsTheFittedMitesDo() {
        var clumped = new NegativeBinomial(172.0 / 150, 1.02459238678633);
        var poisson = new NegativeBinomial(172.0 / 150, Double.POSITIVE_INFINITY);

        for (Row row : ReferenceTable.read("negative-binomial/expected-counts.csv")) {
            if (row.text("count").equals("more")) {
                assertThat(150 * clumped.exceedanceProbability(7))
                        .isCloseTo(row.number("expected"), within(1e-9));
            } else {
                long count = Long.parseLong(row.text("count"));
                assertThat(150 * clumped.probability(count))
                        .isCloseTo(row.number("expected"), within(1e-9));
                assertThat(150 * poisson.probability(count))
                        .isCloseTo(row.number("poisson"), within(0.00051));
            }
        }
    }
}
