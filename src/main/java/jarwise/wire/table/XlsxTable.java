package jarwise.wire.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.jspecify.annotations.Nullable;

/** Reads one worksheet of an xlsx workbook that {@link WorkbookGuard} has let through. */
final class XlsxTable {

    /** Built-in formats 14 to 22 and 45 to 47 are dates and times; others are known by letters. */
    private static final Pattern DATE_FORMAT = Pattern.compile("[yYdD]");

    private static final Pattern NOT_A_LETTER_OF_A_FORMAT =
            Pattern.compile("\"[^\"]*\"|\\[[^\\]]*]|\\\\.");

    private XlsxTable() {}

    static Table read(byte[] bytes, Optional<String> worksheet) {
        WorkbookGuard.check(bytes);
        // Asks for formats, without which a date is only a number.
        ReadingOptions options = new ReadingOptions(true, true);
        try (ReadableWorkbook workbook =
                new ReadableWorkbook(new ByteArrayInputStream(bytes), options)) {
            Sheet sheet = chosen(workbook, worksheet);
            TableBuilder table = new TableBuilder(false);
            try (Stream<Row> rows = sheet.openStream()) {
                rows.forEach(row -> add(row, table));
            }
            return table.build();
        } catch (IOException
                | ExcelReaderException
                | IllegalArgumentException
                | IndexOutOfBoundsException
                | NullPointerException e) {
            // What the library throws on parts that are missing or make no sense.
            throw Faults.broken(e);
        }
    }

    private static Sheet chosen(ReadableWorkbook workbook, Optional<String> worksheet) {
        if (worksheet.isEmpty()) {
            return workbook.getFirstSheet();
        }
        return workbook.findSheet(worksheet.get())
                .orElseThrow(
                        () ->
                                Faults.refusal(
                                        new Fault(
                                                0,
                                                "",
                                                worksheet.get(),
                                                FaultKind.WORKSHEET_UNKNOWN,
                                                List.of(names(workbook)))));
    }

    private static String names(ReadableWorkbook workbook) {
        return workbook.getSheets().map(Sheet::getName).collect(Collectors.joining(", "));
    }

    private static void add(Row row, TableBuilder table) {
        List<String> cells = new ArrayList<>(row.getCellCount());
        for (int i = 0; i < row.getCellCount(); i++) {
            Cell cell = row.hasCell(i) ? row.getCell(i) : null;
            cells.add(text(cell, row.getRowNum(), i, table));
        }
        while (!cells.isEmpty() && cells.get(cells.size() - 1).isBlank()) {
            cells.remove(cells.size() - 1);
        }
        table.add(row.getRowNum(), cells, true);
    }

    private static String text(@Nullable Cell cell, int row, int column, TableBuilder table) {
        if (cell == null || cell.getType() == CellType.EMPTY) {
            return "";
        }
        String formula = cell.getFormula();
        if (formula != null && !formula.isEmpty()) {
            table.addFormula();
            if (cell.getRawValue() == null || cell.getRawValue().isEmpty()) {
                table.faults()
                        .add(
                                Fault.in(
                                        row,
                                        table.columnName(column),
                                        "=" + formula,
                                        FaultKind.FORMULA_WITHOUT_VALUE));
                return "";
            }
        }
        return switch (cell.getType()) {
            case NUMBER -> isDate(cell) ? date(cell) : plain(cell.asNumber());
            case FORMULA -> formulaText(cell);
            case BOOLEAN -> String.valueOf(cell.asBoolean());
            default -> raw(cell);
        };
    }

    private static String formulaText(Cell cell) {
        try {
            return plain(new BigDecimal(cell.getRawValue()));
        } catch (NumberFormatException e) {
            return raw(cell);
        }
    }

    private static String raw(Cell cell) {
        String text = cell.getType() == CellType.STRING ? cell.asString() : cell.getRawValue();
        return text == null ? "" : text;
    }

    /** A spreadsheet keeps 1000 as 1E3 and 0.1 + 0.2 with seventeen digits; people see neither. */
    private static String plain(BigDecimal number) {
        if (Math.abs((long) number.scale()) > 400) {
            return number.toString();
        }
        BigDecimal short15 =
                number.precision() > 15 ? number.round(new java.math.MathContext(15)) : number;
        return short15.signum() == 0 ? "0" : short15.stripTrailingZeros().toPlainString();
    }

    private static boolean isDate(Cell cell) {
        String format = cell.getDataFormatString();
        if (format == null) {
            return false;
        }
        return DATE_FORMAT.matcher(NOT_A_LETTER_OF_A_FORMAT.matcher(format).replaceAll("")).find();
    }

    private static String date(Cell cell) {
        LocalDateTime time = cell.asDate();
        return time.toLocalTime().equals(LocalTime.MIDNIGHT)
                ? time.toLocalDate().toString()
                : time.toString();
    }
}
