package jarwise.stats.agreement;

import jarwise.base.Require;
import jarwise.numeric.Quantiles;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToLongFunction;

/**
 * Whether two counts say the same, in one number.
 *
 * @param estimate Lin's concordance, −1 to 1; 1 means that every pair agrees
 * @param lower lower limit; empty where there is none
 * @param upper upper limit; likewise
 * @param correlation Pearson's correlation: how well one follows the other, whatever the shift
 * @param biasCorrection concordance over correlation, (0, 1]: what shift and scale take away
 * @param locationShift difference of the means over the root of both standard deviations
 * @param scaleShift ratio of the standard deviations, first over second
 */
public record Concordance(
        double estimate,
        OptionalDouble lower,
        OptionalDouble upper,
        double correlation,
        double biasCorrection,
        double locationShift,
        double scaleShift) {

    /** Variances and covariance divide by n, as in the source; n − 1 gives a little more. */
    public static final String DIVISOR = "n";

    /**
     * How near do two counts lie to the line on which both are the same?
     *
     * <pre>
     *   2 s12 / (s1² + s2² + (mean1 − mean2)²),  variances and covariance with divisor n
     * </pre>
     *
     * <p>The interval is normal on Fisher's scale, artanh. <b>Assumes</b> pairs drawn at random;
     * the number depends on how much the things counted vary, so compare it only within one set.
     *
     * <p><b>Source.</b> Lin (1989), <i>Biometrics</i> 45:255-268, variance with the correction of
     * 2000 (from memory). Reference values: {@code reference/agreement/concordance.csv}.
     *
     * @param pairs two or more
     * @param scale on which counts are taken
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return the concordance, its limits empty for two pairs, for perfect agreement and where the
     *     counts do not follow each other at all; nothing where neither count varies or one never
     *     does
     * @throws jarwise.base.InvalidInput if there are fewer than two pairs or the level is out of
     *     range
     */
    public static Optional<Concordance> of(
            List<CountPair> pairs, AgreementScale scale, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        int n = LimitsOfAgreement.checkedSize(pairs);
        if (neverVaries(pairs, CountPair::first) || neverVaries(pairs, CountPair::second)) {
            return Optional.empty();
        }
        Moments moments = Moments.of(pairs, scale);
        double estimate = moments.concordance();
        double reach = reach(n, estimate, moments, confidenceLevel);
        boolean allAgree = pairs.stream().allMatch(pair -> pair.first() == pair.second());
        boolean limits = !allAgree && Double.isFinite(reach);
        double z = Math.log((1 + estimate) / (1 - estimate)) / 2;
        return Optional.of(
                new Concordance(
                        estimate,
                        limits ? OptionalDouble.of(Math.tanh(z - reach)) : OptionalDouble.empty(),
                        limits ? OptionalDouble.of(Math.tanh(z + reach)) : OptionalDouble.empty(),
                        moments.correlation(),
                        moments.biasCorrection(),
                        moments.locationShift(),
                        Math.sqrt(moments.firstVariance / moments.secondVariance)));
    }

    /** Means, variances and covariance, divisor n. */
    private record Moments(
            double first,
            double second,
            double firstVariance,
            double secondVariance,
            double covariance) {

        static Moments of(List<CountPair> pairs, AgreementScale scale) {
            int n = pairs.size();
            double first = pairs.stream().mapToDouble(pair -> pair.first(scale)).sum() / n;
            double second = pairs.stream().mapToDouble(pair -> pair.second(scale)).sum() / n;
            double firstSquares = 0;
            double secondSquares = 0;
            double products = 0;
            for (CountPair pair : pairs) {
                double x = pair.first(scale) - first;
                double y = pair.second(scale) - second;
                firstSquares += x * x;
                secondSquares += y * y;
                products += x * y;
            }
            return new Moments(first, second, firstSquares / n, secondSquares / n, products / n);
        }

        double bothDeviations() {
            return Math.sqrt(firstVariance * secondVariance);
        }

        /** Mean square of the differences if the counts did not follow each other at all. */
        double apart() {
            return firstVariance + secondVariance + (first - second) * (first - second);
        }

        double concordance() {
            return 2 * covariance / apart();
        }

        double correlation() {
            return covariance / bothDeviations();
        }

        double biasCorrection() {
            return 2 * bothDeviations() / apart();
        }

        double locationShift() {
            return (first - second) / Math.sqrt(bothDeviations());
        }
    }

    /** Asked of the counts, as their mean may round away from all of them. */
    private static boolean neverVaries(List<CountPair> pairs, ToLongFunction<CountPair> count) {
        return pairs.stream().mapToLong(count).distinct().count() == 1;
    }

    /** Half the width of the interval on Fisher's scale; NaN or infinite where there is none. */
    private static double reach(int n, double c, Moments moments, double confidenceLevel) {
        double r = moments.correlation();
        double shift = moments.locationShift() * moments.locationShift();
        double rest = 1 - c * c;
        double variance =
                ((1 - r * r) * c * c / (rest * r * r)
                                + 2 * c * c * c * (1 - c) * shift / (r * rest * rest)
                                - c * c * c * c * shift * shift / (2 * r * r * rest * rest))
                        / (n - 2);
        return Quantiles.normal(confidenceLevel) * Math.sqrt(variance);
    }
}
