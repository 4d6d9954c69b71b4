package jarwise.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a sequential plan takes and refuses, and what it says at the ends. */
class SequentialLimitsTest {

    private static final CountedSamples CLUMPED = new CountedSamples(0.8);

    private static WaldDesign design(double alpha, double beta) {
        return new WaldDesign(CLUMPED, 1, 2, alpha, beta, 1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 0.9, 1, 0, -0.1, 1e-13, Double.NaN})
    void aRiskIsAboveNothingAndBelowAHalf(double risk) {
        assertThatThrownBy(() -> design(risk, 0.1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> design(0.1, risk)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void theAdviceForARiskIsItsComplementWhereThatIsARisk() {
        assertThatThrownBy(() -> design(0.75, 0.1)).hasMessageContaining("Maybe 0.25");
        assertThatThrownBy(() -> design(0.5, 0.1)).hasMessageContaining("Maybe 0.5");
        assertThatThrownBy(() -> design(1, 0.1)).hasMessageContaining("Maybe 0.1");
        assertThatThrownBy(() -> design(0, 0.1)).hasMessageContaining("Maybe 0.1");
        assertThatCode(() -> design(1e-12, 0.499)).doesNotThrowAnyException();
    }

    @Test
    void theTwoClassesLieApartAndTheRightWayRound() {
        assertThatThrownBy(() -> new WaldDesign(CLUMPED, 2, 2, 0.1, 0.1, 1))
                .hasMessageContaining("wrong way round");
        PresenceAbsence presence = new PresenceAbsence();
        assertThatThrownBy(() -> new WaldDesign(presence, 0.5, 1, 0.1, 0.1, 1))
                .hasMessageContaining("per cent");
        assertThatThrownBy(() -> new WaldDesign(presence, 0.1, 0.3, 0.1, 0.1, 10))
                .hasMessageContaining("leave the units out");
        assertThatThrownBy(() -> presence.requireMean("proportion", 1.01))
                .isInstanceOf(InvalidInput.class);
        assertThat(presence.requireMean("proportion", 0)).isZero();
        assertThat(presence.requireMean("proportion", 1)).isEqualTo(1);
        assertThat(presence.variance(0.2)).isCloseTo(0.16, within(1e-15));
    }

    @Test
    void aMeanOfABillionASampleIsTheMost() {
        assertThat(CLUMPED.requireMean("density", 1e9)).isEqualTo(1e9);
        assertThatThrownBy(() -> CLUMPED.requireMean("density", 1.1e9))
                .hasMessageContaining("at most 1000000000");
        assertThat(CountedSamples.POISSON.largestArgument(2)).isInfinite();
        assertThat(CLUMPED.largestArgument(0.8)).isCloseTo(Math.log(2), within(1e-15));
    }

    @Test
    void usualDensitiesRunFromAQuarterOfTheLowClassToTwiceTheHighOne() {
        List<Double> densities = new SequentialPlan(design(0.1, 0.1), 1, 60).usualDensities();

        assertThat(densities).hasSize(41).isSorted();
        assertThat(densities.get(0)).isEqualTo(0.25);
        assertThat(densities.get(40)).isEqualTo(4);
        assertThat(densities.get(20)).isCloseTo(2.125, within(1e-12));
        assertThat(densities.get(10)).isCloseTo(0.25 + 3.75 / 4, within(1e-12));
    }

    @ParameterizedTest(name = "high class {0}: up to {1}")
    @CsvSource({"0.25, 0.5", "0.6, 0.8"})
    void usualProportionsStayBelowOne(double high, double last) {
        WaldDesign design = new WaldDesign(new PresenceAbsence(), 0.1, high, 0.1, 0.1, 1);

        assertThat(new SequentialPlan(design, 1, 60).usualDensities().get(40))
                .isCloseTo(last, within(1e-12));
    }

    @Test
    void anOutcomeKnowsWhenHowManyRoundsAreOver() {
        SequentialOutcome outcome =
                new SequentialOutcome(
                        3, new double[] {0.1, 0.2, 0.05}, new double[] {0.2, 0.1, 0.15}, 0.2);

        assertThat(outcome.probabilityOverBy(2)).isZero();
        assertThat(outcome.probabilityOverBy(3)).isCloseTo(0.3, within(1e-15));
        assertThat(outcome.probabilityOverBy(4)).isCloseTo(0.6, within(1e-15));
        assertThat(outcome.probabilityOverBy(5)).isCloseTo(1, within(1e-15));
        assertThat(outcome.probabilityOverBy(99)).isCloseTo(1, within(1e-15));
        assertThat(outcome.sampleNumberQuantile(0.3)).isEqualTo(3);
        assertThat(outcome.sampleNumberQuantile(0.31)).isEqualTo(4);
        assertThat(outcome.sampleNumberQuantile(0.999)).isEqualTo(5);
        assertThat(outcome.averageSampleNumber())
                .isCloseTo(3 * 0.3 + 4 * 0.3 + 5 * 0.4, within(1e-14));
        assertThatThrownBy(() -> outcome.sampleNumberQuantile(0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> outcome.sampleNumberQuantile(1)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void roundingNeverHidesTheLastSample() {
        SequentialOutcome outcome =
                new SequentialOutcome(1, new double[] {0.3, 0.3}, new double[] {0.1, 0.1}, 0.1);

        assertThat(outcome.sampleNumberQuantile(0.95)).isEqualTo(2);
    }

    @Test
    void atTheLinesTheStepIsTaken() {
        StopLines lines = new StopLines(1, -2, 2, 3, 6);

        assertThat(lines.step(2, 0)).isEqualTo(SequentialStep.CONTINUE);
        assertThat(lines.step(3, 1)).isEqualTo(SequentialStep.BELOW);
        assertThat(lines.step(3, 2)).isEqualTo(SequentialStep.CONTINUE);
        assertThat(lines.step(3, 5)).isEqualTo(SequentialStep.ABOVE);
        assertThat(lines.step(5, 6)).isEqualTo(SequentialStep.CONTINUE);
        assertThat(lines.step(6, 6)).isEqualTo(SequentialStep.SAMPLED_OUT);
        assertThat(lines.stopBelow(1)).isEmpty();
        assertThat(lines.stopBelow(2)).hasValue(0);
        assertThat(lines.stopAbove(2)).isEqualTo(4);
    }

    @Test
    void aLineWithinRoundingOfAWholeNumberIsThatNumber() {
        StopLines thirds = new StopLines(0.1, -0.2, 0.2, 1, 50);

        assertThat(thirds.upper(1)).isEqualTo(0.30000000000000004);
        assertThat(thirds.upper(8)).isEqualTo(1);
        assertThat(thirds.lower(12)).isEqualTo(1);
        assertThat(thirds.stopAbove(8)).isEqualTo(1);
        assertThat(thirds.stopBelow(12)).hasValue(1);
        assertThat(thirds.lower(11)).isCloseTo(0.9, within(1e-12));
    }

    @Test
    void linesOutOfReachAreRefused() {
        assertThatThrownBy(() -> new StopLines(1, -2, 2, 3, 2)).hasMessageContaining("Maybe 60");
        assertThatThrownBy(() -> new StopLines(1, -2, 2, 1, 10_001)).hasMessageContaining("10000");
        assertThatThrownBy(() -> new StopLines(1, 2, 2, 1, 10)).hasMessageContaining("above");
        assertThatThrownBy(() -> new StopLines(1, -5e5, 5e5, 1, 10)).hasMessageContaining("apart");
        assertThatThrownBy(() -> new StopLines(1, -4e5, 4e5, 300_000, 300_000))
                .isInstanceOf(InvalidInput.class);
        assertThatCode(() -> new StopLines(1, -2, 2, 3, 3)).doesNotThrowAnyException();
        assertThatCode(() -> new StopLines(1, -2, 2, 1, 10_000)).doesNotThrowAnyException();
        assertThatCode(() -> new StopLines(1, -499_999, 500_000, 1, 1)).doesNotThrowAnyException();
    }

    @Test
    void precisionLinesRefuseWhatIsNoPatchiness() {
        for (double alpha : new double[] {-1, -2, Double.POSITIVE_INFINITY, Double.NaN}) {
            assertThatThrownBy(() -> new KunoLine(alpha, 1.2, 0.25))
                    .hasMessageContaining("Iwao's alpha");
            assertThatThrownBy(() -> new IwaoBounds(2, alpha, 1.2, 1.96))
                    .hasMessageContaining("Iwao's alpha");
        }
        assertThatThrownBy(() -> new IwaoBounds(10, 0, 0.5, 1.96)).hasMessageContaining("variance");
        assertThatThrownBy(() -> new TallyThreshold(0, 0.5, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new TallyThreshold(1_000_001, 0.5, 1))
                .isInstanceOf(InvalidInput.class);
        assertThatCode(() -> new TallyThreshold(1_000_000, 0.5, 1)).doesNotThrowAnyException();
    }

    @Test
    void linesThatDoNotExistAreEmpty() {
        KunoLine line = new KunoLine(0.5, 1.25, 0.25);

        assertThat(line.sampleSizeWithoutLine()).isEqualTo(4);
        assertThat(line.cumulativeCount(4)).isEmpty();
        assertThat(line.cumulativeCount(5).orElseThrow())
                .isCloseTo(1.5 / (0.0625 - 0.25 / 5), within(1e-9));
        assertThat(new GreenLine(2, 1.5, 0.25).stopsAtOrOver()).isTrue();
        assertThat(new GreenLine(2, 2.5, 0.25).stopsAtOrOver()).isFalse();
        assertThat(new GreenLine(2, 2, 0.25).stopsAtOrOver()).isFalse();
        assertThat(new GreenLine(2, 2, 0.25).cumulativeCount(5)).isEmpty();
    }

    /** Wald's own values: 1 − alpha and beta at the two classes, and equal risks between them. */
    @ParameterizedTest(name = "alpha {0}, beta {1}")
    @CsvSource({"0.1, 0.1", "0.05, 0.2", "0.2, 0.01"})
    void waldApproximationMeetsItsRisks(double alpha, double beta) {
        for (SampleModel model : List.of(CLUMPED, CountedSamples.POISSON)) {
            WaldDesign design = new WaldDesign(model, 1, 2, alpha, beta, 1);
            assertThat(WaldApproximation.of(design, model, 1).probabilityBelow())
                    .isCloseTo(1 - alpha, within(1e-9));
            assertThat(WaldApproximation.of(design, model, 2).probabilityBelow())
                    .isCloseTo(beta, within(1e-9));
        }
    }

    @Test
    void waldApproximationIsContinuousWhereTheMeanMeetsTheSlope() {
        WaldDesign design = design(0.1, 0.2);
        double slope = design.slope();
        WaldApproximation at = WaldApproximation.of(design, CLUMPED, slope);
        WaldApproximation near = WaldApproximation.of(design, CLUMPED, slope * (1 + 1e-5));

        assertThat(near.probabilityBelow()).isCloseTo(at.probabilityBelow(), within(1e-4));
        assertThat(near.averageSampleNumber()).isCloseTo(at.averageSampleNumber(), within(1e-2));
    }

    @Test
    void whereEverySampleIsTheSameTheLineAheadIsReachedForCertain() {
        WaldDesign design = new WaldDesign(new PresenceAbsence(), 0.1, 0.25, 0.1, 0.1, 1);
        WaldApproximation never = WaldApproximation.of(design, new PresenceAbsence(), 0);
        WaldApproximation always = WaldApproximation.of(design, new PresenceAbsence(), 1);

        assertThat(never.probabilityBelow()).isEqualTo(1);
        assertThat(never.averageSampleNumber())
                .isCloseTo(design.lowerIntercept() / -design.slope(), within(1e-12));
        assertThat(always.probabilityBelow()).isZero();
        assertThat(always.averageSampleNumber())
                .isCloseTo(design.upperIntercept() / (1 - design.slope()), within(1e-12));
    }
}
