package jarwise.stats.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import jarwise.stats.count.CountData;
import jarwise.stats.count.CountLikelihood;
import jarwise.stats.count.Observation;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The edges of what is allowed: what comes out is in order and right, or is refused. */
@org.junit.jupiter.api.Tag("slow")
class ExtremeInputTest {

    private static final double[] K = {
        0, 1e-320, 1e-30, 1e-4, 1e-3, 0.05, 1, 1e3, 1e6, 1e18, 1e300, Double.POSITIVE_INFINITY
    };
    private static final double[] UNITS = {1e-8, 1e-6, 1e-3, 1, 1e6, 1e9};
    private static final double[] LEVEL = {
        Double.MIN_VALUE, 1e-6, 0.5, 0.8, 0.95, 0.999, 0.999999, Math.nextDown(1.0)
    };
    private static final double[] THRESHOLD = {1e-300, 0.01, 3, 1e300};
    private static final List<List<Long>> COUNTS =
            List.of(
                    List.of(0L),
                    List.of(1L),
                    List.of(1_000_000_000L),
                    List.of(0L, 0L),
                    List.of(0L, 0L, 0L, 0L, 0L, 0L, 0L, 0L),
                    List.of(1L, 0L),
                    List.of(2L, 3L),
                    List.of(1L, 0L, 0L, 0L, 0L, 0L),
                    List.of(1L, 1L, 1L, 1L),
                    List.of(3L, 1L, 0L, 12L, 0L, 2L),
                    List.of(1_000_000_000L, 0L),
                    List.of(1_000_000_000L, 1_000_000_000L, 999_999_999L),
                    List.of(1_000_000L, 1_000_001L, 999_999L));
    private static final List<DetectionShare> SHARES =
            List.of(
                    DetectionShare.known(1),
                    DetectionShare.known(1e-130),
                    DetectionShare.measured(0, 1),
                    DetectionShare.measured(0, 1_000_000),
                    DetectionShare.measured(1, 1),
                    DetectionShare.measured(18, 24),
                    DetectionShare.measured(999_999_999, 999_999_999));

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void limitsStandInOrderAroundTheEstimateWhateverIsAllowed(long seed) {
        SeededRandom random = new SeededRandom(seed);
        for (int i = 0; i < 4; i++) {
            double units = UNITS[random.below(UNITS.length)];
            List<Long> counts = COUNTS.get(random.below(COUNTS.size()));
            DensityEstimator estimator = estimator(random);
            double firstRead = random.below(2) == 0 ? 1 : 0.6;
            List<Observation> jars =
                    counts.stream().map(y -> Observation.of(y, units)).collect(Collectors.toList());
            jars.set(0, new Observation(counts.get(0), units, firstRead));

            assertInOrder(estimator, jars);
        }
    }

    private static DensityEstimator estimator(SeededRandom random) {
        double k = K[random.below(K.length)];
        DensityEstimator estimator =
                DensityEstimator.standard()
                        .withMethod(
                                random.below(2) == 0
                                        ? IntervalMethod.INTEGRATED
                                        : IntervalMethod.PROFILE)
                        .withConfidenceLevel(LEVEL[random.below(LEVEL.length)])
                        .withActionThreshold(THRESHOLD[random.below(THRESHOLD.length)])
                        .withDetection(
                                new Detection(
                                        SHARES.get(random.below(SHARES.size())),
                                        SHARES.get(random.below(SHARES.size()))));
        return k == 0 ? estimator : estimator.withGivenK(k);
    }

    private static void assertInOrder(DensityEstimator estimator, List<Observation> jars) {
        String what = estimator + " " + jars;
        DensityEstimate density = estimator.estimate(jars);

        assertThat(density.estimate()).as(what).isFinite().isNotNegative();
        assertThat(density.lower()).as(what).isBetween(0.0, density.estimate());
        assertUpper(density.upper(), density.estimate(), what);
        density.apparent()
                .ifPresent(
                        apparent -> {
                            assertThat(apparent.lower())
                                    .as(what)
                                    .isBetween(0.0, apparent.estimate());
                            assertUpper(apparent.upper(), apparent.estimate(), what);
                        });
        density.standardError().ifPresent(e -> assertThat(e).as(what).isFinite().isPositive());
        density.probabilityAboveThreshold()
                .ifPresent(above -> assertThat(above).as(what).isBetween(0.0, 1.0));
        assertThat(density.logLikelihood()).as(what).isFinite().isLessThan(1e-6);
    }

    private static void assertUpper(OptionalDouble upper, double estimate, String what) {
        upper.ifPresent(
                limit -> assertThat(limit).as(what).isFinite().isGreaterThanOrEqualTo(estimate));
    }

