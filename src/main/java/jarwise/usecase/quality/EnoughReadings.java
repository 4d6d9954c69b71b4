package jarwise.usecase.quality;

import jarwise.stats.count.FoundShare;
import java.util.OptionalInt;

/**
 * When a measured share is enough to go by: five readings or more, and limits no farther apart than
 * three in ten. Both are our own choice ({@code docs/methods.md}, "Is a share measured well
 * enough?").
 */
final class EnoughReadings {

    /** Readings below which filters that differ among themselves would not show. */
    static final int LEAST = 5;

    /** Width of the limits above which a share says little. */
    static final double WIDEST = 0.3;

    static final double LEVEL = 0.95;

    /** Nobody reads more known filters than that to learn one number. */
    private static final int MOST = 200;

    private EnoughReadings() {}

    static boolean tells(int readings, double lower, double upper) {
        return readings >= LEAST && upper - lower <= WIDEST;
    }

    /** {@return readings in all that would tell, if they go on like these} */
    static OptionalInt needed(KnownFinds so) {
        for (int readings = Math.max(LEAST, so.readings() + 1); readings <= MOST; readings++) {
            double times = readings / (double) so.readings();
            long known = Math.round(so.known() * times);
            long found = Math.min(known, Math.round(so.found() * times));
            FoundShare share = FoundShare.of(found, Math.max(1, known), LEVEL);
            if (tells(readings, share.lower(), share.upper())) {
                return OptionalInt.of(readings);
            }
        }
        return OptionalInt.empty();
    }
}
