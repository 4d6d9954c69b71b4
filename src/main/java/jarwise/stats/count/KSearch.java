package jarwise.stats.count;

import jarwise.numeric.Roots;
import java.util.function.DoubleUnaryOperator;

/**
 * The k at which a likelihood is highest, over all k, Poisson included: every place where the slope
 * changes from up to down is found and the highest is taken.
 */
public final class KSearch {

    private static final double LOWEST_LOG_K = -14;
    private static final double HIGHEST_LOG_K = 14;
    private static final double STEP = 1;

    /**
     * A likelihood as a function of k alone, whatever else is in it being at its best.
     *
     * @param height the log-likelihood at k, which may be infinite
     * @param slope its slope along ln k, at finite k
     */
    public record Profile(DoubleUnaryOperator height, DoubleUnaryOperator slope) {}

    private KSearch() {}

    /**
     * Looks for the highest point.
     *
     * @param profile log-likelihood along k
     * @return the k there; infinite where no finite k is better than Poisson
     */
    public static double best(Profile profile) {
        DoubleUnaryOperator slope = logK -> profile.slope().applyAsDouble(Math.exp(logK));
        double best = Double.POSITIVE_INFINITY;
        double height = profile.height().applyAsDouble(best);
        double before = slope.applyAsDouble(LOWEST_LOG_K);
        for (double x = LOWEST_LOG_K; x < HIGHEST_LOG_K; x += STEP) {
            double after = slope.applyAsDouble(x + STEP);
            if (before > 0 && after <= 0) {
                double k = Math.exp(after == 0 ? x + STEP : Roots.between(slope, x, x + STEP));
                double here = profile.height().applyAsDouble(k);
                if (here > height) {
                    height = here;
                    best = k;
                }
            }
            before = after;
        }
        return best;
    }
}
