package jarwise.stats.space;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which benches of a map are neighbours: each pair once, its weight 1. */
public final class Neighbours {

    private static final int MOST_BENCHES = 10_000;
    private static final int MOST_PAIRS = 100_000;
    private static final double ROUNDING = 1e-9;

    private final int[] first;
    private final int[] second;
    private final int[] number;

    private Neighbours(int benches, List<int[]> pairs) {
        first = pairs.stream().mapToInt(pair -> pair[0]).toArray();
        second = pairs.stream().mapToInt(pair -> pair[1]).toArray();
        number = new int[benches];
        for (int i = 0; i < first.length; i++) {
            number[first[i]]++;
            number[second[i]]++;
        }
    }

    /**
     * Finds the neighbours on a map.
     *
     * <p>Two benches of one house are neighbours if their places are no farther apart than {@code
     * reach}. On a map in rows and columns a reach of 1 takes those that share an edge or an aisle,
     * and not those across a corner.
     *
     * @param benches at most 10,000, no two in one place
     * @param reach distance, in the unit of the places; above 0
     * @return their neighbours
     * @throws InvalidInput if two benches stand in one place, or there are too many benches or
     *     pairs
     */
    public static Neighbours of(List<BenchCount> benches, double reach) {
        Require.positive("reach", reach);
        if (benches.size() > MOST_BENCHES) {
            throw new InvalidInput(
                    "There are %d benches; %d at most are allowed. Maybe keep one house."
                            .formatted(benches.size(), MOST_BENCHES));
        }
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < benches.size(); i++) {
            for (int j = i + 1; j < benches.size(); j++) {
                if (near(benches.get(i), benches.get(j), reach)) {
                    pairs.add(new int[] {i, j});
                }
            }
            requireFew(pairs.size(), reach);
        }
        return new Neighbours(benches.size(), pairs);
    }

    private static boolean near(BenchCount a, BenchCount b, double reach) {
        if (!a.house().equals(b.house())) {
            return false;
        }
        double distance = Math.hypot(a.x() - b.x(), a.y() - b.y());
        if (distance == 0) {
            throw new InvalidInput(
                    "Benches %s and %s both stand at %s, %s; each needs a place of its own."
                            .formatted(a.bench(), b.bench(), a.x(), a.y()));
        }
        return distance <= reach * (1 + ROUNDING);
    }

    private static void requireFew(int pairs, double reach) {
        if (pairs > MOST_PAIRS) {
            throw new InvalidInput(
                    ("The reach is %s; it makes more than %d pairs of neighbours, and so many are"
                                    + " not allowed. Maybe a shorter one.")
                            .formatted(reach, MOST_PAIRS));
        }
    }

    /** {@return number of pairs} */
    public int pairs() {
        return first.length;
    }

    /** {@return number of benches, with neighbours or without} */
    public int benches() {
        return number.length;
    }

    /** {@return benches without a neighbour} */
    public long alone() {
        return Arrays.stream(number).filter(n -> n == 0).count();
    }

    /**
     * Sum over all pairs of the product of the two values.
     *
     * @param values one a bench
     * @return the sum
     */
    double products(double[] values) {
        double sum = 0;
        for (int i = 0; i < first.length; i++) {
            sum += values[first[i]] * values[second[i]];
        }
        return sum;
    }

    /**
     * How many marked neighbours each bench has.
     *
     * @param marked whether a bench is marked
     * @return one number a bench
     */
    int[] markedBeside(boolean[] marked) {
        int[] beside = new int[number.length];
        for (int i = 0; i < first.length; i++) {
            beside[first[i]] += marked[second[i]] ? 1 : 0;
            beside[second[i]] += marked[first[i]] ? 1 : 0;
        }
        return beside;
    }
}
