package jarwise.stats.detect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.count.CountData;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import jarwise.stats.estimate.ZeroBound;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClumpedDetectionTest {

    private static final DetectionShare ALL = DetectionShare.known(1);

    static List<Row> golden() {
        return ReferenceTable.read("detection/clumped.csv");
    }

    static List<Row> nextWeek() {
        return ReferenceTable.read("detection/jars-next-week.csv");
    }

    static List<Row> tapsOrJars() {
        return ReferenceTable.read("detection/taps-or-jars.csv");
    }

    private static ClumpedDetection plan(double density, double units, double k, double share) {
        return new ClumpedDetection(
                density, units, k, new Detection(DetectionShare.known(share), ALL));
    }

    private static ClumpedDetection plan(Row row, String share) {
        return plan(row.number("density"), row.number("units"), row.number("k"), row.number(share));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("golden")
    void equalsGeneralStatisticsSoftware(Row row) {
        ClumpedDetection plan = plan(row, "efficiency");
        double exact = row.number("samples_exact");

        assertThat(plan.samplesExact(row.number("confidence")).orElseThrow())
                .isCloseTo(exact, within(1e-12 * exact));
        assertThat(plan.sampleSize(row.number("confidence")))
                .hasValue((long) row.number("samples"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nextWeek")
    void tellsHowManyJarsNextWeek(Row row) {
        assertThat(plan(row, "share").sampleSize(row.number("confidence")))
                .hasValue((long) row.number("samples"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("tapsOrJars")
    void tellsWhatTapsAndJarsFind(Row row) {
        assertThat(100 * plan(row, "share").probability((long) row.number("samples")))
                .isCloseTo(row.number("per_cent"), within(0.5));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void oneSampleLessWouldNotDo(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double level = random.uniform() * 0.999;
        ClumpedDetection plan = drawn(random);

        long enough = plan.sampleSize(level).orElseThrow();

        assertThat(plan.probability(enough)).isGreaterThanOrEqualTo(level - 1e-12);
        assertThat(plan.probability(enough - 1)).isLessThan(level - 1e-12);
        double exact = plan.samplesExact(level).orElseThrow();
        assertThat((double) enough).isBetween(exact * (1 - 1e-6), exact + 1 + 1e-6 * exact);
    }

    private static ClumpedDetection drawn(SeededRandom random) {
        long known = 1L + random.below(40);
        DetectionShare efficiency =
                random.uniform() < 0.5
                        ? DetectionShare.known(0.01 + 0.99 * random.uniform())
                        : DetectionShare.measured(random.below((int) known + 1), known);
        return new ClumpedDetection(
                Math.exp(3 * random.normal() - 3),
                1 + random.below(20),
                random.uniform() < 0.1 ? Double.POSITIVE_INFINITY : Math.exp(random.normal()),
                new Detection(efficiency, ALL));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void moreInsectsABetterWashAndLessClumpingNeedNoMoreSamples(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double density = Math.exp(2 * random.normal() - 2);
        double k = Math.exp(random.normal());
        double share = 0.05 + 0.9 * random.uniform();
        double level = 0.5 + 0.49 * random.uniform();
        long size = plan(density, 10, k, share).sampleSize(level).orElseThrow();

        assertThat(plan(1.3 * density, 10, k, share).sampleSize(level).orElseThrow())
                .isLessThanOrEqualTo(size);
        assertThat(plan(density, 10, 1.3 * k, share).sampleSize(level).orElseThrow())
                .isLessThanOrEqualTo(size);
        assertThat(plan(density, 10, k, 1.05 * share).sampleSize(level).orElseThrow())
                .isLessThanOrEqualTo(size);
        assertThat(plan(density, 10, k, share).sampleSize(1.005 * level).orElseThrow())
                .isGreaterThanOrEqualTo(size);
    }

    @Test
    void withoutClumpingItIsPoisson() {
        double exact = -Math.log(0.05) / (0.1 * 10 * 0.6);

        assertThat(plan(0.1, 10, Double.POSITIVE_INFINITY, 0.6).samplesExact(0.95))
                .hasValueCloseTo(exact, within(1e-12));
        assertThat(plan(0.1, 10, 1e6, 0.6).samplesExact(0.95)).hasValueCloseTo(exact, within(1e-5));
    }

    /** The plan is the bound on a zero count read backwards. */
    @ParameterizedTest(name = "{0} of 24")
    @org.junit.jupiter.params.provider.ValueSource(longs = {0, 1, 18, 24})
    void missesWhatTheBoundOnAZeroCountLeavesOpen(long found) {
        Detection wash = new Detection(DetectionShare.measured(found, 24), ALL);
        CountData empty = CountData.of(Collections.nCopies(8, Observation.of(0, 10)));
        ZeroBound bound = ZeroBound.givenK(empty, 0.5, wash);

        for (double density : new double[] {0.01, 0.1, 1, 10}) {
            assertThat(new ClumpedDetection(density, 10, 0.5, wash).missed(8))
                    .isCloseTo(bound.probabilityAbove(density), within(1e-7));
        }
    }

    @Test
    void anUncertainWashNeedsMoreThanItsMean() {
        ClumpedDetection open =
                new ClumpedDetection(
                        0.1, 10, 0.5, new Detection(DetectionShare.measured(18, 24), ALL));
        double mean = 18.5 / 25;

        assertThat(open.samplesExact(0.95).orElseThrow())
                .isGreaterThan(plan(0.1, 10, 0.5, mean).samplesExact(0.95).orElseThrow());
        assertThat(open.missed(8)).isCloseTo(missedByPlainSum(18.5, 6.5), within(1e-9));
    }

    /** Midpoint sum over the Beta distribution, a hundred thousand steps. */
    private static double missedByPlainSum(double a, double b) {
        int steps = 100_000;
        double sum = 0;
        double weight = 0;
        for (int i = 0; i < steps; i++) {
            double q = (i + 0.5) / steps;
            double w = Math.pow(q, a - 1) * Math.pow(1 - q, b - 1);
            weight += w;
            sum += w * Math.pow(1 + q / 0.5, -4);
        }
        return sum / weight;
    }

    @Test
    void neitherHangsNorOverflowsAtTheEnds() {
        assertThat(plan(1e-12, 1, 0.5, 1).sampleSize(1 - 1e-12)).isPresent();
        assertThat(plan(1e-12, 1, 0.5, 1e-6).sampleSize(0.95)).isEqualTo(OptionalLong.empty());
        assertThat(plan(1e-12, 1, 0.5, 1e-6).samplesExact(0.95)).isEmpty();
        assertThat(plan(1e12, 1e12, 1e-4, 1).sampleSize(0.95)).isPresent();
        assertThat(plan(1e12, 1e12, Double.POSITIVE_INFINITY, 1).sampleSize(0.95)).hasValue(1);
        ClumpedDetection unseen =
                new ClumpedDetection(
                        0.1, 10, 0.5, new Detection(DetectionShare.measured(0, 1), ALL));
        assertThat(unseen.sampleSize(0.999)).isPresent();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> plan(0, 10, 0.5, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> plan(Double.NaN, 10, 0.5, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> plan(1e300, 1e300, 0.5, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> plan(0.1, -1, 0.5, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> plan(0.1, 10, 0, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> plan(0.1, 10, 0.5, 1).sampleSize(1))
                .isInstanceOf(InvalidInput.class);
    }
}
