package jarwise.wire.sheet;

import jarwise.base.Guess;
import jarwise.base.Message;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import jarwise.wire.table.Table;
import jarwise.wire.table.TableRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Whole numbers from named columns of a sheet, taken whole or not at all.
 *
 * @param rows rows in which every number stands, at least one
 * @param notes what a person should know about how the sheet was read
 */
public record NumberSheet(List<Row> rows, List<Message> notes) {

    /**
     * One row.
     *
     * @param row row number as a person sees it
     * @param numbers in the order of the columns asked for
     * @param texts likewise
     */
    public record Row(int row, List<Long> numbers, List<String> texts) {}

    /**
     * Reads the columns of a sheet.
     *
     * @param table the sheet
     * @param columns what to read of it
     * @return its rows; those with a blank number are left out with a note
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    public static NumberSheet read(Table table, NumberColumns columns) {
        return new Reader(table).read(columns);
    }

    private static final class Reader {

        private final Table table;
        private final Faults faults;
        private final CellReader cells;
        private final SheetColumns header;
        private final List<Row> rows = new ArrayList<>();
        private int blank;

        Reader(Table table) {
            this.table = table;
            this.faults = new Faults(table.faults());
            this.cells = new CellReader(table.decimalComma());
            this.header =
                    new SheetColumns(
                            table.headerRow(), table.header(), ColumnMapping.exact(table.header()));
        }

        NumberSheet read(NumberColumns columns) {
            List<Integer> numbers = columns.numbers().stream().map(this::index).toList();
            List<Integer> texts = columns.texts().stream().map(this::index).toList();
            Map<Integer, Set<String>> where = new LinkedHashMap<>();
            columns.where().forEach((name, values) -> where.put(index(name), values));
            if (faults.number() == table.faults().number()
                    && numbers.stream().distinct().count() < numbers.size()) {
                String name = columns.numbers().get(0);
                faults.add(Fault.in(table.headerRow(), name, name, FaultKind.COLUMN_MEANT_TWICE));
            }
            if (faults.number() > table.faults().number()) {
                faults.refuseIfAny();
            }
            for (TableRow row : table.rows()) {
                read(row, numbers, texts, where);
            }
            checkKept(columns);
            faults.refuseIfAny();
            return new NumberSheet(List.copyOf(rows), notes());
        }

        private void read(
                TableRow row,
                List<Integer> numbers,
                List<Integer> texts,
                Map<Integer, Set<String>> where) {
            boolean kept =
                    where.entrySet().stream()
                            .allMatch(e -> e.getValue().contains(row.cells().get(e.getKey())));
            List<Long> values = new ArrayList<>();
            for (int index : numbers) {
                number(row, index, values);
            }
            List<String> words = texts.stream().map(index -> text(row, index)).toList();
            boolean whole = numbers.stream().noneMatch(index -> row.cells().get(index).isEmpty());
            if (kept && whole) {
                rows.add(new Row(row.row(), values, words));
            } else if (kept) {
                blank++;
            }
        }

        private void number(TableRow row, int index, List<Long> values) {
            String text = row.cells().get(index);
            if (text.isEmpty()) {
                return;
            }
            CellReader.Read<Long> read = cells.whole(text);
            read.value().ifPresent(values::add);
            read.fault()
                    .ifPresent(
                            kind ->
                                    faults.add(
                                            Fault.in(
                                                    row.row(),
                                                    table.header().get(index),
                                                    text,
                                                    kind,
                                                    read.arguments().toArray(String[]::new))));
        }

        private String text(TableRow row, int index) {
            String text = row.cells().get(index);
            if (text.isEmpty()) {
                String name = table.header().get(index);
                faults.add(Fault.in(row.row(), name, "", FaultKind.GROUP_BLANK));
            }
            return text;
        }

        private int index(String name) {
            OptionalInt index = header.index(name);
            if (index.isEmpty()) {
                faults.add(
                        Fault.in(
                                table.headerRow(),
                                "",
                                name,
                                FaultKind.COLUMN_UNKNOWN,
                                Guess.among(table.header(), name)));
            }
            return index.orElse(0);
        }

        private void checkKept(NumberColumns columns) {
            if (faults.number() > 0 || !rows.isEmpty()) {
                return;
            }
            Set<String> names = new LinkedHashSet<>(columns.numbers());
            faults.add(
                    Fault.in(
                            table.headerRow(),
                            String.join(", ", names),
                            "",
                            FaultKind.NUMBER_NOWHERE));
        }

        private List<Message> notes() {
            List<Message> notes = new ArrayList<>();
            addNumber(notes, "sheet.note.empty-rows", table.emptyRows());
            addNumber(notes, "sheet.note.formulas", table.formulas());
            addNumber(notes, "sheet.note.not-read", blank);
            return notes;
        }

        private static void addNumber(List<Message> notes, String key, int number) {
            if (number > 0) {
                notes.add(Message.of(key, String.valueOf(number)));
            }
        }
    }
}
