package jarwise.stats.estimate;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.count.Observation;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Levels next to 1: the limits are right, and come at once. */
class HighLevelsReferenceTest {

    static List<Row> rows() {
        return ReferenceTable.read("interval/high-levels.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsPlainSumsOfEveryTailFromItsOwnEnd(Row row) {
        DensityEstimate density = estimate(row);

        assertThat(density.confidenceLevel()).isEqualTo(row.number("level"));
        assertThat(density.lower()).isCloseTo(row.number("lower"), about(row.number("lower")));
        assertThat(density.upper().isPresent()).isEqualTo(row.has("upper"));
        density.upper()
                .ifPresent(
                        upper ->
                                assertThat(upper)
                                        .isCloseTo(
                                                row.number("upper"), about(row.number("upper"))));
    }

    private static DensityEstimate estimate(Row row) {
        List<DetectionShare> shares =
                Stream.of(row.text("shares").split(" ", -1))
                        .filter(share -> !share.isEmpty())
                        .map(HighLevelsReferenceTest::share)
                        .toList();
        DetectionShare none = DetectionShare.known(1);
        DensityEstimator options =
                DensityEstimator.standard()
                        .withConfidenceLevel(row.number("level"))
                        .withDetection(
                                new Detection(
                                        shares.isEmpty() ? none : shares.get(0),
                                        shares.size() < 2 ? none : shares.get(1)));
        DensityEstimator estimator = row.has("k") ? options.withGivenK(row.number("k")) : options;
        double units = row.number("units");
        List<Observation> jars =
                Stream.of(row.text("counts").split(" ", -1))
                        .map(count -> Observation.of(Long.parseLong(count), units))
                        .toList();
        return assertTimeout(ofSeconds(20), () -> estimator.estimate(jars));
    }

    private static DetectionShare share(String foundOfKnown) {
        String[] numbers = foundOfKnown.split("/", -1);
        return DetectionShare.measured(Long.parseLong(numbers[0]), Long.parseLong(numbers[1]));
    }

    private static org.assertj.core.data.Offset<Double> about(double expected) {
        return within(1e-6 * expected + Double.MIN_VALUE);
    }
}
