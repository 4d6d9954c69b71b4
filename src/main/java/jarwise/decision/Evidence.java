package jarwise.decision;

import java.util.Map;

/**
 * The samples a finding rests on, and those it does not.
 *
 * @param samples random crop samples that were read for this pest and count in the mean
 * @param samplingUnits growing points in them
 * @param individuals counted in them
 * @param notRead random crop samples that were cut and can still be read
 * @param leftOut samples that say nothing about the mean, by reason
 * @param flags samples that count but were not handled to protocol, by what was off
 */
public record Evidence(
        int samples,
        double samplingUnits,
        long individuals,
        int notRead,
        Map<LeftOut, Integer> leftOut,
        Map<Flag, Integer> flags) {

    public Evidence {
        leftOut = Map.copyOf(leftOut);
        flags = Map.copyOf(flags);
    }

    /** Why a sample does not enter the mean. */
    public enum LeftOut {
        TARGETED,
        PLAIN_WATER,
        LOST,
        NOT_LOOKED_FOR
    }

    /** What was off with a sample that still counts. */
    public enum Flag {
        PACKED,
        EARLY,
        LATE,
        PARTLY_READ
    }

    /** {@return individuals counted per growing point, nothing corrected; 0 without samples} */
    public double countedDensity() {
        return samples == 0 ? 0 : individuals / samplingUnits;
    }
}
