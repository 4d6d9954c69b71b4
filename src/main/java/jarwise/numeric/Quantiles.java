package jarwise.numeric;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/**
 * Quantiles that keep their digits at any level a double can hold: what lies beyond a quantile is
 * handed in as itself, never as 1 minus it, and is compared by its logarithm.
 *
 * <p><b>Source.</b> Abramowitz and Stegun (1964), 26.5 and 26.7 (from memory), for Student's t by
 * the incomplete beta function. Reference values: {@code reference/quantiles/*.csv}, high-precision
 * arithmetic.
 */
public final class Quantiles {

    private static final double FARTHEST = 2000; // on the scales of ln x and ln(x / (1 − x))
    private static final double LINEAR = 1e-8; // so near its middle a density is flat

    private Quantiles() {}

    /**
     * How far a normal variable strays from its mean with this probability.
     *
     * @param level in (0, 1)
     * @return z with P(|Z| ≤ z) = level, standard deviations
     */
    public static double normal(double level) {
        return Math.sqrt(2) * Erf.erfInv(level);
    }

    /**
     * The value that a standard normal variable exceeds with this probability.
     *
     * @param above in (0, 1), from 2^−53 on
     * @return z with P(Z > z) = above
     */
    public static double normalAbove(double above) {
        return Math.sqrt(2) * Erf.erfInv(1 - 2 * above);
    }

    /**
     * The quantile of the chi-squared distribution with one degree of freedom.
     *
     * @param level in (0, 1)
     * @return the square of {@link #normal}
     */
    public static double chiSquared(double level) {
        double z = normal(level);
        return z * z;
    }

    /**
     * How far Student's t strays from 0 with this probability.
     *
     * @param level in (0, 1)
     * @param degrees degrees of freedom, above 0
     * @return t with P(|T| ≤ t) = level
     */
    public static double student(double level, double degrees) {
        if (level < LINEAR) {
            double peak = Math.exp(-Beta.logBeta(0.5, 0.5 * degrees)) / Math.sqrt(degrees);
            return level / (2 * peak);
        }
        double share = beta(0.5 * degrees, 0.5, 1 - level);
        return Math.sqrt(degrees * (1 - share) / share);
    }

    /**
     * The quantile of a Beta distribution.
     *
     * @param a first shape, above 0
     * @param b second shape, above 0
     * @param below probability of what is smaller, in (0, 1)
     * @return the quantile, in (0, 1)
     */
    public static double beta(double a, double b, double below) {
        double logit =
                quantile(
                        x -> Beta.regularizedBeta(1 / (1 + Math.exp(-x)), a, b),
                        below,
                        Math.log(a / b),
                        Math.sqrt(1 / a + 1 / b));
        return 1 / (1 + Math.exp(-logit));
    }

    /**
     * The quantile of a gamma distribution with scale 1.
     *
     * @param shape above 0
     * @param below probability of what is smaller, in (0, 1)
     * @return the quantile, above 0
     */
    public static double gamma(double shape, double below) {
        return Math.exp(
                quantile(
                        x -> Gamma.regularizedGammaP(shape, Math.exp(x)),
                        below,
                        Math.log(shape),
                        1 / Math.sqrt(shape)));
    }

    /**
     * The same from what is larger.
     *
     * @param shape above 0
     * @param above probability of what is larger, in (0, 1)
     * @return the quantile, above 0
     */
    public static double gammaAbove(double shape, double above) {
        return Math.exp(
                -quantile(
                        x -> Gamma.regularizedGammaQ(shape, Math.exp(-x)),
                        above,
                        -Math.log(shape),
                        1 / Math.sqrt(shape)));
    }

    private static double quantile(
            DoubleUnaryOperator rising, double probability, double centre, double width) {
        double log = Math.log(probability);
        DoubleUnaryOperator over =
                x -> Math.log(Math.max(Double.MIN_VALUE, rising.applyAsDouble(x))) - log;
        double step = over.applyAsDouble(centre) > 0 ? -width : width;
        return Roots.walkingFrom(over, centre, step, centre + Math.copySign(FARTHEST, step))
                .orElseThrow();
    }
}
