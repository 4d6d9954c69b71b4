package jarwise.wire.table;

import java.util.List;

/**
 * A table as it came in.
 *
 * @param headerRow row number of the header, mostly 1
 * @param header names of the columns; where one is blank or repeated, the faults say so
 * @param rows rows with at least one cell that is not blank, or every row if there is one column
 * @param decimalComma whether numbers may be written 2,5
 * @param emptyRows rows that were left out because all their cells are blank
 * @param formulas cells that are formulas; their last worked-out values were read
 * @param faults what is wrong with the header and the shape of rows, which are then left out;
 *     {@code SheetReader} adds what is wrong with the cells and refuses
 */
public record Table(
        int headerRow,
        List<String> header,
        List<TableRow> rows,
        boolean decimalComma,
        int emptyRows,
        int formulas,
        Faults faults) {}
