package jarwise.tally;

/**
 * Names of what a step may note. The same words stand in sheets, JSON and the database. Times are
 * ISO instants; codes are the texts of the enums of {@code jarwise.sample} in lower case.
 */
public final class Facts {

    /** When the step really was, where it was typed in later; blank where nobody noted it. */
    public static final String AT = "at";

    public static final String METHOD = "method";
    public static final String PURPOSE = "purpose";
    public static final String ROLE = "role";
    public static final String COLLECTED_ON = "collected_on";
    public static final String HOUSE = "house";
    public static final String BENCH = "bench";
    public static final String CROP_LOT = "crop_lot";
    public static final String CROP = "crop";
    public static final String VARIETY = "variety";
    public static final String SAMPLING_UNITS = "sampling_units";
    public static final String FLUID = "fluid";
    public static final String FILL = "fill";
    public static final String SHAKE_SECONDS = "shake_seconds";
    public static final String RINSES = "rinses";
    public static final String CONDITION = "condition";
    public static final String READER = "reader";
    public static final String CELLS_READ = "cells_read";

    /** All readable cells; where presses came cell by cell, all cells of the layout. */
    public static final String CELLS_READABLE = "cells_readable";

    public static final String CELLS_OBSCURED = "cells_obscured";
    public static final String MINUTES = "minutes";
    public static final String KNOWN = "known";
    public static final String RECOUNT_OF = "recount_of";

    /** Prefix of columns of a sheet that Jarwise has no word for. */
    public static final String OTHER = "other:";

    private Facts() {}
}
