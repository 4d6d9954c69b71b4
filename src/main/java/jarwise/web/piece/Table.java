package jarwise.web.piece;

import java.util.List;

/**
 * The table behind a picture: every value in figures.
 *
 * @param caption what it holds
 * @param head names of the columns
 * @param rows as many texts each as there are columns; the first one names the row
 */
public record Table(String caption, List<String> head, List<List<String>> rows) {

    public Table {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
