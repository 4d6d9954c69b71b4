package jarwise.usecase.laboratory;

import jarwise.base.CodePointOrder;
import jarwise.base.Message;
import jarwise.wire.sheet.NumberColumns;
import jarwise.wire.sheet.NumberSheet;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import jarwise.wire.table.TableReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How many of a known number were found again, from a sheet with the columns known and found.
 *
 * @param groups in the order of their values
 * @param notes what a person should know about how the sheet was read
 */
public record ReadFinds(List<Find> groups, List<Message> notes) {

    /**
     * One group, its rows added up.
     *
     * @param group value by name of each grouping column; empty without grouping
     * @param found individuals found again
     * @param known individuals there were
     */
    public record Find(Map<String, String> group, long found, long known) {}

    /**
     * Reads the sheet.
     *
     * @param request the sheet
     * @return its groups
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    public static ReadFinds run(NumbersRequest request) {
        NumberColumns columns =
                new NumberColumns(List.of("known", "found"), request.by(), request.where());
        NumberSheet sheet =
                NumberSheet.read(TableReader.read(request.file(), request.worksheet()), columns);
        Faults faults = new Faults();
        Map<List<String>, long[]> sums = new TreeMap<>(CodePointOrder.OF_TEXTS);
        for (NumberSheet.Row row : sheet.rows()) {
            long known = row.numbers().get(0);
            long found = row.numbers().get(1);
            if (found > known) {
                faults.add(
                        Fault.in(
                                row.row(),
                                "found",
                                String.valueOf(found),
                                FaultKind.FOUND_ABOVE_KNOWN,
                                String.valueOf(known)));
            }
            long[] sum = sums.computeIfAbsent(row.texts(), texts -> new long[2]);
            sum[0] += found;
            sum[1] += known;
        }
        faults.refuseIfAny();
        List<Find> groups =
                sums.entrySet().stream()
                        .map(e -> find(request.by(), e.getKey(), e.getValue()))
                        .toList();
        return new ReadFinds(groups, sheet.notes());
    }

    private static Find find(List<String> by, List<String> values, long[] sum) {
        Map<String, String> group = new LinkedHashMap<>();
        for (int i = 0; i < by.size(); i++) {
            group.put(by.get(i), values.get(i));
        }
        return new Find(group, sum[0], sum[1]);
    }
}
