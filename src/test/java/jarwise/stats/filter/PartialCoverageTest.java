package jarwise.stats.filter;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** How often the limits hold on simulated filters read to a quarter. */
class PartialCoverageTest {

    private static final FilterLayout LAYOUT = new FilterLayout(List.of(4, 6, 6, 8, 6, 6, 4));
    private static final int FILTERS = 4000;

    private record Covered(double byChance, double byCells) {}

    private static Covered covered(double mean, double k) {
        SeededRandom random = new SeededRandom(3);
        NegativeBinomial ofCell = new NegativeBinomial(mean, k);
        int byChance = 0;
        int byCells = 0;
        for (int filter = 0; filter < FILTERS; filter++) {
            Map<FilterCell, Long> counts = new HashMap<>();
            LAYOUT.snake().forEach(cell -> counts.put(cell, random.count(ofCell)));
            long there = counts.values().stream().mapToLong(Long::longValue).sum();
            List<Long> read = new ArrayList<>();
            CellWalk.of(LAYOUT, 4, filter).passes().get(0).forEach(c -> read.add(counts.get(c)));
            PartialReading cells = PartialReading.ofCells(read, LAYOUT.cells());
            byCells += holds(cells, there) ? 1 : 0;
            byChance += holds(PartialReading.of(cells.found(), 10, 40), there) ? 1 : 0;
        }
        return new Covered((double) byChance / FILTERS, (double) byCells / FILTERS);
    }

    private static boolean holds(PartialReading reading, long there) {
        return there >= reading.lower(0.95) && there <= reading.upper(0.95);
    }

    @Test
    void limitsHoldWhereInsectsSettledByChance() {
        Covered even = covered(1, Double.POSITIVE_INFINITY);

        assertThat(even.byChance()).isBetween(0.94, 0.98);
        assertThat(even.byCells()).isGreaterThanOrEqualTo(even.byChance() - 0.01);
    }

    @Test
    void clumpsAreMostlyCaughtByTheCounts() {
        Covered clumped = covered(2, 0.8);

        assertThat(clumped.byChance()).isLessThan(0.8);
        assertThat(clumped.byCells()).isGreaterThan(clumped.byChance() + 0.1);
    }
}
