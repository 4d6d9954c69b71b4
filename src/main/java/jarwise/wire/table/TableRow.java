package jarwise.wire.table;

import java.util.List;

/**
 * One row below the header.
 *
 * @param row number as a person sees it in the spreadsheet
 * @param cells as many texts as the header has, without white space around them
 */
public record TableRow(int row, List<String> cells) {}
