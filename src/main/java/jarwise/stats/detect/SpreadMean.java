package jarwise.stats.detect;

import java.util.function.LongToDoubleFunction;

/**
 * The average of a function of a whole number that is spread around its mode in one hump, such as a
 * binomial or hypergeometric number.
 *
 * <p>Sums from the mode outwards until nothing is left that counts. Where the hump is broad, every
 * step is a quarter of its standard deviation: for a smooth function the plain sum is then as exact
 * as the sum over all numbers, and the cost stays the same for any width.
 *
 * @param logProbability logarithm of the chance of a number
 * @param lowest smallest number that can be
 * @param highest largest number that can be
 */
record SpreadMean(LongToDoubleFunction logProbability, long lowest, long highest) {

    private static final double NEGLIGIBLE = -46; // logarithm, against the mode
    private static final double STEPS_PER_DEVIATION = 4;

    /** One walk's sums: of the chances, and of the chances times the function. */
    private record Sums(double weight, double weighted) {}

    /**
     * The average.
     *
     * @param mode the likeliest number
     * @param standardDeviation spread of the number
     * @param function bounded by 0 and 1, smooth where the spread is above 8
     * @return its expected value, to about 1e-14
     */
    double of(long mode, double standardDeviation, LongToDoubleFunction function) {
        long step = Math.max(1, (long) (standardDeviation / STEPS_PER_DEVIATION));
        double peak = logProbability.applyAsDouble(mode);
        Sums down = walk(mode, -step, peak, function);
        Sums up = walk(mode, step, peak, function);
        double atMode = function.applyAsDouble(mode);
        return (down.weighted + atMode + up.weighted) / (down.weight + 1 + up.weight);
    }

    private Sums walk(long mode, long step, double peak, LongToDoubleFunction function) {
        double weight = 0;
        double weighted = 0;
        for (long j = mode + step; j >= lowest && j <= highest; j += step) {
            double logWeight = logProbability.applyAsDouble(j) - peak;
            if (logWeight < NEGLIGIBLE) {
                break;
            }
            weight += Math.exp(logWeight);
            weighted += Math.exp(logWeight) * function.applyAsDouble(j);
        }
        return new Sums(weight, weighted);
    }
}
