package jarwise.stats.filter;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The grid on a filter: rows of cells, centred below each other, as on a round or a square filter.
 *
 * @param rowLengths cells in each row from the top, at least 1 each; 1 to 26 rows
 */
public record FilterLayout(List<Integer> rowLengths) {

    private static final int MOST_ROWS = 26;
    private static final int MOST_COLUMNS = 200;

    /** Squares of 10 mm in a circle of 40.5 mm radius. */
    private static final List<Integer> ROUND = List.of(4, 6, 6, 8, 6, 6, 4);

    /** Checks the rows. */
    public FilterLayout {
        rowLengths = List.copyOf(rowLengths);
        if (rowLengths.isEmpty() || rowLengths.size() > MOST_ROWS) {
            throw new InvalidInput(
                    "The filter has %d rows; 1 to %d are allowed."
                            .formatted(rowLengths.size(), MOST_ROWS));
        }
        for (int length : rowLengths) {
            if (length < 1 || length > MOST_COLUMNS) {
                throw new InvalidInput(
                        "A row of the filter has %d cells; 1 to %d are allowed."
                                .formatted(length, MOST_COLUMNS));
            }
        }
    }

    /**
     * A grid with as many cells in every row.
     *
     * @param rows 1 to 26
     * @param columns 1 to 200
     * @return the layout
     * @throws InvalidInput if either is out of range
     */
    public static FilterLayout rectangle(int rows, int columns) {
        Require.atLeast("rows", rows, 1);
        return new FilterLayout(Collections.nCopies(rows, columns));
    }

    /**
     * The grid of a filter with so many cells: 40 squares of 10 mm lie on a round filter of 90 mm
     * as rows of 4, 6, 6, 8, 6, 6 and 4; any other number as a grid near to a square, whose last
     * row may be shorter.
     *
     * @param cells 1 to 5,200
     * @return the layout
     * @throws InvalidInput if the number is out of range
     */
    public static FilterLayout ofCells(int cells) {
        if (cells == ROUND.stream().mapToInt(Integer::intValue).sum()) {
            return new FilterLayout(ROUND);
        }
        if (cells < 1 || cells > MOST_ROWS * MOST_COLUMNS) {
            throw new InvalidInput(
                    "The filter has %d cells; 1 to %d are allowed."
                            .formatted(cells, MOST_ROWS * MOST_COLUMNS));
        }
        int rows = (int) Math.min(MOST_ROWS, Math.max(1, Math.round(Math.sqrt(cells))));
        int columns = (cells + rows - 1) / rows;
        List<Integer> lengths = new ArrayList<>();
        for (int left = cells; left > 0; left -= columns) {
            lengths.add(Math.min(columns, left));
        }
        return new FilterLayout(lengths);
    }

    /** {@return how many cells there are} */
    public int cells() {
        return rowLengths.stream().mapToInt(Integer::intValue).sum();
    }

    /** {@return every cell once, row by row, every second row backwards} */
    public List<FilterCell> snake() {
        int widest = Collections.max(rowLengths);
        List<FilterCell> snake = new ArrayList<>();
        for (int row = 0; row < rowLengths.size(); row++) {
            List<FilterCell> cells = new ArrayList<>();
            int first = (widest - rowLengths.get(row)) / 2;
            for (int column = first; column < first + rowLengths.get(row); column++) {
                cells.add(new FilterCell(row, column));
            }
            if (row % 2 == 1) {
                Collections.reverse(cells);
            }
            snake.addAll(cells);
        }
        return List.copyOf(snake);
    }
}
