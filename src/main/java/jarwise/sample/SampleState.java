package jarwise.sample;

/** Where a sample stands; derived from its steps, never stored by hand. */
public enum SampleState {
    PLANNED,
    CUT,
    WASHED,
    FROZEN,
    /** Cells are being counted; nothing of it is in any estimate until the filter is finished. */
    READING,
    PARTLY_READ,
    READ,
    LOST,
    SPILLED,
    DISCARDED
}
