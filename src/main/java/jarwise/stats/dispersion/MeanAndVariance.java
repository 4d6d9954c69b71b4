package jarwise.stats.dispersion;

import java.util.Optional;

/**
 * One group of samples as a point of a regression of variance on mean.
 *
 * @param group its name, for messages
 * @param sampleSize number of samples, 2 or more
 * @param mean individuals per sample, 0 or more
 * @param variance variance of the counts, divisor n − 1, 0 or more
 */
public record MeanAndVariance(String group, long sampleSize, double mean, double variance) {

    /**
     * The point of a group.
     *
     * @param group its name
     * @param dispersion its indices
     * @return its point; empty for one sample, which has no variance
     */
    public static Optional<MeanAndVariance> of(String group, CountDispersion dispersion) {
        return dispersion.variance().isPresent()
                ? Optional.of(
                        new MeanAndVariance(
                                group,
                                dispersion.sampleSize(),
                                dispersion.mean(),
                                dispersion.variance().getAsDouble()))
                : Optional.empty();
    }
}
