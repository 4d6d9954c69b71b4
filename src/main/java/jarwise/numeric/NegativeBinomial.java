package jarwise.numeric;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.function.LongPredicate;
import org.hipparchus.special.Gamma;
import org.hipparchus.util.ContinuedFraction;

/**
 * The negative binomial distribution with real k, by its mean and k; Poisson where k is infinite.
 *
 * <pre>
 *   P(y) = Γ(k + y) / (Γ(k) y!) · (k / (k + mean))^k · (mean / (k + mean))^y
 *   variance = mean + mean² / k
 * </pre>
 *
 * <p>Probabilities keep 11 digits or more for means of 0.001 to 10,000 and k of 0.05 to 50, also
 * far out in the tails: the point probability by Loader's saddle-point form, both tails by the
 * continued fraction of the incomplete beta function with that probability as its front factor.
 *
 * <p><b>Source.</b> Johnson, Kemp and Kotz (2005), <i>Univariate Discrete Distributions</i>, ch. 5
 * (formulas from memory); Loader (2000). Reference values: {@code
 * reference/negative-binomial/*.csv}, 50-digit arithmetic.
 *
 * @param mean expected count, 0 or more
 * @param k dispersion, above 0; small k means strong clumping; {@link Double#POSITIVE_INFINITY} is
 *     Poisson
 */
public record NegativeBinomial(double mean, double k) {

    private static final double CLOSE_ENOUGH = 1e-16;
    private static final int MOST_FRACTIONS = 1_000_000;
    private static final double SUM_ABOVE_K = 1e4;
    private static final long MOST_TERMS = 20_000;

    /** Checks both numbers; throws {@link InvalidInput} naming the one out of range. */
    public NegativeBinomial {
        Require.notNegative("mean", mean);
        if (!(k > 0)) {
            throw new InvalidInput(
                    "k is %s; it must be above 0, or infinite for Poisson counts.".formatted(k));
        }
    }

    /** {@return the variance of the count} */
    public double variance() {
        return mean + mean * mean / k;
    }

    /**
     * The natural logarithm of the probability of a count.
     *
     * @param y count, 0 or more
     * @return 0 or less; minus infinity for a positive count when the mean is 0
     */
    public double logProbability(long y) {
        Require.atLeast("y", y, 0);
        if (mean == 0) {
            return y == 0 ? 0 : Double.NEGATIVE_INFINITY;
        }
        if (Double.isInfinite(k)) {
            return y == 0 ? -mean : logPoisson(y);
        }
        if (y == 0) {
            return -k * LogOnePlus.ratio(mean, k);
        }
        double all = k + y;
        double stirling =
                StirlingError.of(all) - StirlingError.of(k) - StirlingError.of((double) y);
        double deviance =
                StirlingError.deviance(k, all / (1 + mean / k))
                        + StirlingError.deviance((double) y, all * (mean / (k + mean)));
        return stirling - deviance + 0.5 * Math.log(k / all / (2 * Math.PI * y));
    }

    private double logPoisson(long y) {
        return -StirlingError.of((double) y)
                - StirlingError.deviance((double) y, mean)
                - 0.5 * Math.log(2 * Math.PI * y);
    }

    /**
     * The probability of a count.
     *
     * @param y count, 0 or more
     * @return in [0, 1]
     */
    public double probability(long y) {
        return Math.exp(logProbability(y));
    }

    /**
     * The probability of a count or a smaller one.
     *
     * @param y count, 0 or more
     * @return in [0, 1], rising with y
     */
    public double cumulativeProbability(long y) {
        Require.atLeast("y", y, 0);
        if (mean == 0) {
            return 1;
        }
        if (Double.isInfinite(k)) {
            return Gamma.regularizedGammaQ(y + 1.0, mean);
        }
        return upperTailConvergesFaster(y) ? 1 - upperTail(y) : lowerTail(y);
    }

    /**
     * The probability of a count larger than this one, with all its digits where it is small.
     *
     * @param y count, 0 or more
     * @return in [0, 1], falling with y
     */
    public double exceedanceProbability(long y) {
        Require.atLeast("y", y, 0);
        if (mean == 0) {
            return 0;
        }
        if (Double.isInfinite(k)) {
            return Gamma.regularizedGammaP(y + 1.0, mean);
        }
        return upperTailConvergesFaster(y) ? upperTail(y) : 1 - lowerTail(y);
    }

    /**
     * The smallest count that the cumulative probability reaches {@code p} at; reached within 13
     * digits is reached, so that 0.75 is found where the exact sum is 0.75.
     *
     * @param p probability in [0, 1)
     * @return count, 0 or more
     * @throws InvalidInput if {@code p} is not in [0, 1)
     */
    public long quantile(double p) {
        if (!(p >= 0 && p < 1)) {
            throw new InvalidInput("p is %s; it must be at least 0 and below 1.".formatted(p));
        }
        double least = p * (1 - 1e-13);
        return first(y -> cumulativeProbability(y) >= least);
    }

    /**
     * The smallest count that is exceeded with probability {@code p} at most, within 12 digits: the
     * upper quantile with all its digits where 1 − p has none.
     *
     * @param p probability in (0, 1]
     * @return count, 0 or more
     * @throws InvalidInput if {@code p} is not in (0, 1]
     */
    public long quantileAbove(double p) {
        double most = Require.share("p", p) * (1 + 1e-12);
        return first(y -> exceedanceProbability(y) <= most);
    }

    private static long first(LongPredicate holds) {
        long high = 1;
        while (!holds.test(high)) {
            high *= 2;
        }
        long low = -1; // below every count
        while (high - low > 1) {
            long middle = (low + high) >>> 1;
            if (holds.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private boolean upperTailConvergesFaster(long y) {
        return mean / (k + mean) < (y + 2.0) / (y + 1 + k + 2);
    }

    /** P(Y ≤ y): the incomplete beta function at k/(k + mean) with k and y + 1. */
    private double lowerTail(long y) {
        if (k > SUM_ABOVE_K && y <= MOST_TERMS) {
            return sumDownFrom(y);
        }
        double front = probability(y) * (mean / (k + mean)) * (k + y) / k;
        return front / betaFraction(k, y + 1.0, k / (k + mean));
    }

    /**
     * The terms themselves: k/(k + mean) is so near 1 here that its distance from 1 has no digits.
     */
    private double sumDownFrom(long y) {
        double term = probability(y);
        double sum = term;
        for (long j = y; j > 0; j--) {
            term *= j / mean * ((k + mean) / (k + j - 1));
            sum += term;
        }
        return sum;
    }

    /** P(Y > y): the same function at the other end. */
    private double upperTail(long y) {
        double front = probability(y) * (mean / (k + mean)) * ((k + y) / (y + 1.0));
        return front / betaFraction(y + 1.0, k, mean / (k + mean));
    }

    private static double betaFraction(double a, double b, double x) {
        ContinuedFraction fraction =
                new ContinuedFraction() {
                    @Override
                    protected double getA(int n, double at) {
                        return 1;
                    }

                    @Override
                    protected double getB(int n, double at) {
                        int half = n / 2;
                        double m = half;
                        return n % 2 == 0
                                ? m * (b - m) * at / ((a + 2 * m - 1) * (a + 2 * m))
                                : -(a + m) * (a + b + m) * at / ((a + 2 * m) * (a + 2 * m + 1));
                    }
                };
        return fraction.evaluate(x, CLOSE_ENOUGH, MOST_FRACTIONS);
    }
}
