package jarwise.wire.sheet;

import jarwise.base.Guess;
import jarwise.base.Message;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import jarwise.wire.table.Table;
import jarwise.wire.table.TableRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Turns a table into counts by a mapping of its columns: whole, or not at all. */
public final class SheetReader {

    private final SheetColumns columns;
    private final Table table;
    private final boolean dates;
    private final List<String> filled;
    private final Faults faults;

    private SheetReader(Table table, ColumnMapping mapping, boolean dates, List<String> filled) {
        this.table = table;
        this.dates = dates;
        this.filled = filled;
        this.faults = new Faults(table.faults());
        this.columns = new SheetColumns(table.headerRow(), table.header(), mapping);
    }

    /**
     * Reads counts for statistics: days are no matter.
     *
     * @param table the sheet
     * @param mapping what its columns mean
     * @param filled columns that have to be there and may not be blank in any row, as they make
     *     groups or samples
     * @return its counts
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    public static CountSheet counts(Table table, ColumnMapping mapping, List<String> filled) {
        return new SheetReader(table, mapping, false, filled).read();
    }

    /**
     * Reads samples to be kept: each filled date must be a day, and only one.
     *
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    public static CountSheet samples(Table table, ColumnMapping mapping) {
        return new SheetReader(table, mapping, true, List.of()).read();
    }

    /**
     * Takes a person's own names for columns.
     *
     * @param table the sheet
     * @param renames name of a known column to the name in the sheet's header
     * @return known names as they stand, and the renames
     * @throws jarwise.wire.table.SheetRefused if either name does not exist
     */
    public static ColumnMapping renamed(Table table, Map<String, String> renames) {
        Faults faults = new Faults();
        ColumnMapping mapping = ColumnMapping.exact(table.header());
        for (Map.Entry<String, String> rename : renames.entrySet()) {
            Optional<KnownColumn> known = KnownColumn.of(rename.getKey());
            Optional<String> name = named(table, rename.getValue(), faults);
            if (known.isEmpty()) {
                faults.add(
                        Fault.in(
                                table.headerRow(),
                                "",
                                rename.getKey(),
                                FaultKind.COLUMN_NOT_KNOWN_TO_MAP,
                                Guess.among(knownNames(), rename.getKey())));
            } else if (name.isPresent()) {
                mapping = mapping.with(known.get(), name.get());
            }
        }
        faults.refuseIfAny();
        return mapping;
    }

    private static List<String> knownNames() {
        return Arrays.stream(KnownColumn.values()).map(KnownColumn::text).toList();
    }

    private static Optional<String> named(Table table, String name, Faults faults) {
        Optional<String> found =
                table.header().stream()
                        .filter(name::equals)
                        .findFirst()
                        .or(
                                () ->
                                        table.header().stream()
                                                .filter(name::equalsIgnoreCase)
                                                .findFirst());
        if (found.isEmpty()) {
            faults.add(
                    Fault.in(
                            table.headerRow(),
                            "",
                            name,
                            FaultKind.COLUMN_UNKNOWN,
                            Guess.among(table.header(), name)));
        }
        return found;
    }

    private CountSheet read() {
        ColumnMapping mapping = checkedMapping();
        SheetColumns checked = new SheetColumns(table.headerRow(), table.header(), mapping);
        RowReader reader =
                new RowReader(checked, new CellReader(table.decimalComma()), dates, faults);
        int[] neverBlank = neverBlank(checked);
        List<CountRow> rows = new ArrayList<>(table.rows().size());
        for (TableRow row : table.rows()) {
            reader.read(row, rows);
            checkFilled(checked, row, neverBlank);
        }
        if (faults.number() == 0 && rows.stream().noneMatch(row -> row.count().isCounted())) {
            faults.add(Fault.in(table.headerRow(), "count", "", FaultKind.COUNT_NOWHERE));
        }
        faults.refuseIfAny();
        return new CountSheet(checked, rows, notes(checked, rows, reader));
    }

    private int[] neverBlank(SheetColumns checked) {
        Set<Integer> places = new LinkedHashSet<>();
        for (String name : filled) {
            OptionalInt index = checked.index(name);
            if (index.isEmpty()) {
                unknown(name, List.of(checked.names().split(", ")));
            } else if (index.getAsInt() != SheetColumns.STAGE_OF_WIDE_SHEET) {
                places.add(index.getAsInt());
            }
        }
        return places.stream().mapToInt(Integer::intValue).toArray();
    }

    private void checkFilled(SheetColumns checked, TableRow row, int[] neverBlank) {
        for (int index : neverBlank) {
            if (row.cells().get(index).isEmpty()) {
                String name = table.header().get(index);
                boolean sample = checked.mapping().of(KnownColumn.SAMPLE).equals(Optional.of(name));
                FaultKind kind = sample ? FaultKind.SAMPLE_BLANK : FaultKind.GROUP_BLANK;
                faults.add(Fault.in(row.row(), name, "", kind));
            }
        }
    }

