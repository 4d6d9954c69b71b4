package jarwise.wire.sheet;

import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import jarwise.wire.table.TableRow;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Checks one row after the other and notes every fault. */
final class RowReader {

    private final SheetColumns columns;
    private final CellReader cells;
    private final boolean dates;
    private final Faults faults;
    private final OptionalInt units;
    private final OptionalInt cellsRead;
    private final OptionalInt cellsTotal;
    private final OptionalInt date;
    private final OptionalInt frequency;
    private final int[] counts;
    private int unitsBlank;
    private int cellsBlank;

    RowReader(SheetColumns columns, CellReader cells, boolean dates, Faults faults) {
        this.columns = columns;
        this.cells = cells;
        this.dates = dates;
        this.faults = faults;
        this.units = columns.index(KnownColumn.UNITS);
        this.cellsRead = columns.index(KnownColumn.CELLS_READ);
        this.cellsTotal = columns.index(KnownColumn.CELLS_TOTAL);
        this.date = columns.index(KnownColumn.DATE);
        Optional<String> name = columns.mapping().frequency();
        this.frequency =
                name.isPresent()
                        ? OptionalInt.of(columns.header().indexOf(name.get()))
                        : OptionalInt.empty();
        List<String> wide = columns.mapping().countColumns();
        this.counts =
                wide.isEmpty()
                        ? columns.index(KnownColumn.COUNT).stream().toArray()
                        : wide.stream().mapToInt(columns.header()::indexOf).toArray();
    }

    int unitsBlank() {
        return unitsBlank;
    }

    int cellsBlank() {
        return cellsBlank;
    }

    void read(TableRow row, List<CountRow> rows) {
        if (isExplanation(row)) {
            add(row, counts[0], FaultKind.EXPLANATION_LEFT);
            return;
        }
        double unitsInRow = units(row);
        double[] filterCells = filterCells(row);
        Optional<LocalDate> day = day(row);
        long samples = frequency(row);
        for (int index : counts) {
            CellReader.Read<CountCell> count = cells.count(row.cells().get(index));
            noteFault(row, index, count);
            if (count.value().isPresent()) {
                rows.add(
                        new CountRow(
                                row.row(),
                                columns,
                                row.cells(),
                                index,
                                count.value().get(),
                                unitsInRow,
                                filterCells[0],
                                filterCells[1],
                                day,
                                samples));
            }
        }
    }

    /** The template's row has words in every column; one fault says it all. */
    private boolean isExplanation(TableRow row) {
        return row.cells().get(counts[0]).startsWith(TemplateSheet.EXPLANATION_MARK);
    }

    private double units(TableRow row) {
        if (units.isEmpty()) {
            return 1;
        }
        if (row.cells().get(units.getAsInt()).isEmpty()) {
            unitsBlank++;
            return 1;
        }
        return positive(row, units.getAsInt(), FaultKind.UNITS_NOT_POSITIVE);
    }

    private double[] filterCells(TableRow row) {
        if (cellsRead.isEmpty() || cellsTotal.isEmpty()) {
            return new double[] {1, 1};
        }
        boolean readBlank = row.cells().get(cellsRead.getAsInt()).isEmpty();
        boolean totalBlank = row.cells().get(cellsTotal.getAsInt()).isEmpty();
        if (readBlank && totalBlank) {
            cellsBlank++;
            return new double[] {1, 1};
        }
        if (readBlank || totalBlank) {
            int blank = readBlank ? cellsRead.getAsInt() : cellsTotal.getAsInt();
            int other = readBlank ? cellsTotal.getAsInt() : cellsRead.getAsInt();
            add(row, other, FaultKind.CELLS_HALF_GIVEN, columns.header().get(blank));
            return new double[] {1, 1};
        }
        double read = positive(row, cellsRead.getAsInt(), FaultKind.CELLS_NOT_POSITIVE);
        double total = positive(row, cellsTotal.getAsInt(), FaultKind.CELLS_NOT_POSITIVE);
        if (read > total) {
            String allowed = row.cells().get(cellsTotal.getAsInt());
            add(row, cellsRead.getAsInt(), FaultKind.CELLS_READ_ABOVE_TOTAL, allowed);
        }
        return new double[] {read, total};
    }

    /** {@return the number, or NaN once a fault is noted; NaN is never above anything} */
    private double positive(TableRow row, int index, FaultKind kind) {
        OptionalDouble value = cells.positive(row.cells().get(index));
        if (value.isEmpty()) {
            add(row, index, kind);
        }
        return value.orElse(Double.NaN);
    }

    private Optional<LocalDate> day(TableRow row) {
        if (date.isEmpty() || row.cells().get(date.getAsInt()).isEmpty()) {
            return Optional.empty();
        }
        CellReader.Read<LocalDate> read = CellReader.date(row.cells().get(date.getAsInt()));
        if (dates) {
            noteFault(row, date.getAsInt(), read);
        }
        return read.value();
    }

    private long frequency(TableRow row) {
        if (frequency.isEmpty()) {
            return 1;
        }
        CellReader.Read<Long> read = cells.whole(row.cells().get(frequency.getAsInt()));
        if (read.fault().isPresent()) {
            add(row, frequency.getAsInt(), FaultKind.FREQUENCY_NOT_A_COUNT);
        }
        return read.value().orElse(0L);
    }

    private void noteFault(TableRow row, int index, CellReader.Read<?> read) {
        read.fault()
                .ifPresent(kind -> add(row, index, kind, read.arguments().toArray(String[]::new)));
    }

    private void add(TableRow row, int index, FaultKind kind, String... arguments) {
        faults.add(
                Fault.in(
                        row.row(),
                        columns.header().get(index),
                        row.cells().get(index),
                        kind,
                        arguments));
    }
}
