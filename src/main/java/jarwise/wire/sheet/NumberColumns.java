package jarwise.wire.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which columns to read from a sheet whose numbers do not stand in "count".
 *
 * @param numbers columns of whole numbers, in this order, each another one
 * @param texts columns that every row needs a value in, such as those that make groups
 * @param where for each column the values to keep; no columns keep every row
 */
public record NumberColumns(
        List<String> numbers, List<String> texts, Map<String, Set<String>> where) {

    public NumberColumns {
        numbers = List.copyOf(numbers);
        texts = List.copyOf(texts);
        where = Map.copyOf(where);
    }
}
