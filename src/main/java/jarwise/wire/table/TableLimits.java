package jarwise.wire.table;

/**
 * How large a table may be. A scouting season of a large nursery is some 50,000 rows; the limits
 * leave twenty times that and keep a reading within a few hundred megabytes of memory.
 */
public final class TableLimits {

    /** A million rows of a count sheet are about 50 MB of CSV. */
    public static final int BYTES = 50 * 1024 * 1024;

    /** Spreadsheet programs end at 1,048,576 rows; a sheet cut off there is noticed as too long. */
    public static final int ROWS = 1_000_000;

    /** Wide sheets have a column a stage; 500 is far beyond any, and well below a spreadsheet's. */
    public static final int COLUMNS = 500;

    /** Bounds the memory of a table that is both long and wide: 40 MB of references. */
    public static final int CELLS = 10_000_000;

    /** A workbook has a dozen parts and a few for each worksheet. */
    public static final int WORKBOOK_PARTS = 2_000;

    /** A worksheet of half a million rows unpacks to about this. */
    public static final long UNPACKED_BYTES = 300L * 1024 * 1024;

    /** Worksheets shrink to between a fifth and a fiftieth; a bomb to a thousandth. */
    public static final int PACKING_RATIO = 200;

    /** Below this size a part may be packed as tightly as it likes. */
    public static final long RATIO_FREE_BYTES = 5L * 1024 * 1024;

    private TableLimits() {}
}
