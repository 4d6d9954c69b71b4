package jarwise.sample;

/** Where a sample stands; derived from its steps, never stored by hand. */
public enum SampleState {
    PLANNED,
    CUT,
    WASHED,
    FROZEN,
    PARTLY_READ,
    READ,
    LOST,
    SPILLED,
    DISCARDED
}
