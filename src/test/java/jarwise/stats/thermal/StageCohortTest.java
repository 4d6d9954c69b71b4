package jarwise.stats.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import java.util.List;
import java.util.Random;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StageCohortTest {

    private static final StageDelay EGG = StageDelay.of(new ThermalConstants(9.5, 42));
    private static final StageDelay LARVA = new StageDelay(new ThermalConstants(8, 70), 5);
    private static final List<StageDelay> STAGES = List.of(EGG, LARVA);

    static List<ReferenceTable.Row> constantTemperatures() {
        return ReferenceTable.read("thermal/durations.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("constantTemperatures")
    void meanTimeInConstantTemperatureIsThatOfTheLinearModel(ReferenceTable.Row row) {
        StageDelay stage = StageDelay.of(new ThermalConstants(row.number("t0"), row.number("k")));
        double degrees = row.number("celsius") - row.number("t0");
        double expected = stage.constants().days(row.number("celsius")).orElseThrow();
        double step = 0.002 * expected;
        StageCohort cohort = StageCohort.of(List.of(stage)).entering(0, 1);
        double mean = 0;
        while (cohort.inStage(0) > 1e-12) {
            mean += cohort.inStage(0) * step;
            cohort = cohort.after(degrees * step);
        }

        assertThat(mean).isCloseTo(expected, within(1e-8 * expected));
    }

    @Test
    void meanTimeOfALaterStageIsThatOfTheLinearModelToo() {
        StageCohort cohort = StageCohort.of(STAGES).entering(0, 1);
        double step = 0.01;
        double mean = 0;
        for (int i = 0; i < 10_000; i++) {
            mean += cohort.inStage(1) * step;
            cohort = cohort.after((20 - 9.5) * step, (20 - 8) * step);
        }

        assertThat(mean).isCloseTo(70.0 / 12, within(1e-6));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void timesAreSpreadAsAnErlangDistribution(long seed) {
        Random random = new Random(seed);
        StageDelay stage = new StageDelay(new ThermalConstants(10, 80), 1 + random.nextInt(30));
        double warmth = 160 * random.nextDouble();
        GammaDistribution erlang = new GammaDistribution(stage.shape(), 80.0 / stage.shape());

        assertThat(StageCohort.of(List.of(stage)).entering(0, 1).after(warmth).grown())
                .isCloseTo(erlang.cumulativeProbability(warmth), within(0.02));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void nobodyIsLostOrAdded(long seed) {
        Random random = new Random(seed);
        double eggs = 1000 * random.nextDouble();
        double larvae = 1000 * random.nextDouble();
        StageCohort cohort = StageCohort.of(STAGES).ofAllAges(0, eggs).entering(1, larvae);
        for (int day = 0; day < 30; day++) {
            double grown = cohort.grown();
            cohort = cohort.after(25 * random.nextDouble(), 25 * random.nextDouble());

            assertThat(cohort.inStage(0) + cohort.inStage(1) + cohort.grown())
                    .isCloseTo(eggs + larvae, within(1e-9 * (eggs + larvae)));
            assertThat(cohort.inStage(0)).isNotNegative();
            assertThat(cohort.inStage(1)).isNotNegative();
            assertThat(cohort.grown()).isGreaterThanOrEqualTo(grown);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void moreWarmthBringsNobodyBack(long seed) {
        Random random = new Random(seed);
        StageCohort cohort = StageCohort.of(STAGES).ofAllAges(0, 10).ofAllAges(1, 5);
        double warmth = 60 * random.nextDouble();
        StageCohort cooler = cohort.after(warmth, warmth);
        StageCohort warmer = cohort.after(warmth + 5, warmth + 5);

        assertThat(warmer.inStage(0)).isLessThan(cooler.inStage(0));
        assertThat(warmer.grown()).isGreaterThan(cooler.grown());
    }

    @Test
    void staysAsItIsWithoutWarmthAndKeepsTheCohortItCameFrom() {
        StageCohort cohort = StageCohort.of(STAGES).ofAllAges(0, 10);
        cohort.after(20, 20);

        assertThat(cohort.inStage(0)).isCloseTo(10, within(1e-12));
        assertThat(cohort.after(0, 0).inStage(0)).isEqualTo(cohort.inStage(0));
        assertThat(cohort.after(7, 9).grown()).isEqualTo(cohort.after(7, 9).grown());
    }

    @Test
    void standardShapeSpreadsAQuarterOfTheMean() {
        assertThat(EGG.shape()).isEqualTo(16).isEqualTo(StageDelay.shapeOf(10, 2.5));
        assertThat(StageDelay.shapeOf(10, 100)).isEqualTo(1);
        assertThat(StageDelay.shapeOf(10, 1e-9)).isEqualTo(1000);
    }

    @Test
    void refusesWhatCannotBe() {
        StageCohort cohort = StageCohort.of(STAGES);

        assertThatThrownBy(() -> StageCohort.of(List.of())).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> cohort.after(1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> cohort.after(1, -1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> cohort.after(1, Double.NaN)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> cohort.ofAllAges(0, -1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> cohort.entering(0, Double.NaN)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new StageDelay(EGG.constants(), 0))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new StageDelay(EGG.constants(), 1001))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> StageDelay.shapeOf(10, 0)).isInstanceOf(InvalidInput.class);
    }
}
