package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PanelFunctionTest {

    private static final PanelFunction.Accuracy NEAR = new PanelFunction.Accuracy(1e-12, 1);
    private static final double[] TWO_PANELS = {0, 1, 3};

    @Test
    void aSmoothFunctionKeepsThePanelsItWasGiven() {
        PanelFunction cubic = PanelFunction.of(x -> x * x * x, TWO_PANELS, NEAR);

        assertThat(cubic.panels()).isEqualTo(2);
        assertThat(cubic.start()).isZero();
        assertThat(cubic.edge(1)).isEqualTo(1);
        assertThat(cubic.edge(2)).isEqualTo(3);
        assertThat(cubic.end()).isEqualTo(3);
        assertThat(cubic.integral()).isCloseTo(20.25, within(1e-12));
        assertThat(cubic.integralUpTo(1)).isCloseTo(0.25, within(1e-13));
        assertThat(cubic.integralUpTo(2)).isCloseTo(4, within(1e-12));
        assertThat(cubic.inverseIntegral(4)).isCloseTo(2, within(1e-9));
    }

    @Test
    void aNarrowPeakIsHalvedUntilItIsSeen() {
        double width = 1e-3;
        PanelFunction peak =
                PanelFunction.of(
                        x -> 1 / (1 + Math.pow((x - 0.3) / width, 2)), new double[] {0, 1}, NEAR);
        double exact = width * (Math.atan(0.7 / width) + Math.atan(0.3 / width));

        assertThat(peak.panels()).isGreaterThan(10);
        assertThat(peak.integral()).isCloseTo(exact, within(1e-12));
        assertThat(peak.value(0.3)).isCloseTo(1, within(1e-9));
        assertThat(peak.value(0.7)).isCloseTo(1 / (1 + 400.0 * 400.0), within(1e-9));
        for (int i = 0; i < peak.panels(); i++) {
            assertThat(peak.edge(i)).isLessThan(peak.edge(i + 1));
        }
    }

    @Test
    void theEdgesThemselvesBelongToTheFunction() {
        PanelFunction line = PanelFunction.of(x -> 1 + x, TWO_PANELS, NEAR);

        assertThat(line.value(0)).isCloseTo(1, within(1e-12));
        assertThat(line.value(1)).isCloseTo(2, within(1e-12));
        assertThat(line.value(3)).isCloseTo(4, within(1e-12));
        assertThat(line.value(-1e-9)).isZero();
        assertThat(line.value(3 + 1e-9)).isZero();
    }

    @Test
    void theInverseOfNothingIsTheStartAndOfEverythingTheEnd() {
        PanelFunction line = PanelFunction.of(x -> 1 + x, TWO_PANELS, NEAR);

        assertThat(line.inverseIntegral(0)).isZero();
        assertThat(line.inverseIntegral(-1)).isZero();
        assertThat(line.inverseIntegral(line.integral())).isEqualTo(3);
        assertThat(line.inverseIntegral(99)).isEqualTo(3);
        assertThat(line.inverseIntegral(1.5)).isCloseTo(1, within(1e-12));
    }

    /** ∫ x³ from a to 3 is (81 − a⁴) / 4. */
    @Test
    void theIntegralFromAPointAndItsInverseKnowTheirEdges() {
        PanelFunction cubic = PanelFunction.of(x -> x * x * x, TWO_PANELS, NEAR);

        assertThat(cubic.integralFrom(-1)).isEqualTo(cubic.integral());
        assertThat(cubic.integralFrom(0.5)).isCloseTo((81 - 0.0625) / 4, within(1e-12));
        assertThat(cubic.integralFrom(1)).isCloseTo(20, within(1e-12));
        assertThat(cubic.integralFrom(2)).isCloseTo(65 / 4.0, within(1e-12));
        assertThat(cubic.integralFrom(3)).isZero();
        assertThat(cubic.integralFrom(4)).isZero();
        assertThat(cubic.inverseIntegralFrom(65 / 4.0)).isCloseTo(2, within(1e-9));
        assertThat(cubic.inverseIntegralFrom(20)).isCloseTo(1, within(1e-9));
        assertThat(cubic.inverseIntegralFrom((81 - 0.0625) / 4)).isCloseTo(0.5, within(1e-9));
        assertThat(cubic.inverseIntegralFrom(99)).isZero();
        assertThat(cubic.inverseIntegralFrom(0)).isEqualTo(3);
    }

    /** The digits of a small rest: exp(−x) from 30 to 40 is 9.3572e−14 of a whole of 1. */
    @Test
    void theRestNearTheEndKeepsItsDigits() {
        double[] edges = new double[41];
        for (int i = 0; i < edges.length; i++) {
            edges[i] = i;
        }
        PanelFunction falling =
                PanelFunction.of(x -> Math.exp(-x), edges, new PanelFunction.Accuracy(1e-12, 1));
        double rest = Math.exp(-30) - Math.exp(-40);

        assertThat(falling.integralFrom(30)).isCloseTo(rest, within(1e-9 * rest));
        assertThat(falling.inverseIntegralFrom(rest)).isCloseTo(30, within(1e-8));
        assertThat(falling.inverseIntegralFrom(falling.integralFrom(30.5)))
                .isCloseTo(30.5, within(1e-8));
    }

    @Test
    void aPeakFarFromWhereOneStartedIsFound() {
        PanelFunction peak =
                PeakPanels.of(
                        x -> -0.5 * (x - 40) * (x - 40),
                        3,
                        1,
                        Double.POSITIVE_INFINITY,
                        PeakPanels.USUAL_TAIL);

        assertThat(peak.value(40)).isGreaterThan(0.6);
        assertThat(peak.integral() / peak.value(40))
                .isCloseTo(Math.sqrt(2 * Math.PI), within(1e-6));
        PanelFunction below =
                PeakPanels.of(
                        x -> -0.5 * (x + 40) * (x + 40),
                        3,
                        1,
                        Double.POSITIVE_INFINITY,
                        PeakPanels.USUAL_TAIL);
        assertThat(below.integral() / below.value(-40))
                .isCloseTo(Math.sqrt(2 * Math.PI), within(1e-6));
    }

    @Test
    void aPeakBeyondTheEndIsCutThere() {
        PanelFunction rising = PeakPanels.of(x -> x, 0, 1, 10, PeakPanels.USUAL_TAIL);

        assertThat(rising.end()).isEqualTo(10);
        assertThat(rising.integral() / rising.value(10)).isCloseTo(1, within(1e-6));
    }

    @Test
    void panelsCoverThePeakWithoutGapsAndWidenOutwards() {
        PanelFunction peak =
                PeakPanels.of(
                        x -> -0.5 * x * x, 0, 1, Double.POSITIVE_INFINITY, PeakPanels.USUAL_TAIL);

        assertThat(peak.start()).isLessThan(-6);
        assertThat(peak.end()).isGreaterThan(6);
        double last = 0;
        for (int i = 0; i < peak.panels(); i++) {
            if (peak.edge(i) >= 0) {
                double width = peak.edge(i + 1) - peak.edge(i);
                assertThat(width).isGreaterThanOrEqualTo(last * (1 - 1e-9));
                last = width;
            }
        }
        assertThat(peak.panels()).isBetween(4, 20);
    }
}
