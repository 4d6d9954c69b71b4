package jarwise.stats.agreement;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.Quantiles;
import java.util.List;

/**
 * How far two counts of the same things lie apart.
 *
 * @param sampleSize pairs
 * @param bias mean of first − second, on the scale
 * @param standardDeviation of the differences, divisor n − 1
 * @param biasReach half the width of the interval of the bias
 * @param limitReach half the width of the interval of each limit
 */
public record LimitsOfAgreement(
        int sampleSize,
        double bias,
        double standardDeviation,
        double biasReach,
        double limitReach) {

    private static final double NINETY_FIVE = 1.96;

    /**
     * Between which limits does one count differ from the other, 95 times in 100?
     *
     * <pre>
     *   bias ± 1.96 · SD of the differences
     *   interval of the bias: t SD/√n; of each limit: t SD √(3/n), t with n − 1 degrees of freedom
     * </pre>
     *
     * <p><b>Assumes</b> that the differences neither grow nor shrink with the counts (the square
     * root does that for counts) and are about normal. Agreement says nothing about the truth: two
     * readers can miss the same insects.
     *
     * <p><b>Source.</b> Bland and Altman (1986), <i>Lancet</i> i:307-310; the 1986 paper prints
     * twice the SD, later usage is 1.96. Reference values: {@code reference/agreement/*.csv}.
     *
     * @param pairs two or more
     * @param scale on which differences are taken
     * @param confidenceLevel of the intervals of bias and limits, in (0, 1)
     * @return bias and limits
     * @throws InvalidInput if there are fewer than two pairs or the level is out of range
     */
    public static LimitsOfAgreement of(
            List<CountPair> pairs, AgreementScale scale, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        int n = checkedSize(pairs);
        double[] differences = pairs.stream().mapToDouble(pair -> pair.difference(scale)).toArray();
        double bias = 0;
        for (double difference : differences) {
            bias += difference / n;
        }
        double squares = 0;
        for (double difference : differences) {
            squares += (difference - bias) * (difference - bias);
        }
        double deviation = Math.sqrt(squares / (n - 1));
        double t = Quantiles.student(confidenceLevel, n - 1.0);
        double reach = t * deviation / Math.sqrt(n);
        return new LimitsOfAgreement(n, bias, deviation, reach, reach * Math.sqrt(3));
    }

    static int checkedSize(List<CountPair> pairs) {
        if (pairs.size() < 2) {
            throw new InvalidInput(
                    ("There is %d pair of counts; at least 2 are needed. Maybe recount some more"
                                    + " filters.")
                            .formatted(pairs.size()));
        }
        return pairs.size();
    }

    /** {@return the lower limit of agreement} */
    public double lowerLimit() {
        return bias - NINETY_FIVE * standardDeviation;
    }

    /** {@return the upper limit of agreement} */
    public double upperLimit() {
        return bias + NINETY_FIVE * standardDeviation;
    }
}
