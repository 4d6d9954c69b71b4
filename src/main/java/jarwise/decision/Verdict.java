package jarwise.decision;

/** What can be said about a density against an action threshold. */
public enum Verdict {
    BELOW_THE_LINE("below the line"),
    ABOVE_THE_LINE("above the line"),
    CANNOT_TELL("cannot tell");

    private final String text;

    Verdict(String text) {
        this.text = text;
    }

    /** {@return the words used on the command line and in files; pages translate} */
    public String text() {
        return text;
    }

    /**
     * Classes a density by the chance that it is above the action threshold.
     *
     * @param probabilityAboveThreshold P(density above the threshold), 0 to 1
     * @param limits how sure one must be
     * @return below if the chance is at most the lower limit, above if at least the upper one
     */
    public static Verdict of(double probabilityAboveThreshold, VerdictLimits limits) {
        if (probabilityAboveThreshold <= limits.below()) {
            return BELOW_THE_LINE;
        }
        return probabilityAboveThreshold >= limits.above() ? ABOVE_THE_LINE : CANNOT_TELL;
    }
}
