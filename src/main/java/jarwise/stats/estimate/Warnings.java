package jarwise.stats.estimate;

import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;

/** Sentences that go with a figure, and the numbers in them. */
final class Warnings {

    static final String ONE_SAMPLE =
            "One sample says nothing about clumping, so it sets no upper limit unless k is given."
                    + " Take more samples, or give a k from this site's history.";
    static final String NO_UPPER_LIMIT =
            "These samples set no upper limit. Take more samples, or give k.";

    private static final int MOST_SAMPLES = 200;

    private Warnings() {}

    static String hardlyLimited(Optional<Integer> more) {
        String help = "a k from this site's history would help.";
        return "These samples hardly limit the density from above. "
                + more.map(n -> "%d more like them would, and ".formatted(n))
                        .orElse("Even %d more like them would not; ".formatted(MOST_SAMPLES))
                + help;
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.3g", value);
    }

    /** The smallest number from 1 to 200 that will do, if more is never worse. */
    static Optional<Integer> smallest(IntPredicate enough) {
        int high = 1;
        while (!enough.test(high)) {
            if (high == MOST_SAMPLES) {
                return Optional.empty();
            }
            high = Math.min(2 * high, MOST_SAMPLES);
        }
        int low = high / 2; // not enough, or 0
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (enough.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Optional.of(high);
    }
}
