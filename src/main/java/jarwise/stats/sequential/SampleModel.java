package jarwise.stats.sequential;

import jarwise.base.InvalidInput;

/**
 * What one sample adds to the cumulative count, and what that says between two means.
 *
 * <p>Both kinds belong to an exponential family, so the log-likelihood ratio of the higher against
 * the lower mean is a straight line in what the sample adds:
 *
 * <pre>
 *   ln P(y | upper mean) − ln P(y | lower mean) = y · evidencePerIndividual − evidencePerSample
 * </pre>
 */
public sealed interface SampleModel permits CountedSamples, PresenceAbsence {

    /**
     * Log-likelihood ratio that each individual adds.
     *
     * @param lowerMean mean per sample of the lower class, above 0
     * @param upperMean mean per sample of the upper class, above {@code lowerMean}
     * @return above 0
     */
    double evidencePerIndividual(double lowerMean, double upperMean);

    /**
     * Log-likelihood ratio that each sample takes away, whatever is in it.
     *
     * @param lowerMean mean per sample of the lower class, above 0
     * @param upperMean mean per sample of the upper class, above {@code lowerMean}
     * @return above 0
     */
    double evidencePerSample(double lowerMean, double upperMean);

    /**
     * Chances of what one sample adds.
     *
     * @param mean mean per sample; a proportion for {@link PresenceAbsence}
     * @param most the largest count that is asked for, 0 or more
     * @return the chances
     * @throws InvalidInput if the mean is not one that this kind of sample can have
     */
    SampleChances chances(double mean, int most);

    /**
     * Cumulant generating function of one sample, ln E(exp(s·y)).
     *
     * @param mean mean per sample
     * @param s any number up to {@link #largestArgument}
     * @return the function's value; infinite where the expectation does not exist
     */
    double cumulants(double mean, double s);

    /**
     * Where the cumulant generating function ends.
     *
     * @param mean mean per sample, above 0
     * @return the end; infinite if there is none
     */
    double largestArgument(double mean);

    /**
     * Variance of what one sample adds.
     *
     * @param mean mean per sample
     * @return the variance
     */
    double variance(double mean);

    /**
     * Returns the mean if samples of this kind can have it.
     *
     * @param name what the mean is, as a scout would call it
     * @param mean mean per sample, or a proportion
     * @return {@code mean}
     * @throws InvalidInput if they cannot, or if it is NaN
     */
    double requireMean(String name, double mean);
}
