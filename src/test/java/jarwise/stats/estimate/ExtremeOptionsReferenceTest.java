package jarwise.stats.estimate;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Any k above 0, any level and any share: right, or no number at all, and at once. */
class ExtremeOptionsReferenceTest {

    static List<Row> rows() {
        return ReferenceTable.read("interval/extreme-options.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsPlainArithmeticWithFiftyDigits(Row row) {
        DensityEstimate density = estimate(row, IntervalMethod.INTEGRATED);

        assertEqual("estimate", density.estimate(), row);
        assertEqual("standard_error", density.standardError(), row);
        // an absolute part too: ln y! of a billion individuals has 17 billion in it
        double logLikelihood = row.number("log_likelihood");
        assertThat(density.logLikelihood())
                .isCloseTo(logLikelihood, within(1e-4 + 1e-8 * Math.abs(logLikelihood)));
        assertEqual("lower", density.lower(), row);
        assertEqual("upper", density.upper(), row);
        assertThat(density.k()).isEqualTo(given(row));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void soDoesTheProfile(Row row) {
        DensityEstimate density = estimate(row, IntervalMethod.PROFILE);

        assertEqual("profile_lower", density.lower(), row);
        assertEqual("profile_upper", density.upper(), row);
        if (density.upper().isEmpty()) {
            assertThat(density.warnings()).isNotEmpty();
        }
    }

    private static OptionalDouble given(Row row) {
        double k = row.number("k");
        return Double.isInfinite(k) ? OptionalDouble.empty() : OptionalDouble.of(k);
    }

    private static DensityEstimate estimate(Row row, IntervalMethod method) {
        DensityEstimator estimator =
                DensityEstimator.standard()
                        .withMethod(method)
                        .withGivenK(row.number("k"))
                        .withConfidenceLevel(row.number("level"))
                        .withDetection(
                                new Detection(
                                        DetectionShare.known(row.number("share")),
                                        DetectionShare.known(1)));
        List<Observation> jars = new ArrayList<>();
        String[] units = row.text("units").split(" ", -1);
        for (String count : row.text("counts").split(" ", -1)) {
            double unitsInJar = Double.parseDouble(units[jars.size()]);
            jars.add(Observation.of(Long.parseLong(count), unitsInJar));
        }
        return assertTimeout(ofSeconds(10), () -> estimator.estimate(jars));
    }

    private static void assertEqual(String column, OptionalDouble value, Row row) {
        assertThat(value.isPresent()).as(column).isEqualTo(row.has(column));
        value.ifPresent(number -> assertEqual(column, number, row));
    }

    private static void assertEqual(String column, double value, Row row) {
        double expected = row.number(column);
        double least = Math.max(1e-6 * expected, Double.MIN_VALUE);
        assertThat(value).as(column).isCloseTo(expected, within(least));
    }
}
