package jarwise.sample;

/**
 * Steps in the life of a sample. Each is recorded with its time and what was measured; the last
 * three end it without a count.
 */
public enum Step {
    REGISTERED,
    CUT,
    WASHED,
    FREEZER_IN,
    FREEZER_OUT,
    READ,
    LOST,
    SPILLED,
    DISCARDED;

    /** {@return whether the sample can no longer be read} */
    public boolean endsWithoutCount() {
        return this == LOST || this == SPILLED || this == DISCARDED;
    }
}
