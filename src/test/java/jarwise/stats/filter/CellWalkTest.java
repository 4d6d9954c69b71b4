package jarwise.stats.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CellWalkTest {

    private static final FilterLayout ROUND = new FilterLayout(List.of(4, 6, 6, 8, 6, 6, 4));

    private static List<String> names(List<FilterCell> cells) {
        return cells.stream().map(FilterCell::name).toList();
    }

    @Test
    void theSnakeTurnsBackInEverySecondRow() {
        assertThat(names(FilterLayout.rectangle(3, 3).snake()))
                .containsExactly("A1", "A2", "A3", "B3", "B2", "B1", "C1", "C2", "C3");
        assertThat(names(ROUND.snake()).subList(0, 11))
                .containsExactly("A3", "A4", "A5", "A6", "B7", "B6", "B5", "B4", "B3", "B2", "C2");
        assertThat(ROUND.cells()).isEqualTo(40);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void passesCoverEveryCellOnce(long seed) {
        Random random = new Random(seed);
        FilterLayout layout =
                FilterLayout.rectangle(1 + random.nextInt(10), 1 + random.nextInt(10));
        int passes = 1 + random.nextInt(layout.cells());

        CellWalk walk = CellWalk.of(layout, passes, seed);

        List<FilterCell> all = walk.passes().stream().flatMap(List::stream).toList();
        assertThat(walk.passes()).hasSize(passes);
        assertThat(all).doesNotHaveDuplicates().hasSize(layout.cells());
        assertThat(new HashSet<>(all)).isEqualTo(new HashSet<>(layout.snake()));
        for (List<FilterCell> pass : walk.passes()) {
            assertThat(pass.size()).isBetween(layout.cells() / passes, layout.cells() / passes + 1);
            List<Integer> places = pass.stream().map(layout.snake()::indexOf).toList();
            for (int i = 1; i < places.size(); i++) {
                assertThat(places.get(i) - places.get(i - 1)).isEqualTo(passes);
            }
        }
        assertThat(CellWalk.of(layout, passes, seed)).isEqualTo(walk);
    }

    @Test
    void everyStartIsAboutAsLikely() {
        int[] starts = new int[4];
        LongStream.range(0, 4000)
                .forEach(
                        seed -> {
                            FilterCell first = CellWalk.of(ROUND, 4, seed).passes().get(0).get(0);
                            starts[ROUND.snake().indexOf(first)]++;
                        });

        for (int times : starts) {
            assertThat(times).isBetween(880, 1120);
        }
    }

    @Test
    void aBrokenPassStandsForNothing() {
        CellWalk walk = CellWalk.of(ROUND, 4, 1);
        Set<FilterCell> read = new HashSet<>(walk.passes().get(0));
        read.addAll(walk.passes().get(1).subList(0, 7));

        assertThat(walk.ofCompletedPasses(read)).isEqualTo(walk.passes().get(0));
        assertThat(walk.ofCompletedPasses(Set.of())).isEmpty();
        assertThat(walk.ofCompletedPasses(new HashSet<>(ROUND.snake()))).hasSize(40);
    }

    @Test
    void refusesWhatIsNoGrid() {
        assertThatThrownBy(() -> CellWalk.of(ROUND, 41, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> CellWalk.of(ROUND, 0, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FilterLayout(List.of())).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FilterLayout(List.of(4, 0))).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> FilterLayout.rectangle(27, 4)).isInstanceOf(InvalidInput.class);
    }
}
