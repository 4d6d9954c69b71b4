package jarwise.sample;

/**
 * What a sample is for. Only {@code CROP} samples say anything about the crop; the others check the
 * work.
 */
public enum SampleRole {
    CROP,
    BLANK,
    SPIKE,
    SEEDED,
    RECOUNT,
    /** A further wash of a jar that was washed before. */
    REPEAT_WASH
}
