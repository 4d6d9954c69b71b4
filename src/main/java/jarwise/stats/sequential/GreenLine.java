package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.OptionalDouble;

/**
 * Fixed-precision stop line by Taylor's power law: when is the mean known well enough?
 *
 * <pre>
 *   s² = a · m^b, standard error / mean = D:   T(n) = n · (n · D² / a)^(1/(b − 2))
 * </pre>
 *
 * <p>With b under 2 sampling stops at a cumulative count at or over the line; with b over 2, where
 * dense populations are the harder ones, at or under it. With b = 2 the precision depends on the
 * number of samples alone, and there is no line.
 *
 * <p><b>Assumes</b> that Taylor's law holds for samples of this kind; a and b are those of one
 * sample, fitted to many sets of samples.
 *
 * <p><b>Source.</b> Green (1970), <i>Researches on Population Ecology</i> 12:249; Taylor (1961),
 * <i>Nature</i> 189:732 (formulas from memory). Reference values: {@code
 * reference/sequential/green.csv} (our own arithmetic with R, and published a and b).
 *
 * @param taylorA a of Taylor's law, above 0
 * @param taylorB b of Taylor's law, above 0
 * @param relativeStandardError wanted standard error over mean D, above 0 and below 1
 */
public record GreenLine(double taylorA, double taylorB, double relativeStandardError) {

    /** Checks the three numbers; throws {@link InvalidInput} naming the one out of range. */
    public GreenLine {
        Require.positive("Taylor's a", taylorA);
        Require.positive("Taylor's b", taylorB);
        Require.between("precision", relativeStandardError, 0, 1);
    }

    /** {@return whether sampling stops at or over the line; else at or under it} */
    public boolean stopsAtOrOver() {
        return taylorB < 2;
    }

    /**
     * The line.
     *
     * @param sampleSize number of samples counted, 1 or more
     * @return cumulative count; empty where there is no line, or none that a number can hold
     * @throws InvalidInput if {@code sampleSize} is under 1
     */
    public OptionalDouble cumulativeCount(int sampleSize) {
        Require.atLeast("sampleSize", sampleSize, 1);
        if (taylorB == 2) {
            return OptionalDouble.empty();
        }
        double squared = relativeStandardError * relativeStandardError;
        double logMean = Math.log(sampleSize * squared / taylorA) / (taylorB - 2);
        double count = sampleSize * Math.exp(logMean);
        return Double.isFinite(count) ? OptionalDouble.of(count) : OptionalDouble.empty();
    }
}
