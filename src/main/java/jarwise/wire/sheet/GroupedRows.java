package jarwise.wire.sheet;

import jarwise.base.Message;
import java.util.List;

/**
 * What {@link RowSelector} makes of a sheet.
 *
 * @param groups sorted by Unicode code point of their values, column by column
 * @param notes what a person should know about how the rows were put together
 */
public record GroupedRows(List<RowGroup> groups, List<Message> notes) {}
