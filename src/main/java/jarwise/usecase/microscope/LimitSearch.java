package jarwise.usecase.microscope;

import jarwise.decision.Verdict;
import jarwise.decision.VerdictLimits;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

/**
 * Finds with how many individuals on a filter the verdict changes: tried at 0, 1, 2, 4, 8, … and
 * halved in between. The chance to be above the line falls at first, where a few animals make the
 * samples look more alike or end the caution that holds for none, and rises from there.
 */
final class LimitSearch {

    /** Nobody counts more on one filter. */
    static final int MOST = 10_000;

    /** So little does a chance near 1 waver. */
    private static final double WAVERING = 1e-6;

    private final IntFunction<OptionalDouble> chanceAbove;
    private final VerdictLimits limits;
    private final NavigableMap<Integer, Double> tried = new TreeMap<>();

    private LimitSearch(IntFunction<OptionalDouble> chanceAbove, VerdictLimits limits) {
        this.chanceAbove = chanceAbove;
        this.limits = limits;
    }

    /**
     * Numbers on one filter.
     *
     * @param belowFrom the smallest that is below the line; empty if none is
     * @param below the largest that is below the line; empty if none is
     * @param above the smallest from which on all are above it; empty if none up to {@link #MOST}
     */
    record Found(OptionalInt belowFrom, OptionalInt below, OptionalInt above) {

        static final Found NONE =
                new Found(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());
    }

    /**
     * Searches.
     *
     * @param chanceAbove chance to be above the line by the number on the filter; empty for every
     *     number if there is no verdict
     * @param limits when a chance is a verdict
     */
    static Found search(IntFunction<OptionalDouble> chanceAbove, VerdictLimits limits) {
        if (chanceAbove.apply(0).isEmpty()) {
            return Found.NONE;
        }
        LimitSearch search = new LimitSearch(chanceAbove, limits);
        search.walkUp();
        return new Found(search.firstBelow(), search.lastBelow(), search.above());
    }

    private void walkUp() {
        double last = 1;
        for (int number = 0; ; number = Math.min(MOST, Math.max(1, 2 * number))) {
            double chance = chance(number);
            boolean settled = isAbove(number) && number > 0 && chance > last - WAVERING;
            if (settled || number == MOST) {
                return;
            }
            last = chance;
        }
    }

    private OptionalInt firstBelow() {
        for (int number : tried.keySet()) {
            if (isBelow(number)) {
                Integer before = tried.lowerKey(number);
                return OptionalInt.of(before == null ? 0 : first(before, number, this::isBelow));
            }
        }
        return OptionalInt.empty();
    }

    private OptionalInt lastBelow() {
        for (int number : tried.descendingKeySet()) {
            if (isBelow(number)) {
                Integer next = tried.higherKey(number);
                return OptionalInt.of(
                        next == null ? MOST : first(number, next, n -> !isBelow(n)) - 1);
            }
        }
        return OptionalInt.empty();
    }

    private OptionalInt above() {
        if (!isAbove(tried.lastKey())) {
            return OptionalInt.empty();
        }
        for (int number : tried.descendingKeySet()) {
            if (!isAbove(number)) {
                int next = tried.higherKey(number);
                return OptionalInt.of(first(number, next, this::isAbove));
            }
        }
        return OptionalInt.of(0);
    }

    /** The smallest number that it holds for, where it does not for the low one. */
    private static int first(int low, int high, IntPredicate holds) {
        int not = low;
        int does = high;
        while (does - not > 1) {
            int middle = (not + does) >>> 1;
            if (holds.test(middle)) {
                does = middle;
            } else {
                not = middle;
            }
        }
        return does;
    }

    private boolean isBelow(int number) {
        return Verdict.of(chance(number), limits) == Verdict.BELOW_THE_LINE;
    }

    private boolean isAbove(int number) {
        return Verdict.of(chance(number), limits) == Verdict.ABOVE_THE_LINE;
    }

    private double chance(int number) {
        return tried.computeIfAbsent(number, n -> chanceAbove.apply(n).orElseThrow());
    }
}
