package jarwise.stats.estimate;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** Sentences that go with a figure, and the numbers in them. */
final class Warnings {

    static final String ONE_SAMPLE =
            "One sample says nothing about clumping, so it sets no upper limit unless k is given."
                    + " Take more samples, or give a k from this site's history.";
    static final String ONE_SAMPLE_PROFILED =
            "One sample says nothing about clumping: these limits take the kindest k at every"
                    + " density and are too short.";
    static final String NO_UPPER_LIMIT =
            "These samples set no upper limit. Take more samples, or give k.";

    static final String HARDLY_LIMITED_AT_K =
            "With a k this small, these samples hardly limit the density from above. Take more"
                    + " samples.";

    private static final int MOST_SAMPLES = 200;

    private Warnings() {}

    static String hardlyLimited(OptionalInt more) {
        String start = "These samples hardly limit the density from above. ";
        String help = "a k from this site's history would help.";
        return more.isPresent()
                ? start + "%d more like them would, and ".formatted(more.getAsInt()) + help
                : start + "Even %d more like them would not; ".formatted(MOST_SAMPLES) + help;
    }

    static String ifKWereKnown(double k, double upper) {
        return "The bound takes k as unknown; if k were known to be %s it would be %s."
                .formatted(number(k), number(upper));
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.3g", value);
    }

    static OptionalInt smallest(IntPredicate enough) {
        return smallest(enough, MOST_SAMPLES);
    }

    /** The smallest number from 1 to {@code most} that will do, if more is never worse. */
    static OptionalInt smallest(IntPredicate enough, int most) {
        int low = 0; // not enough
        int high = 1;
        while (!enough.test(high)) {
            if (high == most) {
                return OptionalInt.empty();
            }
            low = high;
            high = Math.min(2 * high, most);
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (enough.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalInt.of(high);
    }
}
