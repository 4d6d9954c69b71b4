package jarwise.tally;

/** Why individuals that were counted are in no estimate. */
public enum AsideReason {
    /** Their cell counts as one that could not be read. */
    OBSCURED,
    /** Another device had read their cell to its end, so they may be counted there already. */
    READ_TWICE,
    /** Their cell is in no completed pass, and cells of a broken pass are no sample. */
    BROKEN_OFF
}
