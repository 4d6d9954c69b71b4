package jarwise.stats.efficacy;

/** How the limits of an efficacy are made. */
public enum EfficacyInterval {
    /**
     * From the likelihood integrated over k and all densities: right with few jars, the default.
     */
    CALIBRATED,
    /** From the likelihood's drop, k fitted anew at each value: as general software gives it. */
    PROFILE
}
