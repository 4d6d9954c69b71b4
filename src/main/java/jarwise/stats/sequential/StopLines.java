package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.OptionalLong;

/**
 * Two parallel stop lines for the cumulative count.
 *
 * <pre>
 *   lower(n) = slope · n + lowerIntercept     stop at or under it: below
 *   upper(n) = slope · n + upperIntercept     stop at or over it:  above
 * </pre>
 *
 * <p>They hold from {@code minSamples} on. What lies between them at {@code maxSamples} is
 * undecided, and is not shared out. A line within rounding (13 digits) of a whole number is that
 * number, so that a total that lies on a line stops.
 *
 * @param slope both lines, individuals a sample, above 0
 * @param lowerIntercept individuals; below {@code upperIntercept}
 * @param upperIntercept individuals
 * @param minSamples number of samples before which nothing is decided, 1 or more
 * @param maxSamples largest number of samples, {@code minSamples} to {@value #MOST_SAMPLES}
 */
public record StopLines(
        double slope,
        double lowerIntercept,
        double upperIntercept,
        int minSamples,
        int maxSamples) {

    /** Samples that a plan can have at most. */
    public static final int MOST_SAMPLES = 10_000;

    /** Individuals that the lines can lie apart at most. */
    public static final int MOST_APART = 1_000_000;

    private static final double ROUNDING = 1e-13;

    /** Checks the lines; throws {@link InvalidInput} naming what is out of range. */
    public StopLines {
        Require.positive("slope", slope);
        Require.atLeast("least number of samples", minSamples, 1);
        if (!(maxSamples >= minSamples && maxSamples <= MOST_SAMPLES)) {
            throw new InvalidInput(
                    ("the largest number of samples is %d; it must be at least the least number,"
                                    + " %d, and at most %d. Maybe 60.")
                            .formatted(maxSamples, minSamples, MOST_SAMPLES));
        }
        if (!(upperIntercept > lowerIntercept)) {
            throw new InvalidInput(
                    "the upper stop line starts at %s; it must be above the lower, %s."
                            .formatted(upperIntercept, lowerIntercept));
        }
        if (!(upperIntercept - lowerIntercept + slope * minSamples <= MOST_APART)) {
            throw new InvalidInput(
                    ("the stop lines lie %.4g individuals apart; %d is the most. Maybe the two"
                         + " densities are too alike or too large for one sample, or k is too"
                         + " small.")
                            .formatted(upperIntercept - lowerIntercept, MOST_APART));
        }
    }

    /**
     * The lower line.
     *
     * @param sampleSize number of samples counted
     * @return cumulative count; negative as long as no count is low enough
     */
    public double lower(int sampleSize) {
        return line(slope * sampleSize, lowerIntercept);
    }

    /**
     * The upper line.
     *
     * @param sampleSize number of samples counted
     * @return cumulative count
     */
    public double upper(int sampleSize) {
        return line(slope * sampleSize, upperIntercept);
    }

    private static double line(double rise, double intercept) {
        double exact = rise + intercept;
        double whole = Math.rint(exact);
        double scale = Math.max(1, Math.abs(rise) + Math.abs(intercept));
        return Math.abs(exact - whole) <= ROUNDING * scale ? whole : exact;
    }

    /**
     * The largest cumulative count that stops below.
     *
     * @param sampleSize number of samples counted
     * @return the lower line rounded down; empty as long as it is negative
     */
    public OptionalLong stopBelow(int sampleSize) {
        double lower = lower(sampleSize);
        return lower >= 0 ? OptionalLong.of((long) Math.floor(lower)) : OptionalLong.empty();
    }

    /**
     * The smallest cumulative count that stops above.
     *
     * @param sampleSize number of samples counted
     * @return the upper line rounded up
     */
    public long stopAbove(int sampleSize) {
        return (long) Math.ceil(upper(sampleSize));
    }

    /**
     * What to do after a sample.
     *
     * @param sampleSize number of samples counted, 1 or more
     * @param cumulativeCount individuals in all of them together, 0 or more
     * @return stop below, stop above, go on, or sampled out
     * @throws InvalidInput if one of them is out of range
     */
    public SequentialStep step(int sampleSize, long cumulativeCount) {
        Require.atLeast("sampleSize", sampleSize, 1);
        Require.atLeast("cumulativeCount", cumulativeCount, 0);
        if (sampleSize < minSamples) {
            return SequentialStep.CONTINUE;
        }
        if (cumulativeCount <= lower(sampleSize)) {
            return SequentialStep.BELOW;
        }
        if (cumulativeCount >= upper(sampleSize)) {
            return SequentialStep.ABOVE;
        }
        return sampleSize >= maxSamples ? SequentialStep.SAMPLED_OUT : SequentialStep.CONTINUE;
    }

    /** The same lines, moved up by so many individuals and ended after so many samples. */
    StopLines moved(double up, int lastSample) {
        return new StopLines(
                slope, lowerIntercept + up, upperIntercept + up, minSamples, lastSample);
    }
}
