package jarwise.wire.sheet;

import java.util.List;
import java.util.Map;

/**
 * Rows that share the values of the grouping columns.
 *
 * @param values value by name of the column as it was asked for, in that order; empty for one group
 * @param rows observations that were counted, at least one
 */
public record RowGroup(Map<String, String> values, List<CountRow> rows) {}
