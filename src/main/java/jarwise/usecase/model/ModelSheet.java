package jarwise.usecase.model;

import jarwise.stats.regression.ModelRow;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.GroupedRows;
import jarwise.wire.sheet.RowGroup;
import java.util.ArrayList;
import java.util.List;

/** The rows of a sheet as counts with what they may depend on. */
public final class ModelSheet {

    private ModelSheet() {}

    /**
     * Takes rows grouped by every column that a model names.
     *
     * @param rows groups of counted rows
     * @return a row of a model for each of them, in the order of the groups
     */
    public static List<ModelRow> rows(GroupedRows rows) {
        List<ModelRow> all = new ArrayList<>();
        for (RowGroup group : rows.groups()) {
            for (CountRow row : group.rows()) {
                all.add(
                        new ModelRow(
                                group.values(),
                                row.units() * row.filterShare(),
                                row.count().individuals(),
                                row.frequency()));
            }
        }
        return all;
    }
}
