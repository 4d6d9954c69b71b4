package jarwise.stats.filter;

import jarwise.base.Require;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.LongFunction;

/**
 * When a reader may stop before the whole filter is read. To be asked at the end of a pass only.
 *
 * @param detection whether the round looks for a pest that should not be there: then an empty part
 *     is never a reason to stop
 * @param wantedRelativeError standard error over estimate that is good enough, above 0; empty if
 *     there is no such wish
 * @param minutesAllowed minutes set for one filter, above 0; empty if there is no limit
 */
public record StopRules(
        boolean detection, OptionalDouble wantedRelativeError, OptionalDouble minutesAllowed) {

    /** A verdict is safe below this chance of another one. */
    public static final double SAFE_BELOW = 0.05;

    private static final int MOST_COUNTS = 400;
    private static final int POINTS = 200;
    private static final double NEGLIGIBLE = 1e-6;

    /** Checks the wishes. */
    public StopRules {
        wantedRelativeError.ifPresent(error -> Require.positive("wantedRelativeError", error));
        minutesAllowed.ifPresent(minutes -> Require.positive("minutesAllowed", minutes));
    }

    /**
     * May the reader stop now?
     *
     * @param reading what the completed passes say
     * @param chanceOfOtherVerdict from {@link #chanceOfOtherVerdict}; empty where the round has no
     *     action threshold
     * @param minutes minutes spent on this filter so far
     * @return the first reason that holds, in the order of {@link StopReason}; empty if the reader
     *     should go on, as always when none was found in a part of the filter and detection is the
     *     purpose
     */
    public Optional<StopReason> reason(
            PartialReading reading, OptionalDouble chanceOfOtherVerdict, double minutes) {
        if (reading.shareRead() == 1) {
            return Optional.of(StopReason.EVERY_CELL_READ);
        }
        if (detection && reading.found() == 0) {
            return Optional.empty();
        }
        if (chanceOfOtherVerdict.orElse(1) < SAFE_BELOW) {
            return Optional.of(StopReason.DECISION_SAFE);
        }
        if (reading.relativeStandardError() <= wantedRelativeError.orElse(0)) {
            return Optional.of(StopReason.PRECISION_REACHED);
        }
        return minutes >= minutesAllowed.orElse(Double.POSITIVE_INFINITY)
                ? Optional.of(StopReason.MINUTES_USED_UP)
                : Optional.empty();
    }

    /**
     * How likely is another verdict of the round once the rest of this filter is read?
     *
     * <p>The verdict is worked out for each number that the unread cells may hold, and its chance
     * added up where it differs; where more than 400 numbers are likely, for 200 of them that stand
     * for equal shares, which is right to about 1 in 200 for each change of verdict. <b>Assumes</b>
     * the other samples of the round as they are.
     *
     * <p><b>Source.</b> Our own; no published method. Checked by hand-sized cases.
     *
     * @param <V> what a verdict is
     * @param reading what the completed passes say
     * @param now the verdict as things stand
     * @param whenRead the verdict of the round if this whole filter holds so many individuals
     * @return chance, 0 to 1
     */
    public static <V> double chanceOfOtherVerdict(
            PartialReading reading, V now, LongFunction<V> whenRead) {
        UnreadIndividuals unread = reading.unread();
        long least = (long) Math.floor(unread.quantile(NEGLIGIBLE));
        long most = (long) Math.ceil(unread.quantile(1 - NEGLIGIBLE));
        double chance = 0;
        if (most - least <= MOST_COUNTS) {
            double below = 0;
            for (long rest = least; rest <= most; rest++) {
                double upTo = rest == most ? 1 : unread.cumulativeProbability(rest);
                boolean other = !whenRead.apply(reading.found() + rest).equals(now);
                chance += other ? upTo - below : 0;
                below = upTo;
            }
            return chance;
        }
        Map<Long, Boolean> known = new HashMap<>();
        for (int i = 0; i < POINTS; i++) {
            long rest = Math.round(unread.quantile((i + 0.5) / POINTS));
            boolean other =
                    known.computeIfAbsent(
                            rest, r -> !whenRead.apply(reading.found() + r).equals(now));
            chance += other ? 1.0 / POINTS : 0;
        }
        return chance;
    }
}
