package jarwise.wire.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Which rows of a sheet to use and how to put them together.
 *
 * @param where for each column the values to keep; no columns keep every row
 * @param by columns that make groups, in this order; none make one group
 * @param perSample whether counts of one sample are added up
 * @param fillZeros whether a stage or pest without a row in a sample that was read counts as zero
 */
public record SheetSelection(
        Map<String, Set<String>> where, List<String> by, boolean perSample, boolean fillZeros) {

    public SheetSelection {
        where = Map.copyOf(where);
        by = List.copyOf(by);
    }

    /** {@return every row, in one group} */
    public static SheetSelection everything() {
        return new SheetSelection(Map.of(), List.of(), false, false);
    }

    /** {@return the columns in which every row of the sheet needs a value} */
    public List<String> neverBlank() {
        boolean samples = perSample || fillZeros;
        return samples
                ? Stream.concat(by.stream(), Stream.of(KnownColumn.SAMPLE.text())).toList()
                : by;
    }
}
