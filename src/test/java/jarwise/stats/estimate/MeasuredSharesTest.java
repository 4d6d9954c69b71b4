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

/** Measured shares, also where the counts are so large that their own spread is a spike. */
class MeasuredSharesTest {

    static List<Row> rows() {
        return ReferenceTable.read("interval/measured-shares.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsBruteForceAndIsQuick(Row row) {
        DensityEstimator estimator =
                DensityEstimator.standard()
                        .withGivenK(Double.POSITIVE_INFINITY)
                        .withDetection(detection(row));
        List<Observation> jars =
                Stream.of(row.text("counts").split(" ", -1))
                        .map(count -> Observation.of(Long.parseLong(count), 1))
                        .toList();

        DensityEstimate density = assertTimeout(ofSeconds(10), () -> estimator.estimate(jars));

        double lower = row.number("lower");
        double upper = row.number("upper");
        assertThat(density.lower()).isCloseTo(lower, within(1e-6 * lower));
        assertThat(density.upper()).hasValueCloseTo(upper, within(1e-6 * upper));
    }

    private static Detection detection(Row row) {
        List<DetectionShare> shares =
                Stream.of(row.text("shares").split(" ", -1))
                        .map(share -> share.split("/", -1))
                        .map(
                                share ->
                                        DetectionShare.measured(
                                                Long.parseLong(share[0]), Long.parseLong(share[1])))
                        .toList();
        return new Detection(
                shares.get(0), shares.size() > 1 ? shares.get(1) : DetectionShare.known(1));
    }
}
