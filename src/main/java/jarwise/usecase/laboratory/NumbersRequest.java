package jarwise.usecase.laboratory;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A sheet with numbers in named columns.
 *
 * @param file CSV or xlsx
 * @param worksheet name of the worksheet; the first one if empty
 * @param by columns that make groups, in this order; none make one group
 * @param where for each column the values to keep; no columns keep every row
 */
public record NumbersRequest(
        Path file, Optional<String> worksheet, List<String> by, Map<String, Set<String>> where) {}
