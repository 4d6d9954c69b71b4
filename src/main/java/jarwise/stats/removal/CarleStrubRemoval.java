package jarwise.stats.removal;

import java.math.BigInteger;

/**
 * The weighted removal estimate: the largest likelihood after a flat expectation of the share.
 * There always is one, also where the washes do not fall off; there it says little.
 *
 * <pre>
 *   the smallest whole N ≥ T with
 *   (N + 1)/(N − T + 1) · Π over washes i of
 *       (s N − X − T + 1 + s − i)/(s N − X + 2 + s − i)  ≤ 1
 * </pre>
 *
 * <p>In whole numbers, so that nothing is rounded where both sides are equal. Its standard error is
 * that of {@link RemovalPrecision} at N and p = T/(s N − X).
 *
 * <p><b>Source.</b> Carle and Strub (1978), <i>Biometrics</i> 34:621-630. Reference values: {@code
 * reference/removal/carle-strub.csv}.
 */
final class CarleStrubRemoval {

    private CarleStrubRemoval() {}

    static RemovalEstimate estimate(RemovalCatches catches, double confidenceLevel) {
        double total = smallestTotal(catches);
        double share = RemovalMethod.share(catches, total);
        double error = RemovalPrecision.standardError(total, share, catches.washes());
        return RemovalEstimate.normal(
                RemovalMethod.CARLE_STRUB, catches, confidenceLevel, total, error, share);
    }

    /** Steps that double, then halves: once the ratio is below 1 it stays there. */
    private static long smallestTotal(RemovalCatches catches) {
        long low = catches.total() - 1;
        long step = 1;
        while (!reached(catches, low + step)) {
            low += step;
            step *= 2;
        }
        long high = low + step;
        while (high - low > 1) {
            long middle = low + (high - low) / 2;
            if (reached(catches, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static boolean reached(RemovalCatches catches, long total) {
        int washes = catches.washes();
        BigInteger above = BigInteger.valueOf(total + 1);
        BigInteger below = BigInteger.valueOf(total - catches.total() + 1);
        long exposed = washes * total - catches.washesAfter();
        for (int i = 1; i <= washes; i++) {
            above = above.multiply(BigInteger.valueOf(exposed - catches.total() + 1 + washes - i));
            below = below.multiply(BigInteger.valueOf(exposed + 2 + washes - i));
        }
        return above.compareTo(below) <= 0;
    }
}
