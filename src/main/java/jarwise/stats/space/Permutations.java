package jarwise.stats.space;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import java.util.function.ToDoubleFunction;

/**
 * How a test by permutation is drawn. The same seed gives the same p on every machine.
 *
 * @param number permutations, 99 to 999,999
 * @param seed any number
 */
public record Permutations(int number, long seed) {

    /** 9,999 permutations. */
    public static final Permutations STANDARD = new Permutations(9_999, 1);

    private static final int LEAST = 99;
    private static final int MOST = 999_999;

    /** Checks the number. */
    public Permutations {
        if (!(number >= LEAST && number <= MOST)) {
            throw new InvalidInput(
                    "permutations is %d; it must be %d to %d. Maybe 9999."
                            .formatted(number, LEAST, MOST));
        }
    }

    /**
     * How likely is a statistic as high as this if the values fell on their places at random?
     *
     * @param values values to be shuffled
     * @param statistic statistic of a shuffled copy
     * @param reached the statistic from which a permutation counts as high
     * @return (b + 1) / (number + 1), with b the permutations that reach it
     */
    double upperTail(double[] values, ToDoubleFunction<double[]> statistic, double reached) {
        SeededRandom random = new SeededRandom(seed);
        double[] shuffled = values.clone();
        int reaching = 0;
        for (int i = 0; i < number; i++) {
            for (int last = shuffled.length - 1; last > 0; last--) {
                int other = random.below(last + 1);
                double kept = shuffled[last];
                shuffled[last] = shuffled[other];
                shuffled[other] = kept;
            }
            reaching += statistic.applyAsDouble(shuffled) >= reached ? 1 : 0;
        }
        return (reaching + 1.0) / (number + 1.0);
    }
}
