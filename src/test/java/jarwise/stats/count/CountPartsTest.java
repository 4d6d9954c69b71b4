package jarwise.stats.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Limits of what is taken, and the small parts of a fit. */
class CountPartsTest {

    private static final int DRAWS = 20_000;

    private static CountData data(long... counts) {
        return CountData.of(
                Arrays.stream(counts).mapToObj(count -> Observation.of(count, 10)).toList());
    }

    private static void moments(
            ToDoubleFunction<SimulatedCounts> draw, double mean, double variance) {
        SimulatedCounts drawn = new SimulatedCounts(11);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < DRAWS; i++) {
            double x = draw.applyAsDouble(drawn);
            sum += x;
            squares += x * x;
        }
        double average = sum / DRAWS;
        assertThat(average).isCloseTo(mean, within(5 * Math.sqrt(variance / DRAWS)));
        assertThat(squares / DRAWS - average * average).isCloseTo(variance, within(0.2 * variance));
    }

    @Test
    void simulatedCountsHaveTheMomentsTheySay() {
        moments(SimulatedCounts::uniform, 0.5, 1.0 / 12);
        moments(SimulatedCounts::normal, 0, 1);
        moments(drawn -> drawn.below(4), 1.5, 1.25);
        moments(drawn -> drawn.gamma(4, 2), 2, 1);
        moments(drawn -> drawn.poisson(3), 3, 3);
        moments(drawn -> drawn.negativeBinomial(3, 1), 3, 12);
        moments(drawn -> drawn.happens(0.2) ? 1 : 0, 0.2, 0.16);
    }

    @Test
    void anObservationIsWithinWhatAGreenhouseCanHold() {
        assertThatCode(() -> Observation.of(1_000_000_000, 1e9)).doesNotThrowAnyException();
        assertThatThrownBy(() -> Observation.of(1_000_000_001, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Observation.of(-1, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Observation.of(1, 1.1e9)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Observation(1, 1e-8, 0.05)).isInstanceOf(InvalidInput.class);
        assertThatCode(() -> new Observation(1, 1e-8, 0.1)).doesNotThrowAnyException();
        assertThat(new Observation(1, 10, 0.25).exposure()).isEqualTo(2.5);
    }

    @Test
    void aGivenKIsAboveNothingAndPoissonWhereItCannotMatter() {
        assertThat(GivenK.isAllowed(0)).isFalse();
        assertThat(GivenK.isAllowed(-1)).isFalse();
        assertThat(GivenK.isAllowed(Double.NaN)).isFalse();
        assertThat(GivenK.isAllowed(Double.MIN_VALUE)).isTrue();
        assertThat(GivenK.isPoisson(1e20)).isTrue();
        assertThat(GivenK.isPoisson(9e19)).isFalse();
        assertThat(GivenK.forShape(1e300)).isInfinite();
        assertThat(GivenK.forShape(1e-200)).isEqualTo(1e-100);
        assertThat(GivenK.forShape(0.5)).isEqualTo(0.5);
    }

    @Test
    void countsThatScatterLessThanPoissonOnesHaveNoK() {
        CountFit even = CountFit.of(data(2, 2, 3, 2));
        CountFit clumped = CountFit.of(data(0, 9, 0, 1));

        assertThat(even.isPoisson()).isTrue();
        assertThat(even.kOrInfinity()).isInfinite();
        assertThat(clumped.isPoisson()).isFalse();
        assertThat(clumped.kOrInfinity()).isPositive().isFinite();
    }

    @Test
    void theDevianceIsNothingAtTheFitAndTheCutAtTheLimits() {
        CountData counts = data(0, 3, 1, 0, 12, 0, 2, 5);
        DensityProfile profile = DensityProfile.of(counts);
        double cut = 3.841458820694124;

        assertThat(profile.deviance(profile.fit().density())).isCloseTo(0, within(1e-9));
        assertThat(profile.deviance(profile.lower(cut))).isCloseTo(cut, within(1e-8));
        assertThat(profile.deviance(profile.upper(cut).orElseThrow())).isCloseTo(cut, within(1e-8));
        // For Poisson counts it is 2 (y ln(y / mean) + mean − y) with y the sum.
        DensityProfile poisson = DensityProfile.givenK(counts, Double.POSITIVE_INFINITY);
        double mean = 80 * 0.5;
        assertThat(poisson.deviance(0.5))
                .isCloseTo(2 * (23 * Math.log(23 / mean) + mean - 23), within(1e-9));
    }

    @Test
    void aSumKnowsItsSamples() {
        assertThat(data(1, 0, 4).samples()).isEqualTo(3);
        assertThat(data(1, 0, 4).individuals()).isEqualTo(5);
    }

    @Test
    void aCommonKIsThatOfOneGroupWhereThereIsOneGroup() {
        CountData counts = data(0, 3, 1, 0, 12, 0, 2, 5);
        CountFit alone = CountFit.of(counts);
        CommonKFit common = CommonKFit.of(List.of(counts));

        assertThat(common.k().orElseThrow()).isCloseTo(alone.k().orElseThrow(), within(1e-6));
        assertThat(common.densities().get(0)).isCloseTo(alone.density(), within(1e-6));
    }

    @Test
    void poissonLimitsReachATrillion() {
        assertThatCode(() -> PoissonLimits.of(1_000_000_000_000L, 0.95)).doesNotThrowAnyException();
        assertThatThrownBy(() -> PoissonLimits.of(1_000_000_000_001L, 0.95))
                .isInstanceOf(InvalidInput.class);
    }
}
