package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogarithmsTest {

    @Test
    void logOfOnePlusARatioIsKnownWhereTheRatioIsBeyondAllNumbers() {
        assertThat(LogOnePlus.ratio(3, 1.5)).isCloseTo(Math.log(3), within(1e-15));
        assertThat(LogOnePlus.ratio(1e-30, 1)).isEqualTo(1e-30);
        assertThat(LogOnePlus.ratio(0, 2)).isZero();
        assertThat(LogOnePlus.ratio(1e200, 1e-200)).isCloseTo(400 * Math.log(10), within(1e-11));
    }

    /** The ratio is a sum of logarithms; each case goes another way round what would be lost. */
    @ParameterizedTest(name = "k {0}, y {1}")
    @CsvSource({"1e-3, 100", "1e-90, 9", "1e13, 50", "1e5, 3", "0.3, 99", "40, 100"})
    void theRisingFactorialKeepsThirteenDigits(double k, long y) {
        double sum = 0;
        double slope = 0;
        for (long i = y - 1; i > 0; i--) {
            sum += Math.log1p(i / k);
            slope -= i / (k + i);
        }

        assertThat(RisingFactorial.logRatio(k, y)).isCloseTo(sum, within(1e-13 * sum));
        assertThat(RisingFactorial.slope(k, y))
                .isCloseTo(slope, within(1e-11 * Math.abs(slope) + 1e-12));
    }

    @Test
    void forTheSmallestKOnlyTheFactorialIsLeft() {
        // (k + i)/k is i/k to all digits: the sum is ln (y − 1)! − (y − 1) ln k.
        double logK = Math.log(1e-200);

        assertThat(RisingFactorial.logRatio(1e-200, 5))
                .isCloseTo(Math.log(24) - 4 * logK, within(1e-10));
        assertThat(RisingFactorial.logRatio(1e-200, 2)).isCloseTo(-logK, within(1e-10));
        assertThat(RisingFactorial.logRatio(1e-200, 1)).isZero();
        assertThat(RisingFactorial.logRatio(1e-200, 0)).isZero();
        assertThat(RisingFactorial.slope(1e-200, 5)).isEqualTo(-4);
    }

    @Test
    void aShareThatIsKnownVeryWellIsOnePoint() {
        BetaNodes nodes = BetaNodes.of(3e9, 1e9, 1, 1);

        assertThat(nodes.average(Math::exp)).isCloseTo(0.75, within(1e-12));
        assertThat(nodes.average(v -> 1)).isEqualTo(1);
    }
}
