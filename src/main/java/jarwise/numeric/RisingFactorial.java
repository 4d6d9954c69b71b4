package jarwise.numeric;

import org.hipparchus.special.Gamma;

/**
 * The part of a negative binomial probability that k and the count share: k (k + 1) … (k + y − 1)
 * over k to the power y. It tends to 1 as k grows, which is how the negative binomial becomes
 * Poisson.
 *
 * <p><b>Source.</b> Abramowitz and Stegun (1964), <i>Handbook of Mathematical Functions</i>, 6.1.22
 * (Pochhammer's symbol) and 6.1.41 (Stirling's series), formulas from memory; checked in the tests
 * against sums of logarithms.
 */
public final class RisingFactorial {

    private static final int PRODUCT_UP_TO = 100;
    private static final double RESCALE_ABOVE = 1e200;
    private static final double STIRLING_FROM = 16;
    private static final double ONLY_FIRST_TERM_BELOW = 1e-100;

    private RisingFactorial() {}

    /**
     * The logarithm of the rising factorial over its power: the sum of ln(1 + i/k) for i below y.
     *
     * @param k start of the product, above 0
     * @param y number of factors, 0 or more
     * @return 0 or more; 0 for y of 0 or 1, and near 0 where k is far above y squared
     */
    public static double logRatio(double k, long y) {
        if (k < ONLY_FIRST_TERM_BELOW) {
            return y <= 1 ? 0 : Gamma.logGamma((double) y) - (y - 1) * Math.log(k);
        }
        if (y <= PRODUCT_UP_TO) {
            return logOfProduct(k, (int) y);
        }
        if (k >= STIRLING_FROM) {
            double top = k + y;
            return (top - 0.5) * Math.log1p(y / k)
                    - y
                    + StirlingError.of(top)
                    - StirlingError.of(k);
        }
        return Gamma.logGamma(k + y) - Gamma.logGamma(k) - y * Math.log(k);
    }

    private static double logOfProduct(double k, int y) {
        double product = 1;
        double sum = 0;
        for (int i = 1; i < y; i++) {
            product *= 1 + i / k;
            if (product > RESCALE_ABOVE) {
                sum += Math.log(product);
                product = 1;
            }
        }
        // near 1 the product has rounded away what the sum of logarithms still knows
        return sum == 0 && product < 1.01 ? sumOfLogs(k, y) : sum + Math.log(product);
    }

    private static double sumOfLogs(double k, int y) {
        double sum = 0;
        for (int i = 1; i < y; i++) {
            sum += Math.log1p(i / k);
        }
        return sum;
    }

    /**
     * The derivative of {@link #logRatio} with respect to ln k: minus the sum of i/(k + i) for i
     * below y.
     *
     * @param k start of the product, above 0
     * @param y number of factors, 0 or more
     * @return 0 or less
     */
    public static double slope(double k, long y) {
        if (y <= PRODUCT_UP_TO) {
            double sum = 0;
            for (int i = 1; i < y; i++) {
                sum += i / (k + i);
            }
            return -sum;
        }
        int steps = (int) Math.max(0, Math.ceil(STIRLING_FROM - k));
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += 1 / (k + i);
        }
        double from = k + steps;
        double rise = Math.log1p((y - steps) / from) + digammaRest(k + y) - digammaRest(from);
        return k * (sum + rise) - y;
    }

    /**
     * Digamma without its logarithm, from 16 on: the library's has 8 digits, which k multiplies.
     */
    private static double digammaRest(double z) {
        double square = 1 / (z * z);
        double series =
                1.0 / 12
                        - square
                                * (1.0 / 120
                                        - square
                                                * (1.0 / 252
                                                        - square * (1.0 / 240 - square / 132)));
        return -0.5 / z - square * series;
    }
}
