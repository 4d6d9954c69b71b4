package jarwise.usecase;

import jarwise.wire.sheet.SheetSelection;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A sheet and how a person wants it read.
 *
 * @param file CSV or xlsx
 * @param worksheet name of the worksheet; the first one if empty
 * @param renames name of a known column to the name in the sheet's header
 * @param countColumns columns that hold a count each, in wide sheets
 * @param frequency column that says for how many samples a row stands
 * @param selection rows to keep and how to put them together
 */
public record SheetRequest(
        Path file,
        Optional<String> worksheet,
        Map<String, String> renames,
        List<String> countColumns,
        Optional<String> frequency,
        SheetSelection selection) {

    /** {@return the same sheet, put together in another way} */
    public SheetRequest with(SheetSelection other) {
        return new SheetRequest(file, worksheet, renames, countColumns, frequency, other);
    }
}
