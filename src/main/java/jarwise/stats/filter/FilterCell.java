package jarwise.stats.filter;

/**
 * One cell of the grid on a filter.
 *
 * @param row 0 for the first, at the top
 * @param column 0 for the first, at the left
 */
public record FilterCell(int row, int column) {

    /** {@return its name as readers call it: row by letter, column by number, such as B7} */
    public String name() {
        return (char) ('A' + row) + Integer.toString(column + 1);
    }
}
