package jarwise.stats.removal;

import jarwise.base.InvalidInput;

/**
 * Closed formulas for exactly three washes: what {@link RemovalMethod#ZIPPIN} finds by search.
 *
 * <p><b>Source.</b> Seber (2002), eq. 7.24; Junge and Libosvárský (1965), in Cowx (1983). Reference
 * values: {@code reference/removal/two-and-three-washes.csv}.
 */
public final class ThreePassRemoval {

    private ThreePassRemoval() {}

    /**
     * How many were there, from three washes?
     *
     * <pre>
     *   X = 2 c1 + c2,  root = √(T² + 6 X T − 3 X²)
     *   N = (6 X² − 3 X T − T² + T root) / (18 (X − T)),  p = (3 X − T − root) / (2 X)
     * </pre>
     *
     * <p><b>Assumes</b> the same share in every wash. Limits are normal, with the standard error of
     * {@link RemovalPrecision}, and never below what came off.
     *
     * @param catches exactly three washes
     * @param confidenceLevel two-sided level of the limits, in (0, 1)
     * @return the estimate; none where the third wash is not smaller than the first
     * @throws InvalidInput if there are not three washes
     */
    public static RemovalEstimate seber(RemovalCatches catches, double confidenceLevel) {
        if (catches.washes() != 3) {
            throw new InvalidInput(
                    "There are %d washes; the three-pass formula takes exactly 3."
                            .formatted(catches.washes()));
        }
        double caught = catches.total();
        double after = catches.washesAfter();
        if (after <= caught) {
            return RemovalEstimate.none(RemovalMethod.ZIPPIN, catches, confidenceLevel);
        }
        double root = Math.sqrt(caught * caught + 6 * after * caught - 3 * after * after);
        double total =
                (6 * after * after - 3 * after * caught - caught * caught + caught * root)
                        / (18 * (after - caught));
        double share = (3 * after - caught - root) / (2 * after);
        double error = RemovalPrecision.standardError(total, share, 3);
        return RemovalEstimate.normal(
                RemovalMethod.ZIPPIN, catches, confidenceLevel, total, error, share);
    }
}
