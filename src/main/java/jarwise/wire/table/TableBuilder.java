package jarwise.wire.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Takes rows one after the other, from whichever kind of file, and checks their shape. */
final class TableBuilder {

    /** Codes and small counts repeat; keeping each text once saves most of the memory. */
    private static final int REMEMBERED_TEXTS = 100_000;

    private final Faults faults = new Faults();
    private final Map<String, String> texts = new HashMap<>();
    private final List<TableRow> rows = new ArrayList<>();
    private final boolean decimalComma;
    private List<String> header = List.of();
    private int headerRow;
    private int emptyRows;
    private int formulas;

    TableBuilder(boolean decimalComma) {
        this.decimalComma = decimalComma;
    }

    boolean hasHeader() {
        return headerRow > 0;
    }

    void addFormula() {
        formulas++;
    }

    Faults faults() {
        return faults;
    }

    /** {@return what a person calls the column at this place} */
    String columnName(int index) {
        return index < header.size() ? header.get(index) : letters(index);
    }

    /** Takes the next row; {@code padded} rows may be short, as workbooks do not store blanks. */
    void add(int row, List<String> cells, boolean padded) {
        List<String> trimmed = cells.stream().map(this::remembered).toList();
        boolean blank = trimmed.stream().allMatch(String::isEmpty);
        if (!hasHeader()) {
            if (!blank) {
                takeHeader(row, trimmed);
            }
        } else if (blank && (header.size() > 1 || trimmed.isEmpty())) {
            emptyRows++;
        } else {
            takeRow(row, trimmed, padded);
        }
    }

    private void takeHeader(int row, List<String> names) {
        if (names.size() > TableLimits.COLUMNS) {
            throw Faults.refusal(
                    Fault.in(
                            row,
                            "",
                            String.valueOf(names.size()),
                            FaultKind.TOO_MANY_COLUMNS,
                            String.format(Locale.ENGLISH, "%,d", TableLimits.COLUMNS)));
        }
        headerRow = row;
        header = names;
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).isEmpty()) {
                faults.add(Fault.in(row, letters(i), "", FaultKind.HEADER_BLANK));
            } else if (!seen.add(names.get(i))) {
                faults.add(Fault.in(row, letters(i), names.get(i), FaultKind.HEADER_REPEATED));
            }
        }
    }

    private void takeRow(int row, List<String> cells, boolean padded) {
        int wanted = header.size();
        List<String> whole = cells;
        if (padded && cells.size() < wanted) {
            whole = new ArrayList<>(cells);
            whole.addAll(Collections.nCopies(wanted - cells.size(), ""));
        }
        if (whole.size() != wanted) {
            boolean missing = whole.size() < wanted;
            String column = missing ? columnName(whole.size()) : letters(wanted);
            String value = missing ? "" : whole.get(wanted);
            FaultKind kind = missing ? FaultKind.CELLS_MISSING : FaultKind.CELLS_EXTRA;
            faults.add(
                    Fault.in(
                            row,
                            column,
                            value,
                            kind,
                            String.valueOf(whole.size()),
                            String.valueOf(wanted)));
            return;
        }
        for (int i = 0; i < wanted; i++) {
            if (whole.get(i).indexOf('\0') >= 0) {
                faults.add(Fault.in(row, columnName(i), whole.get(i), FaultKind.NUL_CHARACTER));
            }
        }
        refuseTooMany(row);
        rows.add(new TableRow(row, whole));
    }

    private void refuseTooMany(int row) {
        if (rows.size() >= TableLimits.ROWS) {
            throw Faults.refusal(
                    Fault.in(
                            row,
                            "",
                            "",
                            FaultKind.TOO_MANY_ROWS,
                            String.format(Locale.ENGLISH, "%,d", TableLimits.ROWS)));
        }
        if ((rows.size() + 1L) * header.size() > TableLimits.CELLS) {
            throw Faults.refusal(
                    Fault.in(
                            row,
                            "",
                            "",
                            FaultKind.TOO_MANY_CELLS,
                            String.format(Locale.ENGLISH, "%,d", TableLimits.CELLS)));
        }
    }

    Table build() {
        if (!hasHeader()) {
            throw Faults.refusal(Fault.ofFile(FaultKind.FILE_EMPTY));
        }
        if (rows.isEmpty() && faults.number() == 0) {
            faults.add(Fault.in(headerRow, "", "", FaultKind.NO_DATA_ROW));
        }
        return new Table(headerRow, header, rows, decimalComma, emptyRows, formulas, faults);
    }

    private String remembered(String text) {
        String stripped = withoutSpaceAround(text);
        if (texts.size() < REMEMBERED_TEXTS) {
            String known = texts.putIfAbsent(stripped, stripped);
            return known == null ? stripped : known;
        }
        return texts.getOrDefault(stripped, stripped);
    }

    /** Spreadsheets paste in spaces that do not break, which {@code strip} leaves standing. */
    private static String withoutSpaceAround(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isSpace(text.charAt(from))) {
            from++;
        }
        while (to > from && isSpace(text.charAt(to - 1))) {
            to--;
        }
        return text.substring(from, to);
    }

    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    /** {@return the letters a spreadsheet shows above a column: 0 is A, 26 is AA} */
    static String letters(int index) {
        String last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : letters(index / 26 - 1) + last;
    }
}
