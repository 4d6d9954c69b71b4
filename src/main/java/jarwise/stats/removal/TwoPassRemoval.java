package jarwise.stats.removal;

import jarwise.base.InvalidInput;

/**
 * Closed formulas for exactly two washes.
 *
 * <p><b>Source.</b> Seber (1982), <i>The Estimation of Animal Abundance</i>, ex. 7.4; Robson and
 * Regier (1968), in Cowx (1983), <i>Fisheries Management</i> 14:67-82. Reference values: {@code
 * reference/removal/two-and-three-washes.csv}.
 */
public final class TwoPassRemoval {

    private TwoPassRemoval() {}

    /**
     * How many were there, from two washes?
     *
     * <pre>
     *   N = c1² / (c1 − c2),  standard error = c1 c2 √(c1 + c2) / (c1 − c2)²,  p = 1 − c2/c1
     * </pre>
     *
     * <p><b>Assumes</b> the same share in both washes. Limits are normal, and never below what came
     * off.
     *
     * @param catches exactly two washes
     * @param confidenceLevel two-sided level of the limits, in (0, 1)
     * @return the estimate; none where the second wash is not the smaller one
     * @throws InvalidInput if there are not two washes
     */
    public static RemovalEstimate seber(RemovalCatches catches, double confidenceLevel) {
        double first = checkedFirst(catches);
        double second = catches.catches().get(1);
        return with(catches, confidenceLevel, first * first / (first - second));
    }

    /**
     * The same with less bias for small numbers; its standard error is taken from {@link #seber}.
     *
     * <pre>  N = (c1² − c2) / (c1 − c2)</pre>
     *
     * @param catches exactly two washes
     * @param confidenceLevel two-sided level of the limits, in (0, 1)
     * @return the estimate; none where the second wash is not the smaller one
     * @throws InvalidInput if there are not two washes
     */
    public static RemovalEstimate robsonRegier(RemovalCatches catches, double confidenceLevel) {
        double first = checkedFirst(catches);
        double second = catches.catches().get(1);
        return with(catches, confidenceLevel, (first * first - second) / (first - second));
    }

    private static double checkedFirst(RemovalCatches catches) {
        if (catches.washes() != 2) {
            throw new InvalidInput(
                    ("There are %d washes; the two-pass formula takes exactly 2. Maybe use the"
                                    + " method ml, which takes all of them.")
                            .formatted(catches.washes()));
        }
        return catches.first();
    }

    private static RemovalEstimate with(RemovalCatches catches, double level, double total) {
        double first = catches.first();
        double second = catches.catches().get(1);
        if (!(first > second)) {
            return RemovalEstimate.none(RemovalMethod.TWO_PASS, catches, level);
        }
        double fall = first - second;
        double error = first * second * Math.sqrt(first + second) / (fall * fall);
        return RemovalEstimate.normal(
                RemovalMethod.TWO_PASS, catches, level, total, error, 1 - second / first);
    }
}
