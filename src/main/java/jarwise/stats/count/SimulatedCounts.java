package jarwise.stats.count;

import jarwise.base.Require;
import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;

/**
 * Draws made-up counts, for demonstrations and for trying out a plan: what would samples show if
 * the crop were like this? The same seed gives the same draws on every machine.
 *
 * <p><b>Assumes</b> independent draws. Counts follow the negative binomial distribution, which is a
 * Poisson count whose mean is itself drawn from a gamma distribution; with k without limit it is
 * Poisson.
 *
 * <p><b>Source.</b> Johnson, Kemp and Kotz (2005), <i>Univariate Discrete Distributions</i>, ch. 5
 * (from memory); generator and deviates are those of {@link SeededRandom}.
 */
public final class SimulatedCounts {

    private final SeededRandom random;

    /**
     * Starts a sequence of draws.
     *
     * @param seed any number; the same seed gives the same sequence
     */
    public SimulatedCounts(long seed) {
        random = new SeededRandom(seed);
    }

    /** {@return a number in [0, 1), every one equally likely} */
    public double uniform() {
        return random.uniform();
    }

    /**
     * Decides whether something of known chance happens.
     *
     * @param share its chance, 0 to 1; one that is not above 0 never happens
     */
    public boolean happens(double share) {
        return random.uniform() < share;
    }

    /**
     * Draws one of a number of things, every one equally likely.
     *
     * @param bound how many there are, 1 or more
     * @return from 0 up to {@code bound − 1}
     */
    public int below(int bound) {
        return random.below(bound);
    }

    /** {@return a normal deviate, mean 0 and standard deviation 1} */
    public double normal() {
        return random.normal();
    }

    /**
     * Draws a gamma deviate: how much richer than the mean one place is.
     *
     * @param shape no unit; above 0. Small means very uneven places
     * @param mean above 0
     * @return a number above 0 with that mean and variance mean² / shape
     */
    public double gamma(double shape, double mean) {
        Require.positive("shape", shape);
        Require.positive("mean", mean);
        return random.gamma(shape, mean);
    }

    /**
     * Draws a Poisson count.
     *
     * @param mean individuals expected, 0 or more
     * @return individuals, 0 or more
     */
    public long poisson(double mean) {
        return random.poisson(Require.notNegative("mean", mean));
    }

    /**
     * Draws a negative binomial count.
     *
     * @param mean individuals expected, 0 or more
     * @param k dispersion parameter, no unit; above 0
     * @return individuals, 0 or more, with variance mean + mean² / k
     */
    public long negativeBinomial(double mean, double k) {
        return random.count(new NegativeBinomial(mean, k));
    }
}
