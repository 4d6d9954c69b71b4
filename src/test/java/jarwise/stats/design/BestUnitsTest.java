package jarwise.stats.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class BestUnitsTest {

    @Test
    void bestUnitsAreTheRootOfCostsTimesVariances() {
        VarianceComponents components = new VarianceComponents(0.5, 8);

        assertThat(components.bestUnits(9, 1).orElseThrow()).isCloseTo(12, within(1e-12));
        assertThat(components.bestUnits(1, 4).orElseThrow()).isCloseTo(2, within(1e-12));
        assertThat(new VarianceComponents(0, 8).bestUnits(9, 1)).isEmpty();
        assertThat(components.intraclassCorrelation()).isCloseTo(0.5 / 8.5, within(1e-15));
        assertThat(new VarianceComponents(0, 0).intraclassCorrelation()).isZero();
    }

    @Test
    void wholeUnitsAreTheCheaperOfTheTwoNeighbours() {
        for (double between = 0.1; between < 6; between += 0.1) {
            VarianceComponents components = new VarianceComponents(between, 7);
            long best = components.wholeUnits(10, 1, 20);
            double price = price(components, best);
            for (long units = 1; units <= 20; units++) {
                assertThat(price).isLessThanOrEqualTo(price(components, units) * (1 + 1e-12));
            }
        }
        assertThat(new VarianceComponents(0, 7).wholeUnits(10, 1, 20)).isEqualTo(20);
        assertThat(new VarianceComponents(0.1, 7).wholeUnits(10, 1, 3)).isEqualTo(3);
        assertThat(new VarianceComponents(100, 0.1).wholeUnits(1, 1, 20)).isEqualTo(1);
    }

    private static double price(VarianceComponents components, long units) {
        return (10 + units) * (components.between() + components.within() / units);
    }

    /** Two samples of two units: (1, 3) and (6, 8). */
    @Test
    void componentsOfATableWorkedByHand() {
        VarianceComponents components =
                VarianceComponents.of(List.of(new double[] {1, 3}, new double[] {6, 8}));

        // within: both variances 2; means 2 and 7, variance 12.5, mean square 25; (25 − 2)/2
        assertThat(components.within()).isEqualTo(2);
        assertThat(components.between()).isEqualTo(11.5);
        assertThat(components.varianceOfMean(2, 2)).isEqualTo(6.25);
    }
}
