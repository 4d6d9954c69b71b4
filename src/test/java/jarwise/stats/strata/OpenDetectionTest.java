package jarwise.stats.strata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.Samples;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.DensityInterval;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A measured share opens the interval by its own error, in logarithms. */
class OpenDetectionTest {

    /** Quantile of the normal distribution at 0.975, from tables. */
    private static final double Z = 1.959964;

    private static final DensityEstimator STANDARD = DensityEstimator.standard();
    private static final Detection MEASURED =
            new Detection(DetectionShare.measured(18, 24), DetectionShare.known(1));
    private static final List<Observation> FOUND = Samples.list("4/10 9/10 0/10 15/10 3/10 7/10");
    private static final List<Observation> NONE = Samples.list("0/10x8");

    private static StratifiedDensity of(DensityEstimator estimator, List<Observation> second) {
        return StratifiedDensity.of(
                estimator,
                List.of(new Stratum("north", 5000, FOUND), new Stratum("south", 5000, second)));
    }

    @Test
    void theErrorOfAShareIsAddedInLogarithms() {
        DensityInterval counted = of(STANDARD, FOUND).interval();
        DensityInterval open = of(STANDARD.withDetection(MEASURED), FOUND).interval();
        double mean = MEASURED.mean();
        double own = Math.log(counted.upper().orElseThrow() / counted.estimate());
        double whole = Math.log(open.upper().orElseThrow() / open.estimate());
        double below = Math.log(counted.estimate() / counted.lower());
        double wholeBelow = Math.log(open.estimate() / open.lower());

        assertThat(open.estimate()).isCloseTo(counted.estimate() / mean, within(1e-12));
        assertThat(whole * whole - own * own)
                .isCloseTo(Z * Z * MEASURED.varianceOfLog(), within(1e-6));
        assertThat(wholeBelow * wholeBelow - below * below)
                .isCloseTo(Z * Z * MEASURED.varianceOfLog(), within(1e-6));
    }

    @Test
    void theBoundOfNothingFoundIsOpenedAsFar() {
        List<Stratum> empty = List.of(new Stratum("all", 10_000, NONE));
        double counted = StratifiedDensity.of(STANDARD, empty).interval().upper().orElseThrow();
        DensityInterval open =
                StratifiedDensity.of(STANDARD.withDetection(MEASURED), empty).interval();

        assertThat(open.upper().orElseThrow())
                .isCloseTo(
                        counted
                                / MEASURED.mean()
                                * Math.exp(Z * Math.sqrt(MEASURED.varianceOfLog())),
                        within(1e-6));
        assertThat(open.lower()).isZero();
        assertThat(open.standardError()).isEmpty();
    }

    /** Beside a find, an empty stratum has half of the risk on its one side, like the find's. */
    @Test
    void anEmptyStratumBesideAFindIsBoundedOnOneSideOfTwo() {
        DensityInterval mixed = of(STANDARD, NONE).interval();
        double found = STANDARD.estimate(FOUND).upper().orElseThrow();
        double estimate = STANDARD.estimate(FOUND).estimate();
        double none = STANDARD.withConfidenceLevel(0.975).estimate(NONE).upper().orElseThrow();
        double north = 0.5 * Math.sqrt(1 - 60.0 / 5000) * (found - estimate);
        double south = 0.5 * Math.sqrt(1 - 80.0 / 5000) * none;

        assertThat(mixed.upper().orElseThrow())
                .isCloseTo(0.5 * estimate + Math.hypot(north, south), within(1e-9));
    }

    @Test
    void aWarningNamesItsStratum() {
        StratifiedDensity one =
                StratifiedDensity.of(
                        STANDARD,
                        List.of(
                                new Stratum("north", 5000, FOUND),
                                new Stratum("south", 50, Samples.list("3/10"))));

        List<String> ofSouth = STANDARD.estimate(Samples.list("3/10")).warnings();
        assertThat(ofSouth).isNotEmpty();
        assertThat(one.warnings()).contains("south: " + ofSouth.get(0));
    }
}
