package jarwise.sample;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.time.Duration;
import java.time.LocalDate;

/**
 * How this site takes, keeps and reads its samples from a day on. The standard values are common
 * practice, without a source.
 *
 * @param holdsFrom first day
 * @param freezeHours hours in the freezer before a filter may be read
 * @param readWithinHours hours after washing by which it should be read
 * @param growingPointsPerJar growing points cut into one jar
 * @param shakeSecondsLeast shortest shake to protocol
 * @param shakeSecondsMost longest shake to protocol
 * @param filterCells cells of the grid on the filter
 * @param note what else belongs to it
 */
public record ProtocolVersion(
        LocalDate holdsFrom,
        double freezeHours,
        double readWithinHours,
        int growingPointsPerJar,
        int shakeSecondsLeast,
        int shakeSecondsMost,
        int filterCells,
        String note) {

    public ProtocolVersion {
        Require.notNegative("hours in the freezer", freezeHours);
        Require.positive("hours to read within", readWithinHours);
        Require.atLeast("growing points per jar", growingPointsPerJar, 1);
        Require.atLeast("cells of the filter", filterCells, 1);
        if (!(freezeHours < readWithinHours)) {
            throw new InvalidInput(
                    "hours in the freezer is %s; it must be less than hours to read within, %s."
                            .formatted(freezeHours, readWithinHours));
        }
    }

    /** {@return the values that many scouts use: common practice, no source} */
    public static ProtocolVersion standard(LocalDate holdsFrom) {
        return new ProtocolVersion(holdsFrom, 24, 72, 10, 40, 60, 40, "");
    }

    /** {@return time in the freezer before a filter may be read} */
    public Duration freeze() {
        return Duration.ofMinutes(Math.round(freezeHours * 60));
    }

    /** {@return time after washing by which a filter should be read} */
    public Duration readWithin() {
        return Duration.ofMinutes(Math.round(readWithinHours * 60));
    }
}
