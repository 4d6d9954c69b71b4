package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuadratureTest {

    @Test
    void panelsIntegrateAndInvertANormalCurve() {
        NormalDistribution normal = new NormalDistribution(3, 0.2);
        PanelFunction panels =
                PeakPanels.of(
                        normal::logDensity,
                        3.05,
                        0.3,
                        Double.POSITIVE_INFINITY,
                        PeakPanels.USUAL_TAIL);
        double scale = normal.density(3.05);

        assertThat(panels.integral() * scale).isCloseTo(1, within(1e-9));
        for (double p : new double[] {1e-6, 0.025, 0.5, 0.9, 0.975}) {
            double x = normal.inverseCumulativeProbability(p);
            assertThat(panels.integralUpTo(x) * scale).isCloseTo(p, within(1e-9));
            assertThat(panels.inverseIntegral(p / scale)).isCloseTo(x, within(1e-6));
            assertThat(panels.value(x) * scale).isCloseTo(normal.density(x), within(1e-6));
        }
        assertThat(panels.value(-10)).isZero();
        assertThat(panels.integralUpTo(99)).isEqualTo(panels.integral());
    }

    @Test
    void panelsStopAtAHardEnd() {
        PanelFunction panels =
                PeakPanels.of(x -> -Math.abs(x) / 10, 0, 1, 5, PeakPanels.USUAL_TAIL);

        assertThat(panels.end()).isEqualTo(5);
        assertThat(panels.integral() - panels.integralUpTo(0))
                .isCloseTo(10 * (1 - Math.exp(-0.5)), within(1e-9));
    }

    @ParameterizedTest(name = "Beta({0}, {1})")
    @CsvSource({"0.5, 0.5", "0.5, 24.5", "18.5, 6.5", "24.5, 0.5", "3.5, 2.5", "900.5, 100.5"})
    void nodesAverageOverABetaDistribution(double a, double b) {
        BetaNodes nodes = BetaNodes.of(a, b, 0.3, 1);
        BetaDistribution beta = new BetaDistribution(a, b);
        double mean = a / (a + b);

        assertThat(nodes.average(v -> 1)).isCloseTo(1, within(1e-9));
        assertThat(nodes.average(Math::exp)).isCloseTo(mean, within(1e-9));
        assertThat(nodes.average(v -> Math.exp(2 * v)))
                .isCloseTo(beta.getNumericalVariance() + mean * mean, within(1e-9));
    }

    @ParameterizedTest(name = "k {0}, y {1}")
    @CsvSource({
        "0.05, 3",
        "0.5, 40",
        "3, 100",
        "3, 101",
        "15.9, 500",
        "16, 500",
        "20, 101",
        "1e6, 300",
        "1e9, 90",
        "0.01, 5000",
        "2.5, 0",
        "2.5, 1"
    })
    void risingFactorialIsASumOfLogarithmsAndSoIsItsSlope(double k, long y) {
        double sum = 0;
        double slope = 0;
        for (int i = 1; i < y; i++) {
            sum += Math.log1p(i / k);
            slope -= i / (k + i);
        }

        assertThat(RisingFactorial.logRatio(k, y)).isCloseTo(sum, within(1e-12 * (1 + sum)));
        assertThat(RisingFactorial.slope(k, y)).isCloseTo(slope, within(1e-12 * (1 - slope)));
    }

    @Test
    void walksToTheFirstZeroAndSaysWhereThereIsNone() {
        assertThat(Roots.walkingFrom(x -> x * x - 9, 0, 0.1, 100).orElseThrow())
                .isCloseTo(3, within(1e-12));
        assertThat(Roots.walkingFrom(x -> x * x - 9, 0, -0.1, -100).orElseThrow())
                .isCloseTo(-3, within(1e-12));
        assertThat(Roots.walkingFrom(x -> x * x + 1, 0, 0.1, 100)).isEmpty();
    }
}
