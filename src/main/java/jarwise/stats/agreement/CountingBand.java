package jarwise.stats.agreement;

import jarwise.base.Require;
import java.util.List;

/**
 * How far apart chance alone brings two counts.
 *
 * @param sameFilter whether both are of the same filter, so that both readers see the same insects;
 *     else of two filters of the same material
 * @param firstSensitivity share of the insects that the first reader finds, (0, 1]
 * @param secondSensitivity share that the second finds, (0, 1]
 */
public record CountingBand(boolean sameFilter, double firstSensitivity, double secondSensitivity) {

    private static final double NINETY_FIVE = 1.96;

    /** Checks both shares. */
    public CountingBand {
        Require.share("firstSensitivity", firstSensitivity);
        Require.share("secondSensitivity", secondSensitivity);
    }

    /**
     * The standard deviation of first − second if only chance moves them.
     *
     * <pre>
     *   same filter:  variance N (s1 (1 − s1) + s2 (1 − s2)), each insect found or missed
     *   two filters:  variance N (s1 + s2), Poisson counts
     *   on square roots: ((1 − s1) + (1 − s2))/4, and 1/2
     * </pre>
     *
     * <p>So two readers of one filter who miss nothing may not differ at all, while a Poisson band
     * would let them. <b>Assumes</b> that readers find insects independently of each other: where
     * both miss the same hidden ones the band is too wide. Two filters also clump; then it is too
     * narrow. The square-root form is rough below some five individuals.
     *
     * <p><b>Source.</b> Binomial thinning and the delta method; our own arithmetic. Checked by
     * simulation.
     *
     * @param onFilter insects on the filter, N, 0 or more
     * @param scale on which the difference is taken
     * @return standard deviation, 0 or more
     */
    public double standardDeviation(double onFilter, AgreementScale scale) {
        Require.notNegative("onFilter", onFilter);
        double first = sameFilter ? 1 - firstSensitivity : 1;
        double second = sameFilter ? 1 - secondSensitivity : 1;
        return scale == AgreementScale.SQRT
                ? Math.sqrt((first + second) / 4)
                : Math.sqrt(onFilter * (firstSensitivity * first + secondSensitivity * second));
    }

    /** {@return the expected difference: 0 unless one reader finds more than the other} */
    public double expected(double onFilter, AgreementScale scale) {
        Require.notNegative("onFilter", onFilter);
        return scale.of(onFilter * firstSensitivity) - scale.of(onFilter * secondSensitivity);
    }

    /** {@return the lower end of the band in which 95 of 100 differences lie} */
    public double lower(double onFilter, AgreementScale scale) {
        return expected(onFilter, scale) - NINETY_FIVE * standardDeviation(onFilter, scale);
    }

    /** {@return the upper end of the band in which 95 of 100 differences lie} */
    public double upper(double onFilter, AgreementScale scale) {
        return expected(onFilter, scale) + NINETY_FIVE * standardDeviation(onFilter, scale);
    }

    /** {@return insects on the filter, as far as both counts tell} */
    public double onFilter(CountPair pair) {
        return ((double) pair.first() + pair.second()) / (firstSensitivity + secondSensitivity);
    }

    /**
     * How many pairs differ by more than chance?
     *
     * @param pairs the counts
     * @param scale on which differences are taken
     * @return pairs outside their own band; about 5 in 100 are to be expected
     */
    public int outside(List<CountPair> pairs, AgreementScale scale) {
        return (int)
                pairs.stream()
                        .filter(
                                pair -> {
                                    double difference = pair.difference(scale);
                                    double there = onFilter(pair);
                                    return difference < lower(there, scale)
                                            || difference > upper(there, scale);
                                })
                        .count();
    }
}
