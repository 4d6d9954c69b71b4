package jarwise.stats.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.Samples;
import jarwise.stats.count.CountData;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DensityReferenceTest {

    static List<Row> integrated() {
        return ReferenceTable.read("interval/integrated.csv");
    }

    static List<Row> zeroBounds() {
        return ReferenceTable.read("zero-bound/known-k.csv");
    }

    static List<Row> poissonZeroBounds() {
        return ReferenceTable.read("zero-bound/poisson.csv");
    }

    static List<Row> eightJars() {
        return ReferenceTable.read("zero-bound/eight-jars.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("integrated")
    void integratesAsPlainSumsOnFineGridsDo(Row row) {
        DensityEstimator estimator =
                DensityEstimator.standard()
                        .withDetection(detection(row.text("shares")))
                        .withActionThreshold(row.number("threshold"));
        if (row.has("k")) {
            estimator = estimator.withGivenK(row.number("k"));
        }

        DensityEstimate estimate = estimator.estimate(observations(row));

        assertRelative(estimate.lower(), row.number("lower"), 1e-6);
        assertRelative(estimate.upper().orElseThrow(), row.number("upper"), 1e-6);
        assertThat(estimate.probabilityAboveThreshold().orElseThrow())
                .isCloseTo(row.number("above"), within(1e-6));
        assertRelative(
                estimate.largestDensityConsidered().orElseThrow(), row.number("largest"), 1e-9);
    }

    private static Detection detection(String shares) {
        List<DetectionShare> measured =
                Stream.of(shares.split(" ", -1))
                        .filter(word -> !word.isEmpty())
                        .map(word -> word.split("/", -1))
                        .map(
                                w ->
                                        DetectionShare.measured(
                                                Long.parseLong(w[0]), Long.parseLong(w[1])))
                        .toList();
        DetectionShare all = DetectionShare.known(1);
        return new Detection(
                measured.isEmpty() ? all : measured.get(0),
                measured.size() < 2 ? all : measured.get(1));
    }

    private static List<Observation> observations(Row row) {
        String[] counts = row.text("counts").split(" ", -1);
        String[] exposures = row.text("exposures").split(" ", -1);
        List<Observation> result = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            result.add(Observation.of(Long.parseLong(counts[i]), Double.parseDouble(exposures[i])));
        }
        return result;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("zeroBounds")
    void boundsWhatCouldStillBeThereWithKKnown(Row row) {
        DensityEstimate estimate =
                DensityEstimator.standard()
                        .withConfidenceLevel(1 - row.number("alpha"))
                        .withGivenK(kOf(row.text("k_per_jar")))
                        .withDetection(known(row.number("efficiency")))
                        .estimate(emptyJars(row.text("growing_points")));

        assertThat(estimate.estimate()).isZero();
        assertThat(estimate.lower()).isZero();
        assertRelative(
                estimate.upper().orElseThrow(), row.number("upper_mean_per_growing_point"), 1e-9);
    }

    private static double kOf(String text) {
        return text.startsWith("Inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(text);
    }

    private static Detection known(double efficiency) {
        return new Detection(DetectionShare.known(efficiency), DetectionShare.known(1));
    }

    private static List<Observation> emptyJars(String units) {
        return Stream.of(units.split(" ", -1))
                .map(u -> Observation.of(0, Double.parseDouble(u)))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("poissonZeroBounds")
    void boundsAPoissonZeroExactly(Row row) {
        ZeroBound bound =
                ZeroBound.givenK(
                        CountData.of(emptyJars("1")),
                        Double.POSITIVE_INFINITY,
                        Detection.complete());

        assertRelative(
                bound.upper(row.number("level")).orElseThrow(),
                row.number("one_sided_upper"),
                1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("eightJars")
    void tellsWhatEightEmptyJarsLeaveOpen(Row row) {
        Map<String, Double> columns =
                Map.of(
                        "poisson",
                        Double.POSITIVE_INFINITY,
                        "k2",
                        2.0,
                        "k1",
                        1.0,
                        "k0.5",
                        0.5,
                        "k0.3",
                        0.3);
        List<Observation> jars = emptyJars((row.text("units") + " ").repeat(8).trim());

        columns.forEach(
                (column, k) ->
                        assertThat(
                                        ZeroBound.givenK(
                                                        CountData.of(jars),
                                                        k,
                                                        known(row.number("share")))
                                                .upper(0.95)
                                                .orElseThrow())
                                .as(column)
                                .isCloseTo(row.number(column), within(0.00051)));
    }

    @Test
    void estimatesRedMitesWithTheErrorOfTheSpecification() {
        Row mites = ReferenceTable.read("mean-and-k/published.csv").get(0);

        DensityEstimate estimate =
                DensityEstimator.standard().estimate(Samples.list(mites.text("samples")));

        assertThat(estimate.estimate()).isCloseTo(1.1466667, within(1e-6));
        assertThat(estimate.k().orElseThrow()).isCloseTo(1.0245924, within(1e-6));
        assertThat(estimate.logLikelihood()).isCloseTo(-222.4371536, within(1e-6));
        assertThat(estimate.standardError().orElseThrow()).isCloseTo(0.1272780, within(1e-6));
        assertThat(estimate.sampleSize()).isEqualTo(150);
        assertThat(estimate.proportionPositive()).isCloseTo(80.0 / 150, within(1e-12));
    }

    private static void assertRelative(double value, double expected, double tolerance) {
        assertThat(value).isCloseTo(expected, within(tolerance * expected));
    }
}
