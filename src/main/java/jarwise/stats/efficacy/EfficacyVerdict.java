package jarwise.stats.efficacy;

import java.util.OptionalDouble;

/** What can be said about a treatment against the efficacy that was wanted. */
public enum EfficacyVerdict {
    /** The whole interval is at or over the target. */
    WORKED("worked"),
    /** It did something, and whether it reached the target is open. */
    PARTLY("partly"),
    /** The whole interval is under the target. */
    FAILED("failed"),
    /** Neither. */
    CANNOT_TELL("cannot tell");

    private final String text;

    EfficacyVerdict(String text) {
        this.text = text;
    }

    /** {@return the words used on the command line and in files; pages translate} */
    public String text() {
        return text;
    }

    /**
     * Did it work?
     *
     * <p>Worked if the lower limit reaches the target, failed if the upper limit is under it,
     * otherwise partly if the lower limit is above 0. A limit that is not there meets no condition.
     *
     * @param lower lower limit of the efficacy; empty if there is none
     * @param upper upper limit; empty if there is none
     * @param target efficacy wanted, in (0, 1)
     * @return the verdict
     */
    public static EfficacyVerdict of(OptionalDouble lower, OptionalDouble upper, double target) {
        if (lower.isPresent() && lower.getAsDouble() >= target) {
            return WORKED;
        }
        if (upper.isPresent() && upper.getAsDouble() < target) {
            return FAILED;
        }
        return lower.isPresent() && lower.getAsDouble() > 0 ? PARTLY : CANNOT_TELL;
    }
}