    /** Holds the mapping against the header; reading on without a count would make no sense. */
    private ColumnMapping checkedMapping() {
        ColumnMapping mapping = columns.mapping();
        ColumnMapping checked = mapping;
        checkCaseOfNames();
        Set<String> used = new HashSet<>();
        for (Map.Entry<KnownColumn, String> entry : mapping.columns().entrySet()) {
            if (!table.header().contains(entry.getValue())) {
                unknown(entry.getValue(), table.header());
            } else if (!used.add(entry.getValue())) {
                faults.add(headerFault(entry.getValue(), FaultKind.COLUMN_MEANT_TWICE));
            }
        }
        List<String> wide = namedAll(mapping.countColumns());
        if (!mapping.countColumns().isEmpty()) {
            checked = wideMapping(checked.withCountColumns(wide));
        } else if (mapping.of(KnownColumn.COUNT).isEmpty()) {
            faults.add(headerFault("", FaultKind.COUNT_COLUMN_MISSING, countColumnMeant()));
        }
        if (mapping.frequency().isPresent()) {
            Optional<String> name = named(table, mapping.frequency().get(), faults);
            checked = name.isPresent() ? checked.withFrequency(name.get()) : checked;
        }
        checkCellColumns(mapping);
        if (faults.number() > table.faults().number()) {
            faults.refuseIfAny();
        }
        return checked;
    }

    /**
     * Count and count are one column to Jarwise; names that are quite the same are known already.
     */
    private void checkCaseOfNames() {
        Map<KnownColumn, String> names = new EnumMap<>(KnownColumn.class);
        for (String name : table.header()) {
            Optional<KnownColumn> known = KnownColumn.of(name);
            if (known.isPresent()) {
                String before = names.putIfAbsent(known.get(), name);
                if (before != null && !before.equals(name)) {
                    faults.add(headerFault(name, FaultKind.HEADER_REPEATED));
                }
            }
        }
    }

    private List<String> namedAll(List<String> names) {
        List<String> found = new ArrayList<>();
        for (String name : names) {
            named(table, name, faults)
                    .ifPresent(
                            known -> {
                                if (found.contains(known)) {
                                    faults.add(headerFault(known, FaultKind.COLUMN_MEANT_TWICE));
                                }
                                found.add(known);
                            });
        }
        return found;
    }

    private ColumnMapping wideMapping(ColumnMapping mapping) {
        ColumnMapping wide = mapping;
        for (KnownColumn known : List.of(KnownColumn.COUNT, KnownColumn.STAGE)) {
            Optional<String> beside = mapping.of(known);
            if (beside.isPresent() && mapping.countColumns().contains(beside.get())) {
                wide = wide.without(known);
            } else if (beside.isPresent()) {
                faults.add(headerFault(beside.get(), FaultKind.COUNT_COLUMN_TWICE));
            }
        }
        return wide;
    }

    private void checkCellColumns(ColumnMapping mapping) {
        boolean read = mapping.of(KnownColumn.CELLS_READ).isPresent();
        boolean total = mapping.of(KnownColumn.CELLS_TOTAL).isPresent();
        if (read != total) {
            String missing = read ? "cells_total" : "cells_read";
            String there = read ? "cells_read" : "cells_total";
            faults.add(headerFault(there, FaultKind.CELLS_HALF_GIVEN, missing));
        }
    }

    private String countColumnMeant() {
        return table.header().stream()
                .filter(name -> KnownColumn.meantBy(name).equals(Optional.of(KnownColumn.COUNT)))
                .findFirst()
                .orElseGet(() -> table.header().get(table.header().size() - 1));
    }

    private void unknown(String name, List<String> names) {
        faults.add(headerFault(name, FaultKind.COLUMN_UNKNOWN, Guess.among(names, name)));
    }

    private Fault headerFault(String name, FaultKind kind, String... arguments) {
        return Fault.in(table.headerRow(), name, name, kind, arguments);
    }

    private List<Message> notes(SheetColumns checked, List<CountRow> rows, RowReader reader) {
        List<Message> notes = new ArrayList<>();
        addNumber(notes, "sheet.note.empty-rows", table.emptyRows());
        addNumber(notes, "sheet.note.formulas", table.formulas());
        Map<CountCell.State, Integer> states = new EnumMap<>(CountCell.State.class);
        rows.forEach(row -> states.merge(row.count().state(), 1, Integer::sum));
        for (CountCell.State state : states.keySet()) {
            if (state != CountCell.State.COUNTED) {
                String key = "sheet.note." + state.text().replace(' ', '-');
                addNumber(notes, key, states.getOrDefault(state, 0));
            }
        }
        addNumber(notes, "sheet.note.units-blank", reader.unitsBlank());
        addNumber(notes, "sheet.note.cells-blank", reader.cellsBlank());
        unusedUnits(checked).ifPresent(notes::add);
        return notes;
    }

    private static void addNumber(List<Message> notes, String key, int number) {
        if (number > 0) {
            notes.add(Message.of(key, String.valueOf(number)));
        }
    }

    /** A column of growing points that nobody maps would make every density wrong in silence. */
    private Optional<Message> unusedUnits(SheetColumns checked) {
        if (checked.mapping().of(KnownColumn.UNITS).isPresent()) {
            return Optional.empty();
        }
        return table.header().stream()
                .filter(name -> !checked.mapping().columns().containsValue(name))
                .filter(name -> KnownColumn.meantBy(name).equals(Optional.of(KnownColumn.UNITS)))
                .findFirst()
                .map(name -> Message.of("sheet.note.units-unused", name));
    }
}
