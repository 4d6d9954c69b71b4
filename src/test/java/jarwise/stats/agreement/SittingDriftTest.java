package jarwise.stats.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SittingDriftTest {

    /** Every order of the same seven cells, one after the other. */
    private static void orders(List<Long> rest, List<Long> taken, List<List<Long>> all) {
        if (rest.isEmpty()) {
            all.add(List.copyOf(taken));
        }
        for (int i = 0; i < rest.size(); i++) {
            List<Long> left = new ArrayList<>(rest);
            taken.add(left.remove(i));
            orders(left, taken, all);
            taken.remove(taken.size() - 1);
        }
    }

    @Test
    void chancesAreSharesOfAllOrders() {
        List<List<Long>> all = new ArrayList<>();
        List<Long> cells = List.of(0L, 0L, 3L, 0L, 1L, 0L, 4L);
        orders(cells, new ArrayList<>(), all);

        SittingDrift drift = SittingDrift.of(cells);

        double squares = 0;
        long longer = 0;
        for (List<Long> order : all) {
            SittingDrift other = SittingDrift.of(order);
            squares += other.trend() * other.trend();
            longer += other.longestRunOfZeros() >= drift.longestRunOfZeros() ? 1 : 0;
        }
        assertThat(drift.longestRunOfZeros()).isEqualTo(2);
        assertThat(squares / all.size()).isCloseTo(1, within(1e-9));
        assertThat(drift.runPValue()).isCloseTo((double) longer / all.size(), within(1e-12));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void readingBackwardsFlipsTheTrendAndKeepsTheRun(long seed) {
        Random random = new Random(seed);
        List<Long> cells = new ArrayList<>();
        for (int i = 2 + random.nextInt(60); i > 0; i--) {
            cells.add((long) random.nextInt(4));
        }
        SittingDrift there = SittingDrift.of(cells);
        Collections.reverse(cells);
        SittingDrift back = SittingDrift.of(cells);

        assertThat(back.trend()).isCloseTo(-there.trend(), within(1e-9));
        assertThat(back.trendPValue()).isCloseTo(there.trendPValue(), within(1e-9));
        assertThat(back.longestRunOfZeros()).isEqualTo(there.longestRunOfZeros());
        assertThat(there.runPValue()).isBetween(0.0, 1.0);
    }

    @Test
    void aReaderWhoTiresIsSeen() {
        List<Long> cells = new ArrayList<>(Collections.nCopies(20, 4L));
        cells.addAll(Collections.nCopies(20, 0L));

        SittingDrift drift = SittingDrift.of(cells);

        assertThat(drift.trend()).isLessThan(-4);
        assertThat(drift.trendPValue()).isLessThan(1e-4);
        assertThat(drift.longestRunOfZeros()).isEqualTo(20);
        // 21 places for the block of zeros among all ways to place 20 of 40
        assertThat(drift.runPValue()).isCloseTo(21 / 137846528820.0, within(1e-16));
    }

    @Test
    void nothingFoundAnywhereIsNoDrift() {
        SittingDrift drift = SittingDrift.of(Collections.nCopies(9, 0L));

        assertThat(drift.trend()).isZero();
        assertThat(drift.trendPValue()).isEqualTo(1);
        assertThat(drift.runPValue()).isEqualTo(1);
        assertThat(SittingDrift.of(List.of(2L, 3L)).runPValue()).isEqualTo(1);
        assertThatThrownBy(() -> SittingDrift.of(List.of(2L))).isInstanceOf(InvalidInput.class);
    }
}
