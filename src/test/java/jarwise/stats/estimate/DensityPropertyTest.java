package jarwise.stats.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.Samples;
import jarwise.stats.count.CountData;
import jarwise.stats.count.CountLikelihood;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.hipparchus.random.RandomDataGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class DensityPropertyTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    private static List<Observation> drawn(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double mean = Math.exp(-1 + 4 * random.uniform());
        double k = Math.exp(-1.5 + 3 * random.uniform());
        int jars = 2 + random.below(24);
        List<Observation> result = Samples.drawn(random, jars, 10, new NegativeBinomial(mean, k));
        result.set(0, Observation.of(1 + result.get(0).individuals(), 10));
        return result;
    }

    private static List<Observation> empty(int jars) {
        return Collections.nCopies(jars, Observation.of(0, 10));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void limitsAreThoseOfPlainSumsOnAFineGrid(long seed) {
        List<Observation> jars = drawn(seed);
        DensityEstimate estimate = DensityEstimator.standard().estimate(jars);
        CountLikelihood likelihood = new CountLikelihood(CountData.of(jars));
        double end = Math.log(estimate.largestDensityConsidered().orElseThrow());

        double low = massUpTo(likelihood, Math.log(estimate.lower()));
        double high = massUpTo(likelihood, Math.log(estimate.upper().orElseThrow()));
        double all = massUpTo(likelihood, end);

        assertThat(low / all).isCloseTo(0.025, within(1e-7));
        assertThat(high / all).isCloseTo(0.975, within(1e-7));
    }

    /** Simpson's rule in ln density, plain sum in ln k; nothing shared with the program. */
    private static double massUpTo(CountLikelihood likelihood, double end) {
        int steps = 2000;
        double individuals = likelihood.data().individuals();
        double start = top(likelihood) - 7 - 30 / (individuals + 0.25);
        double width = (end - start) / steps;
        double scale = likelihood.at(top(likelihood), 0.7);
        double sum = 0;
        for (int j = 0; j < 240; j++) {
            double x = Math.log(0.5) - 14 + j * 28 / 240.0;
            double k = Math.exp(x);
            double weight = Math.exp(-Math.pow((x - Math.log(0.5)) / 2, 2) / 2);
            double clumping = likelihood.clumping(k);
            for (int i = 0; i <= steps; i++) {
                double t = start + i * width;
                double simpson = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
                double log = clumping + likelihood.apartFromClumping(t, k) + 0.25 * t;
                sum += simpson * width / 3 * weight * Math.exp(log - scale);
            }
        }
        return sum;
    }

    private static double top(CountLikelihood likelihood) {
        return Math.log(likelihood.data().individuals() / likelihood.data().totalExposure());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void orderOfSamplesMakesNoDifference(long seed) {
        List<Observation> jars = drawn(seed);
        List<Observation> shuffled = new ArrayList<>(jars);
        Collections.shuffle(shuffled, new Random(seed));

        assertThat(DensityEstimator.standard().estimate(shuffled))
                .isEqualTo(DensityEstimator.standard().estimate(jars));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aKnownEfficiencyScalesEverything(long seed) {
        List<Observation> jars = drawn(seed);
        DensityEstimator plain = DensityEstimator.standard().withActionThreshold(0.5);
        Detection half = new Detection(DetectionShare.known(0.5), DetectionShare.known(0.8));

        DensityEstimate counted = plain.estimate(jars);
        DensityEstimate corrected =
                plain.withDetection(half).withActionThreshold(0.5 / 0.4).estimate(jars);

        assertThat(corrected.estimate()).isCloseTo(counted.estimate() / 0.4, within(1e-12));
        assertThat(0.4 * corrected.lower()).isCloseTo(counted.lower(), within(1e-9));
        assertThat(0.4 * corrected.upper().orElseThrow())
                .isCloseTo(counted.upper().orElseThrow(), within(1e-6));
        assertThat(corrected.probabilityAboveThreshold().orElseThrow())
                .isCloseTo(counted.probabilityAboveThreshold().orElseThrow(), within(1e-9));
        assertThat(corrected.apparent().orElseThrow().estimate()).isEqualTo(counted.estimate());
        assertThat(counted.apparent()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void aWellMeasuredEfficiencyIsAsGoodAsAKnownOne(IntervalMethod method) {
        List<Observation> jars = drawn(3);
        DensityEstimator estimator = DensityEstimator.standard().withMethod(method);
        Detection known = new Detection(DetectionShare.known(0.6), DetectionShare.known(1));
        Detection measured =
                new Detection(DetectionShare.measured(600_000, 1_000_000), DetectionShare.known(1));

        DensityEstimate one = estimator.withDetection(known).estimate(jars);
        DensityEstimate other = estimator.withDetection(measured).estimate(jars);

        assertThat(other.lower()).isCloseTo(one.lower(), within(1e-3 * one.lower()));
        assertThat(other.upper().orElseThrow())
                .isCloseTo(one.upper().orElseThrow(), within(1e-3 * one.upper().orElseThrow()));
    }

    @ParameterizedTest
    @EnumSource
    void anUncertainEfficiencyWidensTheInterval(IntervalMethod method) {
        List<Observation> jars = drawn(3);
        DensityEstimator estimator = DensityEstimator.standard().withMethod(method);
        Detection known = new Detection(DetectionShare.known(0.74), DetectionShare.known(1));
        Detection measured =
                new Detection(DetectionShare.measured(18, 24), DetectionShare.measured(9, 10));

        assertThat(ratio(estimator.withDetection(measured).estimate(jars)))
                .isGreaterThan(ratio(estimator.withDetection(known).estimate(jars)));
    }

    private static double ratio(DensityEstimate estimate) {
        return estimate.upper().orElseThrow() / estimate.lower();
    }

    @Test
    void theZeroBoundFallsWithMoreJarsLessClumpingAndBetterWashing() {
        double before = Double.POSITIVE_INFINITY;
        for (int jars = 2; jars < 40; jars++) {
            double upper = bound(jars, 0.5, 0.6);
            assertThat(upper).isLessThan(before);
            before = upper;
        }
        assertThat(bound(8, 0.3, 0.6)).isGreaterThan(bound(8, 0.5, 0.6));
        assertThat(bound(8, 0.5, 0.6)).isGreaterThan(bound(8, Double.POSITIVE_INFINITY, 0.6));
        assertThat(bound(8, 0.5, 0.3)).isCloseTo(2 * bound(8, 0.5, 0.6), within(1e-9));
    }

    private static double bound(int jars, double k, double efficiency) {
        return DensityEstimator.standard()
                .withGivenK(k)
                .withDetection(
                        new Detection(DetectionShare.known(efficiency), DetectionShare.known(1)))
                .estimate(empty(jars))
                .upper()
                .orElseThrow();
    }

    @Test
    void theZeroBoundIsWhereTheChanceOfFindingNothingIsAlpha() {
        Detection measured =
                new Detection(DetectionShare.measured(18, 24), DetectionShare.measured(9, 10));
        DensityEstimator estimator =
                DensityEstimator.standard().withPrior(new KPrior(0.6, 0.5)).withDetection(measured);

        double upper = estimator.estimate(empty(8)).upper().orElseThrow();

        assertThat(
                        estimator
                                .withActionThreshold(upper)
                                .estimate(empty(8))
                                .probabilityAboveThreshold()
                                .orElseThrow())
                .isCloseTo(0.05, within(1e-9));
        assertThat(simulatedChanceOfNothing(upper)).isCloseTo(0.05, within(0.004));
    }

    /** Draws k, efficiency and sensitivity and averages the zero class: no quadrature in it. */
    private static double simulatedChanceOfNothing(double density) {
        SeededRandom random = new SeededRandom(99);
        RandomDataGenerator normal = new RandomDataGenerator(5);
        int draws = 100_000;
        double sum = 0;
        for (int i = 0; i < draws; i++) {
            double k = 0.6 * Math.exp(normal.nextNormal(0, 0.5));
            double share = random.beta(18.5, 6.5) * random.beta(9.5, 1.5);
            sum += Math.pow(new NegativeBinomial(10 * share * density, k).probability(0), 8);
        }
        return sum / draws;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theChanceToBeAboveALimitIsItsTail(long seed) {
        List<Observation> jars = drawn(seed);
        for (IntervalMethod method : IntervalMethod.values()) {
            DensityEstimator estimator = DensityEstimator.standard().withMethod(method);
            DensityEstimate estimate = estimator.estimate(jars);

            if (estimate.upper().isPresent()) {
                assertThat(above(estimator, jars, estimate.upper().getAsDouble()))
                        .isCloseTo(0.025, within(1e-6));
            }
            assertThat(above(estimator, jars, estimate.lower())).isCloseTo(0.975, within(1e-6));
        }
    }

    private static double above(
            DensityEstimator estimator, List<Observation> jars, double threshold) {
        return estimator
                .withActionThreshold(threshold)
                .estimate(jars)
                .probabilityAboveThreshold()
                .orElseThrow();
    }
}
