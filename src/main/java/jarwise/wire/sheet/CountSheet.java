package jarwise.wire.sheet;

import jarwise.base.Message;
import java.util.List;

/**
 * A sheet of counts with no fault in it.
 *
 * @param columns its columns and what they mean
 * @param rows its observations in the order of the sheet
 * @param notes what a person should know about how it was read
 */
public record CountSheet(SheetColumns columns, List<CountRow> rows, List<Message> notes) {

    public CountSheet {
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }
}
