package jarwise.cli.print;

import java.util.ArrayList;
import java.util.List;

/** A table for the eyes: columns aligned, numbers to the right. */
public final class TextTable {

    private static final String GAP = "  ";

    private final List<List<String>> rows = new ArrayList<>();
    private final int texts;

    /**
     * Begins a table.
     *
     * @param texts how many columns, from the left, hold text
     * @param header names of the columns
     */
    public TextTable(int texts, List<String> header) {
        this.texts = texts;
        rows.add(List.copyOf(header));
    }

    /** Adds a row of as many cells as the header has. */
    public void add(List<String> cells) {
        rows.add(List.copyOf(cells));
    }

    /** {@return the table, each line ended by a line feed} */
    public String text() {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], width(row.get(i)));
            }
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                String padding = " ".repeat(widths[i] - width(row.get(i)));
                line.append(i == 0 ? "" : GAP);
                line.append(i < texts ? row.get(i) + padding : padding + row.get(i));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
