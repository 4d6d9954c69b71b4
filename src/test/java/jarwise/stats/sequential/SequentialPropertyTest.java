package jarwise.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("slow")
class SequentialPropertyTest {

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void chancesAddUpAndNumbersLieWithinThePlan(long seed) {
        Random random = new Random(seed);
        SequentialPlan plan = SomePlans.plan(random);
        double density = SomePlans.density(random, plan);
        SequentialOutcome outcome = plan.outcome(density);

        double all = outcome.probabilitySettled() + outcome.probabilityUndecided();
        assertThat(all).isCloseTo(1, within(1e-12));
        assertThat(outcome.averageSampleNumber())
                .isBetween(plan.minSamples() - 1e-9, plan.maxSamples() + 1e-9);
        for (double share : new double[] {0.01, 0.5, 0.9, 0.999}) {
            int n = outcome.sampleNumberQuantile(share);
            assertThat(outcome.probabilityOverBy(n)).isGreaterThanOrEqualTo(share - 1e-12);
            assertThat(outcome.probabilityOverBy(n - 1)).isLessThan(share);
        }
        assertThat(outcome.probabilityOverBy(plan.minSamples() - 1)).isZero();
        assertThat(outcome.probabilityOverBy(plan.maxSamples())).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void equalsTheRecursionBackFromTheEnd(long seed) {
        Random random = new Random(seed);
        SequentialPlan plan = SomePlans.plan(random);
        double density = SomePlans.density(random, plan);
        SequentialOutcome outcome = plan.outcome(density);
        double[] expected = BackwardRecursion.outcome(plan, density);

        assertThat(outcome.probabilityBelow()).isCloseTo(expected[0], within(1e-12));
        assertThat(outcome.probabilityUndecided()).isCloseTo(expected[1], within(1e-12));
        assertThat(outcome.averageSampleNumber()).isCloseTo(expected[2], within(1e-11));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void theCurveFallsFromOne(long seed) {
        SequentialPlan drawn = SomePlans.plan(new Random(seed));
        SequentialPlan plan = new SequentialPlan(drawn.design(), drawn.minSamples(), 400);
        boolean canStopBelow = plan.lines().stopBelow(400).isPresent();

        double before = plan.outcome(0).probabilityBelow();
        assertThat(before).isEqualTo(canStopBelow ? 1 : 0);
        for (double density : plan.usualDensities()) {
            double below = plan.outcome(density).probabilityBelow();
            assertThat(below).isLessThanOrEqualTo(before + 1e-13);
            before = below;
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void waldsApproximationKeepsTheWantedRisks(long seed) {
        WaldDesign design = SomePlans.plan(new Random(seed)).design();
        double low =
                WaldApproximation.of(design, design.model(), design.lowerMean()).probabilityBelow();
        double high =
                WaldApproximation.of(design, design.model(), design.upperMean()).probabilityBelow();

        assertThat(low).isCloseTo(1 - design.alpha(), within(1e-10));
        assertThat(high).isCloseTo(design.beta(), within(1e-10));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void waldsApproximationHasNoJumpWhereTheMeanIsTheSlope(long seed) {
        WaldDesign design = SomePlans.plan(new Random(seed)).design();
        WaldApproximation at = WaldApproximation.of(design, design.model(), design.slope());
        for (double near : new double[] {1 - 1e-6, 1 + 1e-6, 1 - 1e-10, 1 + 1e-10}) {
            WaldApproximation close =
                    WaldApproximation.of(design, design.model(), design.slope() * near);

            assertThat(close.probabilityBelow()).isCloseTo(at.probabilityBelow(), within(1e-3));
            assertThat(close.averageSampleNumber() / at.averageSampleNumber())
                    .isCloseTo(1, within(1e-3));
        }
    }

    @ParameterizedTest(name = "density {0}")
    @ValueSource(doubles = {0.5, 1, 1.4, 2, 3})
    void largeKIsPoisson(double density) {
        SequentialPlan poisson = SomePlans.plan(CountedSamples.POISSON);
        SequentialPlan large = SomePlans.plan(new CountedSamples(1e6));

        assertThat(large.lines().slope()).isCloseTo(poisson.lines().slope(), within(1e-5));
        assertThat(large.outcome(density).averageSampleNumber())
                .isCloseTo(poisson.outcome(density).averageSampleNumber(), within(1e-4));
        assertThat(large.waldApproximation(density, large.design().model()).probabilityBelow())
                .isCloseTo(
                        poisson.waldApproximation(density, poisson.design().model())
                                .probabilityBelow(),
                        within(1e-4));
    }

    @ParameterizedTest(name = "density {0}")
    @ValueSource(doubles = {0, 0.7, 1.4, 2.5})
    void samplesOfThePlannedUnitsAreThePlan(double density) {
        SequentialPlan plan =
                new SequentialPlan(
                        new WaldDesign(new CountedSamples(0.7), 0.2, 0.5, 0.1, 0.1, 10), 3, 30);
        SampleModel truth = new CountedSamples(0.5);
        SequentialOutcome planned = plan.outcome(density, truth);
        SequentialOutcome told = plan.outcome(density, truth, Collections.nCopies(30, 10.0));

        assertThat(told.probabilityBelow()).isEqualTo(planned.probabilityBelow());
        assertThat(told.averageSampleNumber()).isEqualTo(planned.averageSampleNumber());
    }

    @Test
    void otherUnitsGiveTheOutcomeThatSimulationGives() {
        SequentialPlan plan =
                new SequentialPlan(
                        new WaldDesign(new CountedSamples(0.7), 0.2, 0.5, 0.1, 0.1, 10), 2, 25);
        List<Double> units = new ArrayList<>(List.of(6.0, 14.0, 9.0, 10.0, 4.0, 12.0));
        int runs = 20_000;
        SeededRandom random = new SeededRandom(20260504);
        double below = 0;
        double samples = 0;
        for (int run = 0; run < runs; run++) {
            int n = 0;
            long count = 0;
            SequentialStep step = SequentialStep.CONTINUE;
            while (step == SequentialStep.CONTINUE) {
                n++;
                double held = n <= units.size() ? units.get(n - 1) : 10;
                count += random.count(new NegativeBinomial(0.3 * held, 0.5));
                step = plan.lines().step(n, count);
            }
            below += step == SequentialStep.BELOW ? 1.0 / runs : 0;
            samples += (double) n / runs;
        }
        SequentialOutcome outcome = plan.outcome(0.3, new CountedSamples(0.5), units);

        // four Monte Carlo errors
        assertThat(below).isCloseTo(outcome.probabilityBelow(), within(4 * 0.5 / Math.sqrt(runs)));
        assertThat(samples)
                .isCloseTo(
                        outcome.averageSampleNumber(),
                        within(4 * outcome.standardDeviation() / Math.sqrt(runs)));
    }
}
