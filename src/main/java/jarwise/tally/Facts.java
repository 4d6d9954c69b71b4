package jarwise.tally;

import java.util.Set;

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

    /** In how many passes the filter is walked: 1 for the whole filter in one go. */
    public static final String PASSES = "passes";

    /** Place in the snake of cells at which the first pass starts, 0 to passes − 1. */
    public static final String PASS_START = "pass_start";

    public static final String MINUTES = "minutes";
    public static final String KNOWN = "known";
    public static final String RECOUNT_OF = "recount_of";

    /** Code of the known filter that is read. */
    public static final String SEEDED_OF = "seeded_of";

    /** Code of the jar whose plants were washed again, and which wash this is, 2 or more. */
    public static final String REPEAT_OF = "repeat_of";

    public static final String WASH_NUMBER = "wash_number";

    /** Visible damage where the sample was cut, 0 (none) to 3 (heavy). */
    public static final String DAMAGE = "damage";

    /** Natural enemies seen on the plants that were cut. */
    public static final String BENEFICIALS = "beneficials";

    /** Plants tapped at the same bench, and insects that fell. */
    public static final String TAPPED_PLANTS = "tapped_plants";

    public static final String TAPPED_INSECTS = "tapped_insects";

    /** Insects on the card that hangs at the same bench. */
    public static final String CARD_INSECTS = "card_insects";

    /** Foam at the rim when the jar was opened: yes or no. */
    public static final String FOAM = "foam";

    /** Who allowed entry before the end of a re-entry interval, why, and with what protection. */
    public static final String EARLY_ENTRY_BY = "early_entry_by";

    public static final String EARLY_ENTRY_REASON = "early_entry_reason";
    public static final String EARLY_ENTRY_PROTECTION = "early_entry_protection";

    /** Codes read from lid and base when the filter went into the freezer. */
    public static final String LID = "lid";

    public static final String BASE = "base";

    /** Prefix of columns of a sheet that Jarwise has no word for. */
    public static final String OTHER = "other:";

    /** Every fact that a step may note; columns of sheets come on top of these. */
    public static final Set<String> ALL =
            Set.of(
                    AT,
                    METHOD,
                    PURPOSE,
                    ROLE,
                    COLLECTED_ON,
                    HOUSE,
                    BENCH,
                    CROP_LOT,
                    CROP,
                    VARIETY,
                    SAMPLING_UNITS,
                    FLUID,
                    FILL,
                    SHAKE_SECONDS,
                    RINSES,
                    CONDITION,
                    READER,
                    CELLS_READ,
                    CELLS_READABLE,
                    CELLS_OBSCURED,
                    PASSES,
                    PASS_START,
                    MINUTES,
                    KNOWN,
                    RECOUNT_OF,
                    SEEDED_OF,
                    REPEAT_OF,
                    WASH_NUMBER,
                    DAMAGE,
                    BENEFICIALS,
                    TAPPED_PLANTS,
                    TAPPED_INSECTS,
                    CARD_INSECTS,
                    FOAM,
                    EARLY_ENTRY_BY,
                    EARLY_ENTRY_REASON,
                    EARLY_ENTRY_PROTECTION,
                    LID,
                    BASE);

    private Facts() {}
}
