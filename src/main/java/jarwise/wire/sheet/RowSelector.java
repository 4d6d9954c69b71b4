package jarwise.wire.sheet;

import jarwise.base.CodePointOrder;
import jarwise.base.Guess;
import jarwise.base.Message;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/**
 * Chooses the rows of a sheet, adds up samples where asked, and makes groups. Rows are never added
 * up unless asked, a missing stage is never a zero unless asked.
 */
public final class RowSelector {

    private final CountSheet sheet;
    private final SheetSelection selection;
    private final Faults faults = new Faults();
    private final List<Message> notes = new ArrayList<>();

    private RowSelector(CountSheet sheet, SheetSelection selection) {
        this.sheet = sheet;
        this.selection = selection;
    }

    /**
     * Puts the rows of a sheet together.
     *
     * @param sheet a sheet without a fault, read with the columns of {@link
     *     SheetSelection#neverBlank()}
     * @param selection what to use of it
     * @return groups of counted rows, at least one group
     * @throws jarwise.wire.table.SheetRefused if a column does not exist, rows of a sample do not
     *     agree, or no counted row is left
     */
    public static GroupedRows select(CountSheet sheet, SheetSelection selection) {
        return new RowSelector(sheet, selection).groups();
    }

    private GroupedRows groups() {
        int[] by = selection.by().stream().mapToInt(this::index).toArray();
        Map<Integer, Set<String>> where = new TreeMap<>();
        selection.where().forEach((name, values) -> where.put(index(name), values));
        faults.refuseIfAny();
        List<CountRow> rows = sheet.rows();
        if (selection.fillZeros()) {
            rows = new SampleRows(sheet, by, faults, notes).filled(rows);
        }
        rows = kept(rows, where);
        faults.refuseIfAny();
        noteMixed(rows, KnownColumn.STAGE, by);
        noteMixed(rows, KnownColumn.PEST, by);
        if (selection.perSample()) {
            rows = new SampleRows(sheet, by, faults, notes).added(rows);
            faults.refuseIfAny();
        }
        return new GroupedRows(grouped(rows, by), notes);
    }

    private int index(String name) {
        OptionalInt index = sheet.columns().index(name);
        if (index.isEmpty()) {
            faults.add(
                    Fault.in(
                            sheet.columns().headerRow(),
                            "",
                            name,
                            FaultKind.COLUMN_UNKNOWN,
                            Guess.among(List.of(sheet.columns().names().split(", ")), name)));
        }
        return index.orElse(0);
    }

    private List<CountRow> kept(List<CountRow> rows, Map<Integer, Set<String>> where) {
        List<CountRow> kept = rows;
        for (Map.Entry<Integer, Set<String>> entry : where.entrySet()) {
            int index = entry.getKey();
            List<CountRow> before = kept;
            kept = kept.stream().filter(r -> entry.getValue().contains(r.text(index))).toList();
            if (kept.isEmpty()) {
                Set<String> there = new LinkedHashSet<>();
                before.forEach(row -> there.add(row.text(index)));
                String wanted = String.join(", ", entry.getValue());
                faults.add(
                        Fault.in(
                                0,
                                columnName(index),
                                wanted,
                                FaultKind.NO_ROW_KEPT,
                                Guess.among(there, wanted)));
                faults.refuseIfAny();
            }
        }
        return kept;
    }

    private String columnName(int index) {
        return index == SheetColumns.STAGE_OF_WIDE_SHEET
                ? "stage"
                : sheet.columns().header().get(index);
    }

    /** Larvae and adults of one jar in one group are two observations of different things. */
    private void noteMixed(List<CountRow> rows, KnownColumn column, int[] by) {
        OptionalInt index = sheet.columns().index(column);
        if (index.isEmpty() || selection.perSample()) {
            return;
        }
        for (int grouping : by) {
            if (grouping == index.getAsInt()) {
                return;
            }
        }
        Set<String> values = new LinkedHashSet<>();
        rows.forEach(row -> values.add(row.text(index.getAsInt())));
        values.remove("");
        if (values.size() > 1) {
            List<String> sorted = values.stream().sorted(CodePointOrder.OF_TEXT).toList();
            notes.add(Message.of("sheet.note.mixed-" + column.text(), String.join(", ", sorted)));
        }
    }

    private List<RowGroup> grouped(List<CountRow> rows, int[] by) {
        Map<List<String>, List<CountRow>> groups = new TreeMap<>(CodePointOrder.OF_TEXTS);
        Set<List<String>> blank = new LinkedHashSet<>();
        for (CountRow row : rows) {
            List<String> values = new ArrayList<>(by.length);
            for (int index : by) {
                values.add(row.text(index));
            }
            if (row.count().isCounted() && row.frequency() > 0) {
                groups.computeIfAbsent(values, v -> new ArrayList<>()).add(row);
            } else {
                blank.add(values);
            }
        }
        blank.removeAll(groups.keySet());
        blank.stream()
                .filter(values -> !values.isEmpty())
                .map(values -> Message.of("sheet.note.group-left-out", String.join(", ", values)))
                .forEach(notes::add);
        if (groups.isEmpty()) {
            faults.add(Fault.in(sheet.columns().headerRow(), "count", "", FaultKind.COUNT_NOWHERE));
            faults.refuseIfAny();
        }
        return groups.entrySet().stream()
                .map(entry -> new RowGroup(named(entry.getKey()), entry.getValue()))
                .toList();
    }

    private Map<String, String> named(List<String> values) {
        Map<String, String> named = new LinkedHashMap<>();
        for (int i = 0; i < values.size(); i++) {
            named.put(selection.by().get(i), values.get(i));
        }
        return named;
    }
}
