package jarwise.stats.removal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RemovalPropertyTest {

    private static final double HALF_CHI_SQUARED = 1.920729410347062;

    private static RemovalCatches washed(Random random) {
        int left = 5 + random.nextInt(300);
        double share = 0.2 + 0.7 * random.nextDouble();
        long[] catches = new long[2 + random.nextInt(4)];
        for (int i = 0; i < catches.length; i++) {
            for (int j = left; j > 0; j--) {
                catches[i] += random.nextDouble() < share ? 1 : 0;
            }
            left -= (int) catches[i];
        }
        catches[0] += catches[0] == 0 ? 1 : 0;
        return RemovalCatches.of(catches);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void noMethodSaysFewerThanCameOff(long seed) {
        RemovalCatches catches = washed(new Random(seed));
        for (RemovalMethod method : RemovalMethod.values()) {
            if (method != RemovalMethod.TWO_PASS || catches.washes() == 2) {
                RemovalEstimate estimate = method.estimate(catches, 0.95);
                double total = estimate.estimate().orElse((double) catches.total());
                assertThat(total).isGreaterThanOrEqualTo((double) catches.total());
                assertThat(estimate.lower()).isBetween((double) catches.total(), total);
                assertThat(estimate.upper().orElse(total)).isGreaterThanOrEqualTo(total);
                double share = estimate.removalProbability().orElse(1);
                assertThat(share).isGreaterThan(0).isLessThanOrEqualTo(1);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void likelihoodIsLargestAtTheEstimateAndFallsByTheCutAtTheLimits(long seed) {
        RemovalCatches catches = washed(new Random(seed));
        ConstantShare likelihood = ConstantShare.of(catches);
        RemovalEstimate estimate = RemovalMethod.ML.estimate(catches, 0.95);
        if (estimate.estimate().isEmpty()) {
            assertThat(likelihood.at(1e9)).isGreaterThan(likelihood.at(1e3));
            return;
        }
        double best = likelihood.at(estimate.estimate().getAsDouble());

        for (int step = 0; step <= 400; step++) {
            double total = catches.total() * Math.pow(1.02, step);
            assertThat(likelihood.at(total)).isLessThanOrEqualTo(best + 1e-9);
        }
        if (estimate.lower() > catches.total()) {
            assertThat(best - likelihood.at(estimate.lower()))
                    .isCloseTo(HALF_CHI_SQUARED, within(1e-7));
        }
        estimate.upper()
                .ifPresentOrElse(
                        upper ->
                                assertThat(best - likelihood.at(upper))
                                        .isCloseTo(HALF_CHI_SQUARED, within(1e-7)),
                        () ->
                                assertThat(best - likelihood.at(1e12))
                                        .isLessThan(HALF_CHI_SQUARED + 1e-6));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void slopeIsTheDerivativeOfTheLikelihood(long seed) {
        Random random = new Random(seed);
        RemovalCatches catches = washed(random);
        double total = catches.total() + 1 + random.nextInt(400);
        TotalLikelihood[] both =
                catches.washes() > 2
                        ? new TotalLikelihood[] {
                            ConstantShare.of(catches), FirstWashApart.of(catches)
                        }
                        : new TotalLikelihood[] {ConstantShare.of(catches)};
        for (TotalLikelihood likelihood : both) {
            double step = 1e-4 * total;
            double difference = likelihood.at(total + step) - likelihood.at(total - step);
            assertThat(likelihood.slope(total))
                    .isCloseTo(
                            difference / (2 * step),
                            within(1e-5 + 1e-3 * Math.abs(likelihood.slope(total))));
            assertThat(likelihood.at(1e13)).isCloseTo(likelihood.limit(), within(1e-6));
        }
    }

    /** The first whole number at which the ratio is at most 1, one after the other. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void carleAndStrubIsTheSmallestTotalOfALinearSearch(long seed) {
        RemovalCatches catches = washed(new Random(seed));
        double washes = catches.washes();
        double caught = catches.total();
        double total = caught - 1;
        double ratio;
        do {
            total++;
            ratio = (total + 1) / (total - caught + 1);
            for (int i = 1; i <= washes; i++) {
                double exposed = washes * total - catches.washesAfter();
                ratio *= (exposed - caught + 1 + washes - i) / (exposed + 2 + washes - i);
            }
        } while (ratio > 1 + 1e-12);

        assertThat(RemovalMethod.CARLE_STRUB.estimate(catches, 0.95).estimate()).hasValue(total);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void closedFormulasAreTheLargeSampleForm(long seed) {
        RemovalCatches catches = washed(new Random(seed));
        RemovalEstimate zippin = RemovalMethod.ZIPPIN.estimate(catches, 0.9);
        if (catches.washes() > 3 || catches.catches().get(1) == 0) {
            return;
        }
        RemovalEstimate closed =
                catches.washes() == 2
                        ? TwoPassRemoval.seber(catches, 0.9)
                        : ThreePassRemoval.seber(catches, 0.9);

        assertThat(closed.finite()).isEqualTo(zippin.finite());
        if (closed.finite()) {
            double total = zippin.estimate().orElseThrow();
            assertThat(closed.estimate().orElseThrow()).isCloseTo(total, within(1e-6 * total));
            assertThat(closed.standardError().orElseThrow())
                    .isCloseTo(
                            zippin.standardError().orElseThrow(),
                            within(1e-5 * zippin.standardError().orElseThrow()));
        }
    }

    /** Seber's closed form for two washes has no difference of nearly equal terms in it. */
    @ParameterizedTest
    @ValueSource(longs = {600_000_000, 900_000_000, 990_000_000, 999_999_000, 999_999_999})
    void standardErrorKeepsItsDigitsWhereLittleComesOff(long second) {
        RemovalCatches catches = RemovalCatches.of(1_000_000_000, second);
        RemovalEstimate closed = TwoPassRemoval.seber(catches, 0.95);

        assertThat(
                        RemovalPrecision.standardError(
                                closed.estimate().orElseThrow(),
                                closed.removalProbability().orElseThrow(),
                                2))
                .isCloseTo(
                        closed.standardError().orElseThrow(),
                        within(1e-6 * closed.standardError().orElseThrow()));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(
            value = RemovalMethod.class,
            names = {"ML", "ZIPPIN", "CARLE_STRUB"})
    void whatTheFirstWashTakesWholeIsTheTotal(RemovalMethod method) {
        RemovalEstimate estimate = method.estimate(RemovalCatches.of(12, 0, 0), 0.95);

        assertThat(estimate.estimate()).hasValue(12);
        assertThat(estimate.removalProbability()).hasValue(1);
        assertThat(estimate.lower()).isEqualTo(12);
        assertThat(estimate.fit()).isEmpty();
    }

    @Test
    void washesThatDoNotFallOffHaveOnlyALowerLimit() {
        for (RemovalMethod method : new RemovalMethod[] {RemovalMethod.ML, RemovalMethod.ZIPPIN}) {
            RemovalEstimate estimate = method.estimate(RemovalCatches.of(4, 6, 9), 0.95);

            assertThat(estimate.finite()).isFalse();
            assertThat(estimate.estimate()).isEmpty();
            assertThat(estimate.lower()).isEqualTo(19);
            assertThat(estimate.upper()).isEmpty();
            assertThat(estimate.removalProbability()).isEmpty();
        }
        assertThat(TwoPassRemoval.seber(RemovalCatches.of(10, 10), 0.95).finite()).isFalse();
        assertThat(ThreePassRemoval.seber(RemovalCatches.of(10, 9, 10), 0.95).finite()).isFalse();
    }

    /** 2 X = s (T − 1) − T: the likelihood rises to its limit and has no maximum before. */
    @Test
    void theBorderOfAFiniteMaximumHasNone() {
        assertThat(RemovalMethod.ML.estimate(RemovalCatches.of(8, 10), 0.95).finite()).isFalse();
        assertThat(RemovalMethod.ML.estimate(RemovalCatches.of(9, 10), 0.95).finite()).isTrue();
    }

    @Test
    void aFirstWashLikeTheOthersIsNotToldApart() {
        FirstWashTest test = FirstWashTest.of(RemovalCatches.of(400, 200, 100, 50), 0.95);

        assertThat(test.statistic()).isCloseTo(0, within(0.01));
        assertThat(test.pValue()).isGreaterThan(0.9);
        assertThat(FirstWashTest.of(RemovalCatches.of(0, 5, 0), 0.95).lower()).isEqualTo(5);
        assertThat(FirstWashTest.of(RemovalCatches.of(5, 0, 0), 0.95).estimate()).hasValue(5);
    }

    @Test
    void refusesWhatIsNoSeriesOfWashes() {
        assertThatThrownBy(() -> RemovalCatches.of(5)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> RemovalCatches.of(0, 0, 0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> RemovalCatches.of(5, -1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> RemovalMethod.TWO_PASS.estimate(RemovalCatches.of(5, 3, 1), 0.95))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("exactly 2");
        assertThatThrownBy(() -> FirstWashTest.of(RemovalCatches.of(5, 3), 0.95))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> RemovalMethod.ML.estimate(RemovalCatches.of(5, 3), 95))
                .isInstanceOf(InvalidInput.class);
    }
}
