package jarwise.stats.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PartialReadingTest {

    static List<Row> unread() {
        return ReferenceTable.read("partial/unread.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("unread")
    void limitsAreFoundPlusQuantilesOfTheUnread(Row row) {
        long found = (long) row.number("found");
        PartialReading reading = PartialReading.of(found, row.number("read"), row.number("total"));

        assertThat(reading.lower(0.95)).isEqualTo(found + row.number("q025"));
        assertThat(reading.upper(0.95)).isEqualTo(found + row.number("q975"));
        assertThat(reading.upperOneSided(0.95)).isEqualTo(found + row.number("q95"));
        assertThat(reading.estimate())
                .isCloseTo(found * row.number("total") / row.number("read"), within(1e-9 * found));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void limitsWidenWithTheLevelAndNeverFallBelowWhatWasFound(long seed) {
        Random random = new Random(seed);
        long found = random.nextInt(200);
        int total = 2 + random.nextInt(100);
        PartialReading reading = PartialReading.of(found, 1 + random.nextInt(total), total);

        double lower = Double.POSITIVE_INFINITY;
        double upper = 0;
        for (double level : new double[] {0.5, 0.8, 0.9, 0.95, 0.99}) {
            assertThat(reading.lower(level)).isBetween((double) found, lower);
            assertThat(reading.upper(level)).isGreaterThanOrEqualTo(upper);
            assertThat(reading.upper(level)).isGreaterThanOrEqualTo(reading.upperOneSided(level));
            lower = reading.lower(level);
            upper = reading.upper(level);
        }
    }

    @Test
    void aFilterReadWholeHoldsWhatWasFound() {
        PartialReading whole = PartialReading.of(17, 40, 40);

        assertThat(whole.estimate()).isEqualTo(17);
        assertThat(whole.lower(0.95)).isEqualTo(17);
        assertThat(whole.upper(0.95)).isEqualTo(17);
        assertThat(whole.upperOneSided(0.95)).isEqualTo(17);
        assertThat(whole.relativeStandardError()).isZero();
        assertThat(PartialReading.ofCells(List.of(9L, 0L, 8L), 3).upper(0.95)).isEqualTo(17);
    }

    @Test
    void cellsThatVaryByChanceChangeNothing() {
        List<Long> even = List.of(2L, 3L, 2L, 1L, 2L, 3L, 1L, 2L);

        assertThat(PartialReading.ofCells(even, 32)).isEqualTo(PartialReading.of(16, 8, 32));
    }

    /** By hand: mean 4, s² 256/7, R² (1 − r/R) s²/r = 32 · 24 · s²/8, unread mean 96. */
    @Test
    void clumpsOnTheFilterMakeTheLimitsWider() {
        List<Long> clumped = List.of(0L, 0L, 16L, 0L, 0L, 16L, 0L, 0L);
        PartialReading byChance = PartialReading.of(32, 8, 32);

        PartialReading reading = PartialReading.ofCells(clumped, 32);

        double variance = (2 * 144 + 6 * 16) / 7.0;
        assertThat(reading.estimate()).isEqualTo(128);
        assertThat(reading.unread().standardDeviation())
                .isCloseTo(Math.sqrt(32 * 24 * variance / 8), within(1e-9));
        double spread = Math.log(1 + 32 * 24 * variance / 8 / (96 * 96));
        assertThat(reading.upper(0.95))
                .isCloseTo(
                        32 + 96 * Math.exp(-spread / 2 + 1.959963985 * Math.sqrt(spread)),
                        within(1e-5));
        assertThat(reading.upper(0.95)).isGreaterThan(byChance.upper(0.95));
        assertThat(reading.lower(0.95)).isBetween(32.0, byChance.lower(0.95));
    }

    @Test
    void nothingFoundHasABoundAndNoPrecision() {
        PartialReading none = PartialReading.of(0, 10, 40);

        // P(unread > u) = (3/4)^(u + 1), below 0.05 from u = 10
        assertThat(none.upperOneSided(0.95)).isEqualTo(10);
        assertThat(none.relativeStandardError()).isInfinite();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> PartialReading.of(-1, 4, 16)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> PartialReading.of(1, 0, 16)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> PartialReading.of(1, Double.NaN, 16))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> PartialReading.of(1, 17, 16))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("swapped");
        assertThatThrownBy(() -> PartialReading.ofCells(List.of(), 16))
                .isInstanceOf(InvalidInput.class);
    }
}
