package jarwise.wire.sheet;

import jarwise.base.Message;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/** Rows of one sample, told by its code and the values of the grouping columns. */
final class SampleRows {

    private final SheetColumns columns;
    private final int[] by;
    private final Faults faults;
    private final List<Message> notes;

    SampleRows(CountSheet sheet, int[] by, Faults faults, List<Message> notes) {
        this.columns = sheet.columns();
        this.by = by;
        this.faults = faults;
        this.notes = notes;
    }

    /** {@return one row a sample with its counts added; samples not read whole are left out} */
    List<CountRow> added(List<CountRow> rows) {
        List<CountRow> added = new ArrayList<>();
        int leftOut = 0;
        for (List<CountRow> sample : samples(rows, by).values()) {
            CountRow first = sample.get(0);
            sample.forEach(row -> checkAgrees(first, row));
            // A jar whose adults were not read has no total: taking it as zero would be a guess.
            if (sample.stream().allMatch(row -> row.count().isCounted())) {
                long sum = sample.stream().mapToLong(row -> row.count().individuals()).sum();
                if (sum > CellReader.LARGEST_COUNT) {
                    String text = String.valueOf(sum);
                    faults.add(Fault.in(first.row(), "count", text, FaultKind.COUNT_TOO_LARGE));
                }
                added.add(first.withCount(CountCell.counted(sum)));
            } else {
                leftOut += sample.stream().anyMatch(row -> row.count().isCounted()) ? 1 : 0;
                added.add(first.withCount(new CountCell(CountCell.State.NOT_READ, 0)));
            }
        }
        if (leftOut > 0) {
            notes.add(Message.of("sheet.note.samples-in-part", String.valueOf(leftOut)));
        }
        return added;
    }

    /** {@return the rows, and a zero for each pest and stage without a row in a sample read} */
    List<CountRow> filled(List<CountRow> rows) {
        int[] kinds = kinds();
        if (kinds.length == 0) {
            faults.add(Fault.in(columns.headerRow(), "stage", "", FaultKind.NOTHING_TO_FILL));
        }
        int[] others = Arrays.stream(by).filter(b -> !contains(kinds, b)).toArray();
        Map<List<String>, List<CountRow>> samples = samples(rows, others);
        faults.refuseIfAny();
        Set<List<String>> wanted = new LinkedHashSet<>();
        rows.forEach(row -> wanted.add(values(row, kinds)));
        int[] counts = rows.stream().mapToInt(CountRow::countIndex).distinct().toArray();
        List<CountRow> filled = new ArrayList<>(rows);
        int before = filled.size();
        for (List<CountRow> sample : samples.values()) {
            CountRow first = sample.get(0);
            sample.forEach(row -> checkAgrees(first, row));
            if (sample.stream().anyMatch(row -> row.count().isCounted())) {
                Set<List<String>> missing = new LinkedHashSet<>(wanted);
                sample.forEach(row -> missing.remove(values(row, kinds)));
                for (int count : counts) {
                    missing.forEach(kind -> filled.add(zero(first, kinds, kind, count)));
                }
            }
        }
        faults.refuseIfAny();
        int number = filled.size() - before;
        notes.add(Message.of("sheet.note.zeros-filled", String.valueOf(number)));
        return filled;
    }

    private static CountRow zero(CountRow first, int[] kinds, List<String> kind, int countIndex) {
        List<String> cells = new ArrayList<>(first.cells());
        for (int i = 0; i < kinds.length; i++) {
            cells.set(kinds[i], kind.get(i));
        }
        return new CountRow(
                first.row(),
                first.columns(),
                cells,
                countIndex,
                CountCell.counted(0),
                first.units(),
                first.cellsRead(),
                first.cellsTotal(),
                first.date(),
                first.frequency());
    }

    /** A wide sheet has a cell for every stage, so there only the pests can be missing. */
    private int[] kinds() {
        List<Integer> kinds = new ArrayList<>();
        for (KnownColumn known : List.of(KnownColumn.PEST, KnownColumn.STAGE)) {
            OptionalInt index = columns.index(known);
            if (index.isPresent() && index.getAsInt() != SheetColumns.STAGE_OF_WIDE_SHEET) {
                kinds.add(index.getAsInt());
            }
        }
        return kinds.stream().mapToInt(Integer::intValue).toArray();
    }

    private Map<List<String>, List<CountRow>> samples(List<CountRow> rows, int[] alsoBy) {
        int code = columns.index(KnownColumn.SAMPLE).orElseThrow();
        Map<List<String>, List<CountRow>> samples = new LinkedHashMap<>();
        for (CountRow row : rows) {
            List<String> key = values(row, alsoBy);
            key.add(row.text(code));
            samples.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
        }
        return samples;
    }

    private void checkAgrees(CountRow first, CountRow row) {
        checkAgrees(first, row, "units", first.units(), row.units());
        checkAgrees(first, row, "cells_read", first.cellsRead(), row.cellsRead());
        checkAgrees(first, row, "cells_total", first.cellsTotal(), row.cellsTotal());
        checkAgrees(first, row, "frequency", (double) first.frequency(), (double) row.frequency());
    }

    private void checkAgrees(CountRow first, CountRow row, String what, double a, double b) {
        if (a != b) {
            faults.add(
                    Fault.in(
                            row.row(),
                            what,
                            String.valueOf(b),
                            FaultKind.SAMPLE_DISAGREES,
                            String.valueOf(first.row()),
                            String.valueOf(a),
                            row.text(KnownColumn.SAMPLE)));
        }
    }

    private static List<String> values(CountRow row, int[] indices) {
        List<String> values = new ArrayList<>(indices.length + 1);
        for (int index : indices) {
            values.add(row.text(index));
        }
        return values;
    }

    private static boolean contains(int[] indices, int index) {
        return Arrays.stream(indices).anyMatch(i -> i == index);
    }
}
