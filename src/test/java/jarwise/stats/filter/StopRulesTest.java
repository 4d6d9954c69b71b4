package jarwise.stats.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StopRulesTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final StopRules DENSITY =
            new StopRules(false, OptionalDouble.of(0.25), OptionalDouble.of(20));

    /** None found in half the cells: the rest is geometric, P(rest ≤ u) = 1 − 2^−(u + 1). */
    @Test
    void chanceOfAnotherVerdictIsThatOfTheRest() {
        PartialReading none = PartialReading.of(0, 20, 40);

        assertThat(StopRules.chanceOfOtherVerdict(none, "below", n -> n < 5 ? "below" : "above"))
                .isCloseTo(1.0 / 32, within(1e-6));
        assertThat(StopRules.chanceOfOtherVerdict(none, "below", n -> n < 3 ? "below" : "above"))
                .isCloseTo(1.0 / 8, within(1e-6));
        assertThat(StopRules.chanceOfOtherVerdict(none, "below", n -> n == 1 ? "odd" : "below"))
                .isCloseTo(1.0 / 4, within(1e-6));
        assertThat(StopRules.chanceOfOtherVerdict(none, "below", n -> "below")).isZero();
        assertThat(StopRules.chanceOfOtherVerdict(none, "below", n -> "above"))
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void largeNumbersAreTakenInEqualShares() {
        PartialReading many = PartialReading.of(4000, 10, 40);
        long median = Math.round(many.found() + many.unread().quantile(0.5));
        long high = Math.round(many.found() + many.unread().quantile(0.97));

        assertThat(StopRules.chanceOfOtherVerdict(many, true, n -> n <= median))
                .isCloseTo(0.5, within(0.01));
        assertThat(StopRules.chanceOfOtherVerdict(many, true, n -> n <= high))
                .isCloseTo(0.03, within(0.006));
    }

    @Test
    void clumpedCellsAreTakenAsWideAsTheyAre() {
        List<Long> clumped = List.of(0L, 0L, 16L, 0L, 0L, 16L, 0L, 0L);

        double byChance =
                StopRules.chanceOfOtherVerdict(
                        PartialReading.of(32, 8, 32), 1, n -> n > 90 ? 1 : 0);
        double byCells =
                StopRules.chanceOfOtherVerdict(
                        PartialReading.ofCells(clumped, 32), 1, n -> n > 90 ? 1 : 0);

        assertThat(byCells).isGreaterThan(2 * byChance);
    }

    @Test
    void neverStopsOnZeroWhenThePurposeIsDetection() {
        StopRules detection = new StopRules(true, OptionalDouble.of(0.5), OptionalDouble.of(20));
        PartialReading none = PartialReading.of(0, 30, 40);

        assertThat(detection.reason(none, OptionalDouble.of(0), 90)).isEmpty();
        assertThat(DENSITY.reason(none, OptionalDouble.of(0), 90))
                .isEqualTo(Optional.of(StopReason.DECISION_SAFE));
        assertThat(detection.reason(PartialReading.of(0, 40, 40), NONE, 90))
                .isEqualTo(Optional.of(StopReason.EVERY_CELL_READ));
    }

    @Test
    void theFirstReasonThatHoldsIsGiven() {
        PartialReading few = PartialReading.of(3, 10, 40);
        PartialReading many = PartialReading.of(300, 10, 40);

        assertThat(DENSITY.reason(few, OptionalDouble.of(0.05), 5)).isEmpty();
        assertThat(DENSITY.reason(few, OptionalDouble.of(0.049), 5))
                .isEqualTo(Optional.of(StopReason.DECISION_SAFE));
        assertThat(DENSITY.reason(few, NONE, 20))
                .isEqualTo(Optional.of(StopReason.MINUTES_USED_UP));
        assertThat(DENSITY.reason(many, NONE, 20))
                .isEqualTo(Optional.of(StopReason.PRECISION_REACHED));
        assertThat(new StopRules(false, NONE, NONE).reason(many, NONE, 500)).isEmpty();
    }

    @Test
    void refusesWishesThatAreNone() {
        assertThatThrownBy(() -> new StopRules(false, OptionalDouble.of(0), NONE))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new StopRules(false, NONE, OptionalDouble.of(-1)))
                .isInstanceOf(InvalidInput.class);
    }
}
