package jarwise.usecase.pattern;

import jarwise.base.InvalidInput;
import jarwise.stats.count.Observation;
import jarwise.wire.sheet.CountRow;

/** Numbers in the rows of a sheet. */
final class RowNumbers {

    private RowNumbers() {}

    static Observation observation(CountRow row) {
        return new Observation(row.count().individuals(), row.units(), row.filterShare());
    }

    /** A finite number in a column that Jarwise has no word for. */
    static double number(CountRow row, String column, String text) {
        try {
            double value = Double.parseDouble(text.replace(',', '.'));
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw new InvalidInput(
                "Row %d has \"%s\" in %s; it must be a number. Maybe 1 or 2.5"
                        .formatted(row.row(), text, column));
    }
}
