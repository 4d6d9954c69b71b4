package jarwise.stats.strata;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.Samples;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.DensityInterval;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import java.util.List;
import org.junit.jupiter.api.Test;

class StratifiedDensityTest {

    private static final DensityEstimator STANDARD = DensityEstimator.standard();
    private static final List<Observation> CLEAN = Samples.list("0/10x6 1/10 2/10");
    private static final List<Observation> DIRTY = Samples.list("4/10 9/10 0/10 15/10 3/10 7/10");

    @Test
    void weighsStrataByTheGrowingPointsThatStandInThem() {
        StratifiedDensity crop =
                StratifiedDensity.of(
                        STANDARD,
                        List.of(
                                new Stratum("north", 9000, CLEAN),
                                new Stratum("south", 1000, DIRTY)));

        double expected = 0.9 * 3 / 80 + 0.1 * 38 / 60;
        assertThat(crop.interval().estimate()).isCloseTo(expected, within(1e-12));
        assertThat(crop.interval().lower()).isPositive().isLessThan(expected);
        assertThat(crop.interval().upper().orElseThrow()).isGreaterThan(expected);
        assertThat(crop.strata()).hasSize(2);
        assertThat(crop.strata().get(0)).isEqualTo(STANDARD.estimate(CLEAN));
    }

    @Test
    void oneHugeStratumIsThePlainEstimate() {
        DensityEstimate plain = STANDARD.estimate(DIRTY);
        DensityInterval crop =
                StratifiedDensity.of(STANDARD, List.of(new Stratum("all", 1e12, DIRTY))).interval();

        assertThat(crop.estimate()).isCloseTo(plain.estimate(), within(1e-9));
        assertThat(crop.lower()).isCloseTo(plain.lower(), within(1e-9));
        assertThat(crop.upper().orElseThrow()).isCloseTo(plain.upper().orElseThrow(), within(1e-8));
        assertThat(crop.standardError().orElseThrow())
                .isCloseTo(plain.standardError().orElseThrow(), within(1e-9));
    }

    @Test
    void nothingIsUncertainWhereEveryPlantWasWashed() {
        DensityInterval crop =
                StratifiedDensity.of(STANDARD, List.of(new Stratum("all", 60, DIRTY))).interval();

        assertThat(crop.lower()).isCloseTo(38.0 / 60, within(1e-12));
        assertThat(crop.upper().orElseThrow()).isCloseTo(38.0 / 60, within(1e-12));
        assertThat(crop.standardError().orElseThrow()).isZero();
    }

    @Test
    void strataWithoutAFindStillLeaveSomethingOpen() {
        DensityEstimator known = STANDARD.withGivenK(0.5);
        List<Observation> empty = Samples.list("0/10x8");
        DensityInterval crop =
                StratifiedDensity.of(
                                known,
                                List.of(
                                        new Stratum("north", 1e9, empty),
                                        new Stratum("south", 1e9, empty)))
                        .interval();

        double one = known.estimate(empty).upper().orElseThrow();
        assertThat(crop.estimate()).isZero();
        assertThat(crop.lower()).isZero();
        assertThat(crop.standardError()).isEmpty();
        assertThat(crop.upper().orElseThrow()).isCloseTo(one / Math.sqrt(2), within(1e-6));
    }

    @Test
    void efficiencyIsCommonToAllStrata() {
        List<Stratum> strata =
                List.of(new Stratum("north", 9000, CLEAN), new Stratum("south", 1000, DIRTY));
        DensityInterval counted = StratifiedDensity.of(STANDARD, strata).interval();
        Detection known = new Detection(DetectionShare.known(0.5), DetectionShare.known(1));
        Detection measured = new Detection(DetectionShare.measured(5, 10), DetectionShare.known(1));

        DensityInterval halved =
                StratifiedDensity.of(STANDARD.withDetection(known), strata).interval();
        DensityInterval open =
                StratifiedDensity.of(STANDARD.withDetection(measured), strata).interval();

        assertThat(halved.estimate()).isCloseTo(2 * counted.estimate(), within(1e-12));
        assertThat(halved.upper().orElseThrow())
                .isCloseTo(2 * counted.upper().orElseThrow(), within(1e-9));
        assertThat(open.upper().orElseThrow()).isGreaterThan(halved.upper().orElseThrow());
        assertThat(open.lower()).isLessThan(halved.lower());
    }

    /**
     * 400 crops of two strata; a true coverage of 93 % would give fewer than 360 with chance 1 %.
     */
    @Test
    void coversTheMeanOfTheCrop() {
        SeededRandom random = new SeededRandom(20260413);
        int covered = 0;
        for (int i = 0; i < 400; i++) {
            DensityInterval crop =
                    StratifiedDensity.of(
                                    STANDARD,
                                    List.of(
                                            drawn("north", 3000, random, 8, 1.5),
                                            drawn("south", 1000, random, 6, 6)))
                            .interval();
            double truth = 0.75 * 0.15 + 0.25 * 0.6;
            covered +=
                    crop.lower() <= truth && truth <= crop.upper().orElse(Double.MAX_VALUE) ? 1 : 0;
        }

        assertThat(covered).isGreaterThanOrEqualTo(360);
    }

    private static Stratum drawn(
            String name, double standing, SeededRandom random, int jars, double meanPerJar) {
        return new Stratum(
                name,
                standing,
                Samples.drawn(random, jars, 10, new NegativeBinomial(meanPerJar, 1)));
    }

    @Test
    void refusesMoreSampledThanStands() {
        assertThatThrownBy(() -> new Stratum("north", 50, DIRTY))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("60.0 sampled");
        assertThatThrownBy(() -> new Stratum("north", 50, List.of()))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> StratifiedDensity.of(STANDARD, List.of()))
                .isInstanceOf(InvalidInput.class);
    }
}
