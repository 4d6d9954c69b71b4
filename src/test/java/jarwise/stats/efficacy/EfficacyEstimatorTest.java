package jarwise.stats.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.Samples;
import jarwise.stats.count.Observation;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("slow")
class EfficacyEstimatorTest {

    private static final EfficacyEstimator CALIBRATED = EfficacyEstimator.standard();
    private static final EfficacyEstimator PROFILE =
            CALIBRATED.withInterval(EfficacyInterval.PROFILE);
    private static final List<Observation> SOME = Samples.list("4/10 9/8 0/7 3/10 6/12 1/9");
    private static final List<Observation> NONE = Samples.list("0/10x6");

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 6);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theIntervalHoldsTheEstimateAndItsLimitsAreInOrder(long seed) {
        EfficacyTrial trial = Trials.drawn(seed);
        for (EfficacyEstimator estimator : List.of(CALIBRATED, PROFILE)) {
            EfficacyEstimate narrow = estimator.withConfidenceLevel(0.01).estimate(trial);
            EfficacyEstimate wide = estimator.estimate(trial);
            double efficacy = wide.efficacy().orElseThrow();

            assertThat(narrow.lower().orElseThrow()).isLessThanOrEqualTo(efficacy);
            assertThat(narrow.upper().orElseThrow()).isGreaterThanOrEqualTo(efficacy);
            assertThat(wide.lower().orElseThrow()).isLessThan(narrow.lower().orElseThrow());
            assertThat(wide.upper().orElseThrow()).isBetween(narrow.upper().orElseThrow(), 1.0);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void changingTheArmsTurnsTheInteractionRound(long seed) {
        EfficacyTrial trial = Trials.drawn(seed);
        EfficacyEstimate plain = PROFILE.estimate(trial);
        EfficacyEstimate turned =
                PROFILE.estimate(
                        new EfficacyTrial(
                                /* treated= */ trial.check(), /* check= */ trial.treated()));

        double interaction = plain.interaction().orElseThrow();
        assertThat(turned.interaction().orElseThrow()).isCloseTo(-interaction, within(1e-7));
        assertThat(turned.pValue().orElseThrow())
                .isCloseTo(plain.pValue().orElseThrow(), within(1e-7));
        assertThat(Math.log(1 - turned.lower().orElseThrow()))
                .isCloseTo(-Math.log(1 - plain.upper().orElseThrow()), within(1e-6));
    }

    /** The likelihood ratio test and the profile limits are two views of one curve. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void thePValueIsTheLevelAtWhichTheProfileEndsAtNoEffect(long seed) {
        EfficacyTrial trial = Trials.drawn(seed);
        double level = 1 - PROFILE.estimate(trial).pValue().orElseThrow();
        EfficacyEstimate estimate = PROFILE.withConfidenceLevel(level).estimate(trial);

        boolean killed = estimate.efficacy().orElseThrow() > 0;
        OptionalDouble end = killed ? estimate.lower() : estimate.upper();
        assertThat(end.orElseThrow()).isCloseTo(0, within(1e-5));
    }

    @Test
    void noneTreatedAfterHasALowerLimitOnly() {
        EfficacyEstimate estimate = CALIBRATED.estimate(EfficacyTrial.of(SOME, NONE, SOME, SOME));

        assertThat(estimate.efficacy()).hasValue(1);
        assertThat(estimate.upper()).hasValue(1);
        assertThat(estimate.lower().orElseThrow()).isBetween(0.8, 0.999);
        assertThat(estimate.interaction()).isEmpty();
        assertThat(estimate.standardError()).isEmpty();
        assertThat(estimate.pValue().orElseThrow()).isLessThan(0.05);
        assertThat(estimate.verdict()).isEqualTo(EfficacyVerdict.WORKED);
    }

    @Test
    void noneOnTheCheckAfterIsNoEfficacy() {
        EfficacyEstimate estimate = CALIBRATED.estimate(EfficacyTrial.of(SOME, SOME, SOME, NONE));

        assertThat(estimate.efficacy()).isEmpty();
        assertThat(estimate.lower()).isEmpty();
        assertThat(estimate.upper().orElseThrow()).isLessThan(0.8);
        assertThat(estimate.abbott()).isEmpty();
        assertThat(estimate.hendersonTilton()).isEmpty();
        assertThat(estimate.verdict()).isEqualTo(EfficacyVerdict.FAILED);
        assertThat(estimate.warnings()).anyMatch(w -> w.contains("went away by themselves"));
    }

    @Test
    void anEmptyGroupBeforeOrBothAfterCannotTell() {
        for (EfficacyTrial trial :
                List.of(
                        EfficacyTrial.of(NONE, SOME, SOME, SOME),
                        EfficacyTrial.of(SOME, SOME, NONE, SOME),
                        EfficacyTrial.of(NONE, NONE, SOME, SOME),
                        EfficacyTrial.of(SOME, NONE, SOME, NONE),
                        EfficacyTrial.of(NONE, NONE, NONE, NONE))) {
            EfficacyEstimate estimate = CALIBRATED.estimate(trial);

            assertThat(estimate.efficacy()).isEmpty();
            assertThat(estimate.lower()).isEmpty();
            assertThat(estimate.upper()).isEmpty();
            assertThat(estimate.verdict()).isEqualTo(EfficacyVerdict.CANNOT_TELL);
            assertThat(estimate.warnings()).isNotEmpty();
        }
    }

    @Test
    void negativeEfficacyIsKept() {
        List<Observation> many = Samples.list("40/10 90/8 20/7 30/10 60/12 10/9");

        EfficacyEstimate estimate = CALIBRATED.estimate(EfficacyTrial.of(SOME, many, SOME, SOME));

        assertThat(estimate.efficacy().orElseThrow()).isBetween(-15.0, -8.0);
        assertThat(estimate.verdict()).isEqualTo(EfficacyVerdict.FAILED);
    }

    @Test
    void saysWhenTheCheckIsNearlyEmptyOrWasNotComparable() {
        List<Observation> few = Samples.list("1/10 0/8x5");
        List<Observation> many = Samples.list("44/10 49/8 30/7 33/10 36/12 41/9");

        assertThat(CALIBRATED.estimate(EfficacyTrial.of(SOME, SOME, SOME, few)).warnings())
                .anyMatch(w -> w.startsWith("The check is nearly empty (1 counted after)"));
        assertThat(CALIBRATED.estimate(EfficacyTrial.of(many, SOME, SOME, SOME)).warnings())
                .anyMatch(w -> w.contains("not comparable before the treatment"));
        assertThat(CALIBRATED.estimate(EfficacyTrial.of(SOME, SOME, SOME, SOME)).warnings())
                .containsExactly(EfficacyWarnings.ONE_BENCH);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "0.8, 0.9, WORKED",
                "0.79, 0.9, PARTLY",
                "0.1, 0.79, FAILED",
                "0, 0.9, CANNOT_TELL",
                "-1, 0.8, CANNOT_TELL",
                "-1, 0.2, FAILED",
                "-, 0.2, FAILED",
                "-, 0.9, CANNOT_TELL",
                "0.9, -, WORKED",
                "0.1, -, PARTLY",
                "-, -, CANNOT_TELL"
            })
    void theVerdictFollowsTheLimits(
            @Nullable Double lower, @Nullable Double upper, EfficacyVerdict verdict) {
        assertThat(EfficacyVerdict.of(optional(lower), optional(upper), 0.8)).isEqualTo(verdict);
    }

    private static OptionalDouble optional(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    @Test
    void impossibleOptionsAreRefused() {
        assertThatThrownBy(() -> CALIBRATED.withTarget(1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> CALIBRATED.withTarget(Double.NaN))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> CALIBRATED.withConfidenceLevel(1))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> EfficacyTrial.of(SOME, List.of(), SOME, SOME))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("treated after");
    }
}
