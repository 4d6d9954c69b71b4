package jarwise.stats.filter;

/** Why a reader may stop at the end of a pass. */
public enum StopReason {
    /** Nothing is left to read. */
    EVERY_CELL_READ,
    /** What is left would hardly change the verdict of the round. */
    DECISION_SAFE,
    /** The number on the filter is known as well as was wanted. */
    PRECISION_REACHED,
    /** The minutes set for this filter are over. */
    MINUTES_USED_UP
}
