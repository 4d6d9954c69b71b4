package jarwise.wire.table;

import java.util.Locale;

/**
 * What can be wrong with a sheet. The sentence of each stands in the message files under {@link
 * #key()}: {0} the row, {1} the column, {2} the value, {3} and on what this kind adds.
 */
public enum FaultKind {
    FILE_EMPTY,
    FILE_TOO_LARGE,
    FILE_NOT_FOUND,
    FILE_UNREADABLE,
    FILE_NOT_A_SHEET,
    FILE_NOT_UTF8,
    FILE_UTF16,
    WORKBOOK_OLD,
    WORKBOOK_BROKEN,
    WORKBOOK_UNSAFE,
    WORKSHEET_UNKNOWN,
    NUL_CHARACTER,
    QUOTE_UNCLOSED,
    TOO_MANY_ROWS,
    TOO_MANY_COLUMNS,
    TOO_MANY_CELLS,
    HEADER_BLANK,
    HEADER_REPEATED,
    CELLS_MISSING,
    CELLS_EXTRA,
    FORMULA_WITHOUT_VALUE,
    NO_DATA_ROW,
    COLUMN_UNKNOWN,
    COLUMN_NOT_KNOWN_TO_MAP,
    COLUMN_MEANT_TWICE,
    COUNT_COLUMN_MISSING,
    COUNT_COLUMN_TWICE,
    EXPLANATION_LEFT,
    COUNT_NOT_WHOLE,
    COUNT_NEGATIVE,
    COUNT_TOO_LARGE,
    COUNT_NOT_A_NUMBER,
    COUNT_NOWHERE,
    NUMBER_GROUPED,
    UNITS_NOT_POSITIVE,
    CELLS_NOT_POSITIVE,
    CELLS_READ_ABOVE_TOTAL,
    CELLS_HALF_GIVEN,
    FREQUENCY_NOT_A_COUNT,
    SAMPLES_TOO_MANY,
    DATE_UNREADABLE,
    DATE_AMBIGUOUS,
    GROUP_BLANK,
    SAMPLE_BLANK,
    SAMPLE_DISAGREES,
    WORD_NOT_ALLOWED,
    PEST_UNKNOWN,
    STAGE_UNKNOWN,
    COUNTED_TWICE,
    SAMPLE_CODE_UNUSABLE,
    FREQUENCY_OF_ONE_SAMPLE,
    NO_ROW_KEPT,
    NOTHING_TO_FILL;

    /** {@return the key of its sentence in the message files} */
    public String key() {
        return "sheet.fault." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
