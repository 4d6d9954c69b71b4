package jarwise.stats.agreement;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.List;
import org.hipparchus.special.Erf;

/**
 * Whether a reader sees less, or more, as a sitting goes on.
 *
 * @param cells cells in the order in which they were read
 * @param trend standardised trend of the counts with the order; below 0 means fewer later
 * @param trendPValue chance of so strong a trend, either way, if order makes no difference
 * @param longestRunOfZeros most cells in a row without a find
 * @param runPValue chance of such a run or a longer one if the same cells came in any order
 */
public record SittingDrift(
        int cells, double trend, double trendPValue, int longestRunOfZeros, double runPValue) {

    private static final int MOST_CELLS = 5_000;

    /**
     * Do the counts per cell drift, or stop for a while?
     *
     * <p>Both ask how odd this order of the same cells is among all orders. The trend is the
     * covariance with the place in the order over its standard deviation among all orders, and
     * normal; the chance of the longest run of zeros is exact:
     *
     * <pre>
     *   Σ over j ≥ 1 of (−1)^(j + 1) C(g, j) C(n − j L, n − z) / C(n, z),  g = n − z + 1
     * </pre>
     *
     * for n cells, z of them without a find, and a run of L. <b>Assumes</b> that cells were read in
     * an order that has nothing to do with how much lies there: a walk by passes from a random
     * start does, reading from the rim inwards does not. Rough for the trend below some ten cells.
     * Seconds spent on each cell may stand in for counts: the trend then tells whether the reader
     * slows down.
     *
     * <p><b>Source.</b> Permutation moments (textbook, from memory); runs by inclusion and
     * exclusion, Feller (1968), II.5 (from memory). Checked by counting all orders of small sets.
     *
     * @param counts individuals in each cell, in the order of reading; 2 to 5,000 cells
     * @return trend and run
     * @throws InvalidInput if there are too few or too many cells, or a count is below 0
     */
    public static SittingDrift of(List<Long> counts) {
        int n = counts.size();
        if (n < 2 || n > MOST_CELLS) {
            throw new InvalidInput(
                    "There are %d cells; 2 to %d are needed.".formatted(n, MOST_CELLS));
        }
        counts.forEach(count -> Require.atLeast("count of a cell", count, 0));
        double trend = trend(counts);
        int zeros = (int) counts.stream().filter(count -> count == 0).count();
        int run = longestRun(counts);
        return new SittingDrift(
                n, trend, Erf.erfc(Math.abs(trend) / Math.sqrt(2)), run, chance(n, zeros, run));
    }

    private static double trend(List<Long> counts) {
        double n = counts.size();
        double mean = counts.stream().mapToLong(Long::longValue).sum() / n;
        double covariance = 0;
        double squares = 0;
        for (int i = 0; i < counts.size(); i++) {
            double deviation = counts.get(i) - mean;
            covariance += (i - (n - 1) / 2) * deviation;
            squares += deviation * deviation;
        }
        double orderSquares = n * (n * n - 1) / 12;
        return squares == 0 ? 0 : covariance / Math.sqrt(orderSquares * squares / (n - 1));
    }

    private static int longestRun(List<Long> counts) {
        int longest = 0;
        int run = 0;
        for (long count : counts) {
            run = count == 0 ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    private static double chance(int cells, int zeros, int run) {
        if (run == 0) {
            return 1;
        }
        int finds = cells - zeros;
        BigInteger orders = BigInteger.ZERO;
        for (int j = 1; j <= finds + 1 && j * run <= zeros; j++) {
            BigInteger term = choose(finds + 1, j).multiply(choose(cells - j * run, finds));
            orders = j % 2 == 1 ? orders.add(term) : orders.subtract(term);
        }
        return new BigDecimal(orders)
                .divide(new BigDecimal(choose(cells, finds)), MathContext.DECIMAL64)
                .doubleValue();
    }

    private static BigInteger choose(int n, int k) {
        BigInteger product = BigInteger.ONE;
        for (int i = 1; i <= k; i++) {
            product =
                    product.multiply(BigInteger.valueOf(n - k + (long) i))
                            .divide(BigInteger.valueOf(i));
        }
        return product;
    }
}