    @ParameterizedTest(name = "k {0}, {1} units, level {2}, counts {3}")
    @CsvSource({
        "0.0001, 1, 0.95, 3 1 0 12 0 2",
        "0.0001, 0.000001, 0.5, 1 0",
        "0.0001, 1, 0.95, 1000000000 0",
        "0.001, 1000000, 0.95, 1 0 0 0 0",
        "0.001, 1, 0.999999, 3 1 0 12 0 2",
        "0.02, 1, 0.8, 2 3",
        "1, 0.000001, 0.999999, 3 1 0 12 0 2",
        "1000, 1000000, 0.95, 3 1 0 12 0 2",
        "1000000, 1, 0.95, 1000000 1000001 999999",
        "1000000, 1, 0.999999, 3 1 0 12 0 2",
        "Infinity, 1, 0.999, 3 1 0 12 0 2",
    })
    void tailsAreThoseOfAPlainSumAlsoAtTheEdges(
            double k, double units, double level, String counts) {
        List<Observation> jars =
                Stream.of(counts.split(" ", -1))
                        .map(y -> Observation.of(Long.parseLong(y), units))
                        .toList();
        DensityEstimator estimator =
                DensityEstimator.standard().withGivenK(k).withConfidenceLevel(level);
        DensityEstimate density = estimator.estimate(jars);
        CountLikelihood likelihood = new CountLikelihood(CountData.of(jars));
        double end = Math.log(density.largestDensityConsidered().orElseThrow());
        double tail = 0.5 * (1 - level);

        double all = massUpTo(likelihood, k, end);
        double low = massUpTo(likelihood, k, Math.log(density.lower())) / all;
        double high = massUpTo(likelihood, k, Math.log(density.upper().orElseThrow())) / all;

        // drawn out to the estimate, the limit cuts off less than the tail
        if (density.lower() < density.estimate()) {
            assertThat(low).isCloseTo(tail, within(1e-7 + 1e-2 * Math.min(tail, 1e-6)));
        } else {
            assertThat(low).isLessThan(tail);
        }
        assertThat(high).isCloseTo(1 - tail, within(1e-7));
    }

    /** Simpson's rule in ln density; nothing shared with the program but the likelihood. */
    private static double massUpTo(CountLikelihood likelihood, double k, double end) {
        CountData data = likelihood.data();
        double top = Math.log(data.individuals() / data.totalExposure());
        double spread = 1 / Math.sqrt(likelihood.informationOnLogDensity(top, k));
        double start =
                top
                        - Math.max(0, -Math.log(k))
                        - Math.min(7 + 30 / (data.individuals() + 0.25), 12 * spread + 1);
        int steps = 400_000;
        double width = (end - start) / steps;
        double scale = likelihood.apartFromClumping(top, k);
        double sum = 0;
        for (int i = 0; i <= steps; i++) {
            double t = start + i * width;
            double simpson = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
            sum +=
                    simpson
                            * Math.exp(
                                    likelihood.apartFromClumping(t, k) - scale + 0.25 * (t - top));
        }
        return sum * width / 3;
    }

    @ParameterizedTest(name = "k {0}")
    @ValueSource(doubles = {-1e-300, -1, 0, Double.NaN, -1e9, Double.NEGATIVE_INFINITY})
    void refusesAKOutOfRangeAndSaysWhichAreAllowed(double k) {
        assertThatThrownBy(() -> DensityEstimator.standard().withGivenK(k))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("above 0, or Inf")
                .hasMessageContaining("Maybe leave it out");
        assertThatThrownBy(() -> new KPrior(k, 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("0.0001 to 1000000");
        CountData empty = CountData.of(List.of(Observation.of(0, 1)));
        assertThatThrownBy(() -> ZeroBound.givenK(empty, k, Detection.complete()))
                .isInstanceOf(InvalidInput.class);
    }

    @Test
    void refusesWhatIsTooSmallOrTooLargeToMeanAnything() {
        assertThatThrownBy(() -> DetectionShare.known(0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Observation.of(1, 1e-300)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Observation.of(1, 1e300)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Observation(1, 1, 1e-300)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> DensityEstimator.standard().withConfidenceLevel(1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("below 1");
    }

    @Test
    void emptyJarsSetNoLimitWhereKIsTooSmallForThemAndSayIt() {
        List<Observation> jars = List.of(Observation.of(0, 10), Observation.of(0, 10));

        DensityEstimate none = DensityEstimator.standard().withGivenK(1e-4).estimate(jars);
        DensityEstimate hardly = DensityEstimator.standard().withGivenK(0.05).estimate(jars);

        assertThat(none.upper()).isEmpty();
        assertThat(none.warnings()).singleElement().asString().contains("hardly limit");
        assertThat(hardly.upper()).isPresent();
        assertThat(hardly.warnings()).singleElement().asString().contains("hardly limit");
    }
}
