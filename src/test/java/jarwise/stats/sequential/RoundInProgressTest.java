package jarwise.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.NegativeBinomial;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoundInProgressTest {

    private static final WaldDesign DESIGN =
            new WaldDesign(new CountedSamples(0.8), 0.1, 0.2, 0.1, 0.1, 10);
    private static final SequentialPlan PLAN = new SequentialPlan(DESIGN, 2, 60);

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void samplesAsPlannedAreDecidedAsByTheLines(long seed) {
        Random random = new Random(seed);
        List<Observation> samples = new ArrayList<>();
        long count = 0;
        for (int n = 1; n <= 60; n++) {
            int found = random.nextInt(4);
            count += found;
            samples.add(Observation.of(found, 10));

            assertThat(new RoundInProgress(PLAN, samples).decision())
                    .isEqualTo(PLAN.lines().step(n, count));
        }
    }

    @Test
    void theRatioIsThatOfTheProbabilitiesOfEachSampleAsItIs() {
        List<Observation> samples =
                List.of(
                        new Observation(3, 8, 1),
                        new Observation(0, 12, 0.5),
                        new Observation(7, 10, 0.25));
        double expected = 0;
        for (Observation sample : samples) {
            double exposure = sample.exposure();
            expected +=
                    new NegativeBinomial(0.2 * exposure, 0.8).logProbability(sample.individuals())
                            - new NegativeBinomial(0.1 * exposure, 0.8)
                                    .logProbability(sample.individuals());
        }

        assertThat(new RoundInProgress(PLAN, samples).logLikelihoodRatio())
                .isCloseTo(expected, within(1e-12));
    }

    @Test
    void theChanceToSettleWithTheNextSampleIsThatOfReachingALine() {
        List<Observation> samples = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            samples.add(Observation.of(1, 10));
        }
        RoundInProgress round = new RoundInProgress(PLAN, samples);
        long stopAbove = PLAN.lines().stopAbove(11);
        long stopBelow = PLAN.lines().stopBelow(11).orElseThrow();
        NegativeBinomial next = new NegativeBinomial(1.5, 0.8);

        assertThat(stopBelow).isLessThan(10);
        assertThat(round.chanceToSettle(1, 0.15))
                .isCloseTo(next.exceedanceProbability(stopAbove - 11), within(1e-12));
    }

    @Test
    void theChanceToSettleRisesWithSamplesUpToThePlansEnd() {
        RoundInProgress round =
                new RoundInProgress(PLAN, List.of(Observation.of(4, 8), Observation.of(2, 13)));
        double before = 0;
        for (int next = 1; next <= 58; next++) {
            double chance = round.chanceToSettle(next, 0.15);
            assertThat(chance).isGreaterThanOrEqualTo(before - 1e-13);
            before = chance;
        }
        assertThat(round.chanceToSettle(500, 0.15)).isEqualTo(before);
    }

    @Test
    void aRoundNotBegunLooksAheadAsThePlanDoes() {
        RoundInProgress round = new RoundInProgress(PLAN, List.of());

        assertThat(round.ahead(60, 0.15).probabilityBelow())
                .isCloseTo(PLAN.outcome(0.15).probabilityBelow(), within(1e-12));
        assertThat(round.ahead(60, 0.15).averageSampleNumber())
                .isCloseTo(PLAN.outcome(0.15).averageSampleNumber(), within(1e-11));
        assertThat(round.chanceToSettle(1, 0.15)).isZero();
    }

    @Test
    void aRoundThatIsDecidedStaysDecided() {
        RoundInProgress round =
                new RoundInProgress(PLAN, List.of(Observation.of(60, 8), Observation.of(20, 13)));

        assertThat(round.decision()).isEqualTo(SequentialStep.ABOVE);
        assertThat(round.ahead(3, 0.01).probabilityAbove()).isEqualTo(1);
    }

    @Test
    void aRoundIsNoLongerThanItsPlan() {
        SequentialPlan two = new SequentialPlan(DESIGN, 1, 2);
        List<Observation> samples = List.of(Observation.of(1, 10), Observation.of(2, 10));

        assertThat(new RoundInProgress(two, samples).decision())
                .isEqualTo(SequentialStep.SAMPLED_OUT);
        assertThat(new RoundInProgress(two, samples).chanceToSettle(3, 0.15)).isZero();
        List<Observation> three = new ArrayList<>(samples);
        three.add(Observation.of(0, 10));
        assertThatThrownBy(() -> new RoundInProgress(two, three))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("ends after 2");
    }

    @Test
    void infestedSamplesOfAPresencePlanAreOnes() {
        SequentialPlan plan =
                new SequentialPlan(
                        new WaldDesign(new PresenceAbsence(), 0.25, 0.75, 0.1, 0.1, 1), 1, 20);
        // the lines are n/2 ± 1 exactly, and a total on a line stops
        assertThat(plan.lines().stopBelow(2)).hasValue(0);
        assertThat(plan.lines().stopAbove(2)).isEqualTo(2);
        assertThat(
                        new RoundInProgress(
                                        plan, List.of(Observation.of(1, 1), Observation.of(1, 1)))
                                .decision())
                .isEqualTo(SequentialStep.ABOVE);
        assertThatThrownBy(() -> new RoundInProgress(plan, List.of(Observation.of(2, 1))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("tally threshold");
    }
}
