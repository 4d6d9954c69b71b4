package jarwise.stats.detect;

import jarwise.base.Require;
import java.util.OptionalLong;

/** How the chance of at least one find grows with the number of samples. */
public interface DetectionCurve {

    /** A chance that falls short of the wanted one by less than this counts as reached. */
    double TOLERANCE = 1e-12;

    /** And by less than this share of the chance of missing that is left to it. */
    double RELATIVE = 1e-6;

    /**
     * The chance that all samples together show nothing although it is there.
     *
     * @param sampleSize samples, 0 to {@link #mostSamples()}
     * @return in [0, 1], never rising
     */
    double missed(long sampleSize);

    /** {@return the largest number of samples looked at: all there are, or all that make sense} */
    long mostSamples();

    /**
     * The chance of at least one find.
     *
     * @param sampleSize samples, 0 to {@link #mostSamples()}
     * @return in [0, 1], never falling
     */
    default double probability(long sampleSize) {
        return 1 - missed(sampleSize);
    }

    /**
     * How many samples find it with this confidence?
     *
     * <p>The smallest number whose chance of a find reaches the confidence, to within {@link
     * #TOLERANCE}, or near 1 to within {@link #RELATIVE} of what it leaves. Found by doubling and
     * halving, so that the cost grows with the logarithm of the answer.
     *
     * @param confidenceLevel wanted chance of at least one find, in (0, 1)
     * @return 1 or more; empty if even {@link #mostSamples()} do not reach it
     * @throws jarwise.base.InvalidInput if the level is outside (0, 1)
     */
    default OptionalLong sampleSize(double confidenceLevel) {
        Require.between("confidence", confidenceLevel, 0, 1);
        double miss = 1 - confidenceLevel;
        double most = miss + Math.min(TOLERANCE, RELATIVE * miss);
        long tooFew = 0;
        long enough = 1;
        while (missed(enough) > most) {
            if (enough == mostSamples()) {
                return OptionalLong.empty();
            }
            tooFew = enough;
            enough = Math.min(2 * enough, mostSamples());
        }
        while (enough - tooFew > 1) {
            long middle = tooFew + (enough - tooFew) / 2;
            if (missed(middle) > most) {
                tooFew = middle;
            } else {
                enough = middle;
            }
        }
        return OptionalLong.of(enough);
    }
}
