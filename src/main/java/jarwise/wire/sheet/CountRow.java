package jarwise.wire.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * One observation: a row of a long sheet, or one stage of a row of a wide one.
 *
 * @param row row number as a person sees it
 * @param columns the sheet's columns
 * @param cells the whole row as it came in
 * @param countIndex place of the column the count is from
 * @param count what was counted, if it was
 * @param units sampling units, above 0
 * @param cellsRead filter cells read, above 0
 * @param cellsTotal filter cells in all, at least {@code cellsRead}
 * @param date day of collection, where the sheet has one that can be read
 * @param frequency for how many samples the row stands
 */
public record CountRow(
        int row,
        SheetColumns columns,
        List<String> cells,
        int countIndex,
        CountCell count,
        double units,
        double cellsRead,
        double cellsTotal,
        Optional<LocalDate> date,
        long frequency) {

    /** {@return the text of a column with this meaning; empty if blank or not in the sheet} */
    public String text(KnownColumn known) {
        OptionalInt index = columns.index(known);
        return index.isPresent() ? text(index.getAsInt()) : "";
    }

    /** {@return the text at a place found with {@link SheetColumns#index(String)}} */
    public String text(int index) {
        if (index == SheetColumns.STAGE_OF_WIDE_SHEET) {
            return columns.header().get(countIndex);
        }
        return cells.get(index);
    }

    /** {@return share of the filter that was read, (0, 1]} */
    public double filterShare() {
        return cellsRead / cellsTotal;
    }

    /** {@return what stands in the columns that Jarwise has no word for, blanks left out} */
    public Map<String, String> others() {
        Map<String, String> others = new TreeMap<>();
        ColumnMapping mapping = columns.mapping();
        IntStream.range(0, cells.size())
                .filter(i -> !cells.get(i).isEmpty())
                .filter(i -> !mapping.columns().containsValue(columns.header().get(i)))
                .filter(i -> !mapping.countColumns().contains(columns.header().get(i)))
                .forEach(i -> others.put(columns.header().get(i), cells.get(i)));
        return others;
    }

    CountRow withCount(CountCell changed) {
        return new CountRow(
                row,
                columns,
                cells,
                countIndex,
                changed,
                units,
                cellsRead,
                cellsTotal,
                date,
                frequency);
    }
}
