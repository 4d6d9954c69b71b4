package jarwise.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TallyThresholdTest {

    /** Without an individual in it: (1 + mean/k)^(−k), or exp(−mean). */
    @ParameterizedTest(name = "k {0}, density {1}, units {2}")
    @CsvSource({"0.5, 0.1, 10", "2, 3, 1", "Infinity, 0.2, 4"})
    void anyIndividualAtAllIsTheComplementOfNone(double k, double density, double units) {
        double mean = units * density;
        double none = Double.isInfinite(k) ? Math.exp(-mean) : Math.pow(1 + mean / k, -k);

        assertThat(new TallyThreshold(1, k, units).proportionInfested(density))
                .isCloseTo(1 - none, within(1e-12));
    }

    /** The boundary proportions of a published plan, tally threshold 3; k is invented. */
    @ParameterizedTest(name = "k {0}, proportion {1}")
    @CsvSource({"0.5, 0.32", "0.5, 0.55", "2, 0.32", "2, 0.55", "Infinity, 0.32", "0.1, 0.01"})
    void densityAndProportionAreEachOthersInverse(double k, double proportion) {
        TallyThreshold tally = new TallyThreshold(3, k, 8);

        assertThat(tally.proportionInfested(tally.density(proportion)))
                .isCloseTo(proportion, within(1e-10));
    }

    @Test
    void geometricCountsReachThreeWithTheThirdPower() {
        // k = 1: P(Y ≥ 3) = (mean / (1 + mean))³
        assertThat(new TallyThreshold(3, 1, 2).proportionInfested(1.5))
                .isCloseTo(27.0 / 64, within(1e-13));
    }

    @Test
    void wrongNumbersAreRefused() {
        assertThatThrownBy(() -> new TallyThreshold(0, 1, 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("tallyThreshold is 0");
        assertThatThrownBy(() -> new TallyThreshold(1, 1, 1).density(1))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new TallyThreshold(1, 1, 1).proportionInfested(Double.NaN))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new TallyThreshold(1, 1e-4, 1).density(0.99))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("no density");
    }
}
