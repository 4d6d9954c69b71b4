package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import java.util.Arrays;

/**
 * How a sequential plan ends at one true density: exact, by forward recursion over the cumulative
 * count.
 *
 * <p>{@code probabilityBelow} is the operating characteristic. The three chances add up to 1; what
 * is undecided is not shared out, and its sample number is the largest number of samples.
 */
public final class SequentialOutcome {

    /** A chance reached within 13 digits is reached. */
    private static final double REACHED = 1 - 1e-13;

    private final int firstSample;
    private final double[] stoppedBelow;
    private final double[] stoppedAbove;
    private final double undecided;

    /** Entry i of both arrays belongs to sample number {@code firstSample + i}. */
    SequentialOutcome(
            int firstSample, double[] stoppedBelow, double[] stoppedAbove, double undecided) {
        this.firstSample = firstSample;
        this.stoppedBelow = stoppedBelow;
        this.stoppedAbove = stoppedAbove;
        this.undecided = undecided;
    }

    /** {@return the chance to stop at or under the lower line: the operating characteristic} */
    public double probabilityBelow() {
        return Arrays.stream(stoppedBelow).sum();
    }

    /** {@return the chance to stop at or over the upper line} */
    public double probabilityAbove() {
        return Arrays.stream(stoppedAbove).sum();
    }

    /** {@return the chance to lie between the lines at the last sample} */
    public double probabilityUndecided() {
        return undecided;
    }

    /** {@return the chance that one of the lines is reached} */
    public double probabilitySettled() {
        return Math.min(1, probabilityBelow() + probabilityAbove());
    }

    /** {@return the expected number of samples} */
    public double averageSampleNumber() {
        double sum = 0;
        for (int i = 0; i < stoppedBelow.length; i++) {
            sum += (firstSample + i) * stopped(i);
        }
        return sum;
    }

    /** {@return the standard deviation of the number of samples} */
    public double standardDeviation() {
        double mean = averageSampleNumber();
        double sum = 0;
        for (int i = 0; i < stoppedBelow.length; i++) {
            double away = firstSample + i - mean;
            sum += away * away * stopped(i);
        }
        return Math.sqrt(sum);
    }

    /**
     * The number of samples that is enough in so many rounds.
     *
     * @param share share of rounds, above 0 and below 1
     * @return the smallest n with P(N ≤ n) at least {@code share}
     * @throws InvalidInput if {@code share} is out of range or NaN
     */
    public int sampleNumberQuantile(double share) {
        if (!(share > 0 && share < 1)) {
            throw new InvalidInput(
                    "the share of rounds is %s; it must be above 0 and below 1.".formatted(share));
        }
        double reached = 0;
        for (int i = 0; i < stoppedBelow.length; i++) {
            reached += stopped(i);
            if (reached >= share * REACHED) {
                return firstSample + i;
            }
        }
        return lastSample();
    }

    /**
     * The chance that sampling is over with this sample or before.
     *
     * @param sampleSize number of samples
     * @return in [0, 1], 1 from the last sample on
     */
    public double probabilityOverBy(int sampleSize) {
        double reached = 0;
        for (int i = 0; i < stoppedBelow.length && firstSample + i <= sampleSize; i++) {
            reached += stopped(i);
        }
        return Math.min(1, reached);
    }

    private int lastSample() {
        return firstSample + stoppedBelow.length - 1;
    }

    private double stopped(int i) {
        double here = stoppedBelow[i] + stoppedAbove[i];
        return i == stoppedBelow.length - 1 ? here + undecided : here;
    }
}
