package jarwise.stats.comparison;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Several tests at once. */
public final class HolmAdjustment {

    private HolmAdjustment() {}

    /**
     * Which of several differences hold if all are looked at together?
     *
     * <p>The smallest p is multiplied by the number of tests, the next by one less, and so on; none
     * may be smaller than the one before it or larger than 1.
     *
     * <p><b>Source.</b> Holm (1979), <i>Scandinavian Journal of Statistics</i> 6:65-70 (from
     * memory). Reference values: {@code reference/regression}.
     *
     * @param pValues p of each test, 0 to 1
     * @return adjusted p, in the same order
     */
    public static double[] of(double[] pValues) {
        int n = pValues.length;
        List<Integer> order =
                IntStream.range(0, n)
                        .boxed()
                        .sorted(Comparator.comparingDouble(i -> pValues[i]))
                        .toList();
        double[] adjusted = new double[n];
        double least = 0;
        for (int rank = 0; rank < n; rank++) {
            int test = order.get(rank);
            least = Math.max(least, Math.min(1, (n - rank) * pValues[test]));
            adjusted[test] = least;
        }
        return adjusted;
    }
}
