package jarwise.stats.design;

import jarwise.base.Require;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * How many samples give the density with a wanted precision?
 *
 * <pre>
 *   J = (variance / m²) / D²,    m = u · density, the mean count of one sample
 *     negative binomial  (1/m + 1/k) / D²
 *     Taylor             a · m^(b − 2) / D²
 *     Iwao               [(α + 1)/m + β − 1] / D²
 * </pre>
 *
 * <p>D is the relative standard error of the mean, standard error over mean. For an interval of
 * plus or minus a share h of the mean at a level with normal quantile z, give D = h/z.
 *
 * <p><b>Assumes</b> random samples and constants of the sample (jar) that is planned. The density
 * is the counted one: with extraction efficiency e give e times what is on the plants.
 *
 * <p><b>Source.</b> Karandinos (1976), <i>Bulletin of the Entomological Society of America</i>
 * 22:417-421; Green (1970), <i>Researches on Population Ecology</i> 12:249-251; Kuno (1969); Iwao
 * (1968) (formulas from memory). Reference values: {@code reference/precision/*.csv}.
 *
 * @param density expected counted density, individuals per sampling unit; above 0
 * @param samplingUnits sampling units in one sample, above 0
 * @param relativeStandardError wanted standard error over mean, above 0; 0.25 is usual
 * @param law how the variance of one sample goes with its mean
 */
public record FixedPrecision(
        double density, double samplingUnits, double relativeStandardError, VarianceLaw law) {

    /** The largest number of samples that is given; up to here whole numbers have no gaps. */
    public static final long MOST_SAMPLES = 1_000_000_000_000_000L;

    private static final double ROUNDING = 1e-12;

    /** Checks the parameters. */
    public FixedPrecision {
        Require.positive("density", density);
        Require.positive("units", samplingUnits);
        Require.positive("precision", relativeStandardError);
        law.relativeVariance(density * samplingUnits);
    }

    /**
     * The number of samples as the formula gives it, before it is rounded up.
     *
     * @return above 0; empty if it is beyond {@link #MOST_SAMPLES}
     */
    public OptionalDouble samplesExact() {
        double samples =
                law.relativeVariance(density * samplingUnits)
                        / relativeStandardError
                        / relativeStandardError;
        return samples <= MOST_SAMPLES ? OptionalDouble.of(samples) : OptionalDouble.empty();
    }

    /**
     * The number of samples, rounded up; a number that is whole but for rounding stays.
     *
     * @return 1 or more; empty if it is beyond {@link #MOST_SAMPLES}
     */
    public OptionalLong sampleSize() {
        OptionalDouble exact = samplesExact();
        return exact.isEmpty()
                ? OptionalLong.empty()
                : OptionalLong.of(
                        Math.max(1, (long) Math.ceil(exact.getAsDouble() * (1 - ROUNDING))));
    }

    /**
     * The individuals to be expected in that many samples: the point of the fixed-precision stop
     * line that belongs to this density.
     *
     * @return samples before rounding up · units · density; empty as {@link #samplesExact()}
     */
    public OptionalDouble cumulativeCount() {
        OptionalDouble exact = samplesExact();
        return exact.isEmpty()
                ? exact
                : OptionalDouble.of(exact.getAsDouble() * samplingUnits * density);
    }
}
