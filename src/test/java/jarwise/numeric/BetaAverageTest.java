package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Beta;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Moments of a Beta distribution are known: E q^c = B(a + c, b) / B(a, b). */
class BetaAverageTest {

    private static final PanelFunction.Accuracy NEAR = new PanelFunction.Accuracy(1e-12, 1);

    /** e^(cv) on panels from −60 to 2, far finer than its own panels would need to be. */
    private static PanelFunction power(double c) {
        double[] edges = new double[125];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = -60 + 0.5 * i;
        }
        return PanelFunction.of(v -> Math.exp(c * v), edges, NEAR);
    }

    private static double moment(double a, double b, double c) {
        return Math.exp(Beta.logBeta(a + c, b) - Beta.logBeta(a, b));
    }

    @ParameterizedTest(name = "Beta({0}, {1}), power {2}, tilt {3}, at {4}")
    @CsvSource({
        "18.5, 6.5, 1, 0, 0",
        "18.5, 6.5, 2, 0.25, 1.5",
        "0.5, 0.5, 1, 1, -2",
        "24.5, 0.5, 3, -0.25, 0",
        "3.5, 2.5, 0.5, -0.25, 1",
        "900.5, 100.5, 1, 0, 0.5",
        "1.5, 40.5, 2, 0, 0"
    })
    void averagesAPowerOverABetaDistribution(double a, double b, double c, double tilt, double t) {
        double expected = Math.exp(c * t) * moment(a, b, c + tilt);

        assertThat(new BetaAverage(power(c), a, b, tilt, 1e-3).value(t))
                .isCloseTo(expected, within(1e-8 * expected));
    }

    @Test
    void seesNothingOfAFunctionThatEndsBelowEveryShare() {
        PanelFunction low = PanelFunction.of(v -> 1, new double[] {-200, -190}, NEAR);

        assertThat(new BetaAverage(low, 18.5, 6.5, 0, 1e-3).value(0)).isZero();
        assertThat(new BetaAverage(low, 18.5, 6.5, 0, 1e-3).value(-195 + 0.3))
                .isCloseTo(1, within(1e-8));
    }

    @Test
    void takesTheShareOfTheDistributionThatAStepCovers() {
        // The step is 1 from ln q = ln 0.7 up: what is left is the chance that q is above 0.7.
        PanelFunction step = PanelFunction.of(v -> 1, new double[] {Math.log(0.7), 1}, NEAR);
        double above = 1 - Beta.regularizedBeta(0.7, 18.5, 6.5);

        assertThat(new BetaAverage(step, 18.5, 6.5, 0, 1e-3).value(0))
                .isCloseTo(above, within(1e-8));
    }
}
