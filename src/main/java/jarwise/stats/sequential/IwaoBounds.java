package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * Iwao's sequential bounds: is the mean different from a critical density?
 *
 * <pre>
 *   T(n) = n · c ± t · sqrt(n · ((α + 1)·c + (β − 1)·c²))
 * </pre>
 *
 * <p>A cumulative count outside the bounds says that the mean is under or over the critical
 * density; as long as it lies inside, go on. The bounds are those of a single look at n samples:
 * whoever looks after every sample takes a larger risk than t says.
 *
 * <p><b>Source.</b> Iwao (1975), <i>Researches on Population Ecology</i> 16 (formula from memory).
 * Reference values: {@code reference/sequential/iwao.csv} (our own arithmetic).
 *
 * @param criticalMean critical density times sampling units in a sample c, above 0
 * @param iwaoAlpha α of Iwao's regression of mean crowding, above −1
 * @param iwaoBeta β of Iwao's regression, above 0
 * @param t standard errors to either side, above 0; 1.96 for 95 %
 */
public record IwaoBounds(double criticalMean, double iwaoAlpha, double iwaoBeta, double t) {

    /** Checks the four numbers; throws {@link InvalidInput} naming what is out of range. */
    public IwaoBounds {
        Require.positive("critical density", criticalMean);
        KunoLine.requireAlpha(iwaoAlpha);
        Require.positive("Iwao's beta", iwaoBeta);
        Require.positive("t", t);
        if (!(variance(criticalMean, iwaoAlpha, iwaoBeta) > 0)) {
            throw new InvalidInput(
                    ("with alpha %s and beta %s the variance at the critical density %s is not"
                                    + " above 0. Maybe these constants were fitted to other"
                                    + " densities.")
                            .formatted(iwaoAlpha, iwaoBeta, criticalMean));
        }
    }

    private static double variance(double mean, double alpha, double beta) {
        return (alpha + 1) * mean + (beta - 1) * mean * mean;
    }

    /**
     * The lower bound.
     *
     * @param sampleSize number of samples counted, 1 or more
     * @return cumulative count at or under which the mean is below the critical density; negative
     *     as long as no count is low enough
     * @throws InvalidInput if {@code sampleSize} is under 1
     */
    public double lower(int sampleSize) {
        return bound(sampleSize, -t);
    }

    /**
     * The upper bound.
     *
     * @param sampleSize number of samples counted, 1 or more
     * @return cumulative count at or over which the mean is above the critical density
     * @throws InvalidInput if {@code sampleSize} is under 1
     */
    public double upper(int sampleSize) {
        return bound(sampleSize, t);
    }

    private double bound(int sampleSize, double errors) {
        Require.atLeast("sampleSize", sampleSize, 1);
        double variance = variance(criticalMean, iwaoAlpha, iwaoBeta);
        return sampleSize * criticalMean + errors * Math.sqrt(sampleSize * variance);
    }
}
