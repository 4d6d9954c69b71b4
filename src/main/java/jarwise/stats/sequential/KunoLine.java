package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.OptionalDouble;

/**
 * Fixed-precision stop line by Iwao's regression of mean crowding: when is the mean known well
 * enough?
 *
 * <pre>
 *   s² = (α + 1)·m + (β − 1)·m², standard error / mean = D:   T(n) = (α + 1) / (D² − (β − 1)/n)
 * </pre>
 *
 * <p>Sampling stops at a cumulative count at or over the line. There is no line for n up to (β −
 * 1)/D²: so few samples never reach the precision, however much is in them.
 *
 * <p><b>Assumes</b> that Iwao's regression holds for samples of this kind.
 *
 * <p><b>Source.</b> Kuno (1969), <i>Researches on Population Ecology</i> 11; Iwao (1968),
 * <i>Researches on Population Ecology</i> 10 (formulas from memory). Reference values: {@code
 * reference/sequential/kuno.csv} (our own arithmetic).
 *
 * @param iwaoAlpha α of Iwao's regression, above −1
 * @param iwaoBeta β of Iwao's regression, above 0
 * @param relativeStandardError wanted standard error over mean D, above 0 and below 1
 */
public record KunoLine(double iwaoAlpha, double iwaoBeta, double relativeStandardError) {

    /** Checks the three numbers; throws {@link InvalidInput} naming the one out of range. */
    public KunoLine {
        requireAlpha(iwaoAlpha);
        Require.positive("Iwao's beta", iwaoBeta);
        Require.between("precision", relativeStandardError, 0, 1);
    }

    static void requireAlpha(double iwaoAlpha) {
        if (!(iwaoAlpha > -1 && iwaoAlpha < Double.POSITIVE_INFINITY)) {
            throw new InvalidInput(
                    "Iwao's alpha is %s; it must be above -1. Maybe 0.5.".formatted(iwaoAlpha));
        }
    }

    /** {@return the number of samples up to which there is no line; 0 or less if there is none} */
    public double sampleSizeWithoutLine() {
        return (iwaoBeta - 1) / (relativeStandardError * relativeStandardError);
    }

    /**
     * The line.
     *
     * @param sampleSize number of samples counted, 1 or more
     * @return cumulative count; empty for samples too few to reach the precision at any density
     * @throws InvalidInput if {@code sampleSize} is under 1
     */
    public OptionalDouble cumulativeCount(int sampleSize) {
        Require.atLeast("sampleSize", sampleSize, 1);
        if (sampleSize <= sampleSizeWithoutLine()) {
            return OptionalDouble.empty();
        }
        double squared = relativeStandardError * relativeStandardError;
        double count = (iwaoAlpha + 1) / (squared - (iwaoBeta - 1) / sampleSize);
        return count > 0 && Double.isFinite(count)
                ? OptionalDouble.of(count)
                : OptionalDouble.empty();
    }
}
