package jarwise.stats.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.filter.FilterLimits.Likely;
import jarwise.stats.filter.FilterLimits.Verdict;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FilterLimitsTest {

    private static final OptionalLong NEVER = OptionalLong.empty();

    /** None found in half the cells: the rest is geometric, P(rest ≤ u) = 1 − 2^−(u + 1). */
    @Test
    void takesTheLikeliestOfThreeVerdicts() {
        PartialReading none = PartialReading.of(0, 20, 40);

        isLikely(limits(4, 6).likely(none), Verdict.BELOW, 1.0 / 32);
        isLikely(limits(0, 5).likely(none), Verdict.BELOW, 0.5);
        isLikely(
                new FilterLimits(0, NEVER, OptionalLong.of(5)).likely(none),
                Verdict.CANNOT_TELL,
                1.0 / 32);
        isLikely(
                new FilterLimits(0, NEVER, OptionalLong.of(1)).likely(none),
                Verdict.CANNOT_TELL,
                0.5);
        isLikely(new FilterLimits(0, NEVER, OptionalLong.of(0)).likely(none), Verdict.ABOVE, 0);
        isLikely(new FilterLimits(0, NEVER, NEVER).likely(none), Verdict.CANNOT_TELL, 0);
    }

    @Test
    void aFilterReadWholeLeavesNoDoubt() {
        PartialReading whole = PartialReading.of(7, 40, 40);

        isLikely(limits(7, 9).likely(whole), Verdict.BELOW, 0);
        isLikely(limits(6, 8).likely(whole), Verdict.CANNOT_TELL, 0);
        isLikely(limits(3, 7).likely(whole), Verdict.ABOVE, 0);
    }

    @Test
    void cannotTellIsNoDecisionWhileFiltersWaitThatCould() {
        PartialReading ten = PartialReading.of(10, 10, 40);

        assertThat(limits(15, 90).likely(ten).verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(limits(15, 90).chanceOfOtherDecision(ten, 1)).isEmpty();
        assertThat(limits(15, 90).chanceOfOtherDecision(ten, 0)).isPresent();
        assertThat(limits(90, 91).chanceOfOtherDecision(ten, 3)).isPresent();
        assertThat(new FilterLimits(0, NEVER, NEVER).chanceOfOtherDecision(ten, 0)).isEmpty();
    }

    /** None found in half the cells: P(rest = 0) = 1/2. */
    @Test
    void noneAtAllMayBeLessThanOneIsForBelow() {
        PartialReading none = PartialReading.of(0, 20, 40);
        PartialReading one = PartialReading.of(1, 39, 40);
        FilterLimits fromOne = new FilterLimits(1, OptionalLong.of(9), NEVER);

        isLikely(fromOne.likely(none), Verdict.CANNOT_TELL, 0.5 - 1.0 / 1024);
        assertThat(fromOne.likely(one)).isEqualTo(limits(9, 100).likely(one));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void addsUpToWhatNumberByNumberGives(long seed) {
        Random random = new Random(seed);
        PartialReading reading = PartialReading.of(random.nextInt(12), 10 + random.nextInt(20), 40);
        long below = random.nextInt(30);
        long above = below + 1 + random.nextInt(40);

        Likely likely = limits(below, above).likely(reading);

        assertThat(likely.chanceOfOther())
                .isCloseTo(
                        StopRules.chanceOfOtherVerdict(
                                reading,
                                likely.verdict(),
                                n ->
                                        n <= below
                                                ? Verdict.BELOW
                                                : n >= above ? Verdict.ABOVE : Verdict.CANNOT_TELL),
                        within(1e-5));
        assertThat(likely.chanceOfOther()).isLessThanOrEqualTo(2.0 / 3);
    }

    @Test
    void noNumberIsBelowAndAbove() {
        assertThatThrownBy(() -> limits(5, 5)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> limits(6, 5)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FilterLimits(4, OptionalLong.of(3), NEVER))
                .isInstanceOf(InvalidInput.class);
    }

    private static FilterLimits limits(long below, long above) {
        return new FilterLimits(0, OptionalLong.of(below), OptionalLong.of(above));
    }

    private static void isLikely(Likely likely, Verdict verdict, double chanceOfOther) {
        assertThat(likely.verdict()).isEqualTo(verdict);
        assertThat(likely.chanceOfOther()).isCloseTo(chanceOfOther, within(1e-12));
    }
}
