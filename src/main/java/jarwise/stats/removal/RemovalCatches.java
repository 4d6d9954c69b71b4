package jarwise.stats.removal;

import jarwise.base.InvalidInput;
import java.util.Arrays;
import java.util.List;

/**
 * What came off in each wash of the same material.
 *
 * @param catches individuals in the first wash, the second and so on; 2 to 100 washes, each 0 to
 *     1,000,000,000, not all of them 0
 */
public record RemovalCatches(List<Long> catches) {

    private static final int MOST_WASHES = 100;
    private static final long MOST_INDIVIDUALS = 1_000_000_000L;

    /** Checks the washes. */
    public RemovalCatches {
        catches = List.copyOf(catches);
        if (catches.size() < 2 || catches.size() > MOST_WASHES) {
            throw new InvalidInput(
                    ("There are %d washes; 2 to %d of the same material are needed."
                                    + " Maybe wash it once more and count what still comes off.")
                            .formatted(catches.size(), MOST_WASHES));
        }
        for (long individuals : catches) {
            if (individuals < 0 || individuals > MOST_INDIVIDUALS) {
                throw new InvalidInput(
                        "A wash has %d individuals; 0 to 1,000,000,000 are allowed."
                                .formatted(individuals));
            }
        }
        if (catches.stream().allMatch(individuals -> individuals == 0)) {
            throw new InvalidInput(
                    "Every wash has 0 individuals; at least 1 must have come off in one of them."
                            + " Maybe wash material on which insects were seen.");
        }
    }

    /** {@return the washes given one by one} */
    public static RemovalCatches of(long... individuals) {
        return new RemovalCatches(Arrays.stream(individuals).boxed().toList());
    }

    /** {@return how many washes there were} */
    public int washes() {
        return catches.size();
    }

    /** {@return individuals in all washes together, T} */
    public long total() {
        return catches.stream().mapToLong(Long::longValue).sum();
    }

    /** {@return washes that individuals had still to miss after they came off, added up, X} */
    long washesAfter() {
        long sum = 0;
        for (int i = 0; i < washes(); i++) {
            sum += (washes() - 1 - i) * catches.get(i);
        }
        return sum;
    }

    /** {@return washes that individuals had withstood before they came off, added up} */
    long washesBefore() {
        return (washes() - 1) * total() - washesAfter();
    }

    /** {@return the first wash} */
    long first() {
        return catches.get(0);
    }
}
