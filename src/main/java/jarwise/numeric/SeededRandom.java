package jarwise.numeric;

import org.hipparchus.random.RandomDataGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Random counts and shares that are the same for the same seed, on every machine: for simulated
 * samples and for coverage studies. Not for secrets.
 *
 * <p><b>Source.</b> Generator WELL19937c of Panneton, L'Ecuyer and Matsumoto (2006) and the
 * deviates of Hipparchus; a negative binomial count is a Poisson count whose mean is a gamma
 * deviate.
 */
public final class SeededRandom {

    private final RandomDataGenerator generator;

    /**
     * Starts a sequence.
     *
     * @param seed any number; the same seed gives the same sequence
     */
    public SeededRandom(long seed) {
        generator = RandomDataGenerator.of(new Well19937c(seed));
    }

    /** {@return a number in [0, 1), uniform} */
    public double uniform() {
        return generator.nextDouble();
    }

    /**
     * A whole number, every one equally likely.
     *
     * @param bound 1 or more
     * @return a number from 0 up to {@code bound − 1}
     */
    public int below(int bound) {
        return generator.nextInt(bound);
    }

    /** {@return a normal deviate with mean 0 and standard deviation 1} */
    public double normal() {
        return generator.nextNormal(0, 1);
    }

    /**
     * A gamma deviate.
     *
     * @param shape above 0
     * @param mean above 0
     * @return a number above 0 with this mean and variance mean² / shape
     */
    public double gamma(double shape, double mean) {
        return generator.nextGamma(shape, mean / shape);
    }

    /**
     * A Poisson count.
     *
     * @param mean 0 or more
     * @return a count with this mean
     */
    public long poisson(double mean) {
        return mean > 0 ? generator.nextPoisson(mean) : 0;
    }

    /**
     * A Beta deviate.
     *
     * @param a first shape, above 0
     * @param b second shape, above 0
     * @return a number in [0, 1]
     */
    public double beta(double a, double b) {
        return generator.nextBeta(a, b);
    }

    /**
     * A negative binomial count.
     *
     * @param distribution mean and k; Poisson where k is infinite
     * @return a count from it
     */
    public long count(NegativeBinomial distribution) {
        double mean = distribution.mean();
        if (mean == 0 || Double.isInfinite(distribution.k())) {
            return poisson(mean);
        }
        return poisson(gamma(distribution.k(), mean));
    }
}
