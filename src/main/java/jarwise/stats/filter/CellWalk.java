package jarwise.stats.filter;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * In which order to read the cells of a filter, so that one may stop after any pass.
 *
 * @param passes cells of each pass in the order of reading; every cell stands in one pass
 */
public record CellWalk(List<List<FilterCell>> passes) {

    public CellWalk {
        passes = passes.stream().map(List::copyOf).toList();
    }

    /**
     * A walk of passes: the first takes every m-th cell of the snake from a random start, the next
     * the cell after each of those, and so on.
     *
     * <p>What settles at the rim or in the middle falls into every pass about evenly, and each pass
     * is a systematic sample with a random start. <b>Assumes</b> that nothing repeats itself on the
     * filter at the distance of m cells.
     *
     * <p><b>Source.</b> Cochran (1977), <i>Sampling Techniques</i>, ch. 8 (from memory).
     *
     * @param layout the grid
     * @param passes how many passes make the whole filter, m; 1 to the number of cells
     * @param seed any number; the same layout, passes and seed give the same walk
     * @return the walk
     * @throws InvalidInput if there are no passes or more than cells
     */
    public static CellWalk of(FilterLayout layout, int passes, long seed) {
        checkPasses(layout, passes);
        return from(layout, passes, new SeededRandom(seed).below(passes));
    }

    /**
     * The same walk from a start that is known: pass p takes the cells start + p, start + p + m, …
     * of the snake.
     *
     * @param layout the grid
     * @param passes how many passes make the whole filter, m; 1 to the number of cells
     * @param start 0 to m − 1
     * @return the walk
     * @throws InvalidInput if passes or start are out of range
     */
    public static CellWalk from(FilterLayout layout, int passes, int start) {
        checkPasses(layout, passes);
        if (start < 0 || start >= passes) {
            throw new InvalidInput(
                    "The first pass starts at %d; 0 to %d are allowed."
                            .formatted(start, passes - 1));
        }
        List<FilterCell> snake = layout.snake();
        List<List<FilterCell>> all = new ArrayList<>();
        for (int pass = 0; pass < passes; pass++) {
            int offset = (start + pass) % passes;
            all.add(
                    IntStream.iterate(offset, i -> i < snake.size(), i -> i + passes)
                            .mapToObj(snake::get)
                            .toList());
        }
        return new CellWalk(all);
    }

    private static void checkPasses(FilterLayout layout, int passes) {
        if (passes < 1 || passes > layout.cells()) {
            throw new InvalidInput(
                    "There are %d passes; 1 to %d, the number of cells, are allowed."
                            .formatted(passes, layout.cells()));
        }
    }

    /**
     * The cells from which the whole filter may be estimated: those of passes that were read to
     * their end. What was found in a broken pass is kept, but stands for nothing else.
     *
     * @param read cells that were looked at, obscured ones among them
     * @return cells of completed passes, in the order of the walk
     */
    public List<FilterCell> ofCompletedPasses(Set<FilterCell> read) {
        return passes.stream().filter(read::containsAll).flatMap(List::stream).toList();
    }
}
