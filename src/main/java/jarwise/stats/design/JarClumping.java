package jarwise.stats.design;

import jarwise.base.Require;

/**
 * How clumped is a jar, if more growing points go into it?
 *
 * <pre>
 *   1 / k(u) = 1 / kBetween + (1 + 1 / kBetween) / (u · kWithin)
 * </pre>
 *
 * <p>A jar's own level varies as a gamma deviate with shape kBetween around the density, each
 * growing point's around that with shape kWithin.
 *
 * <p><b>Source.</b> Variance of a product of independent gamma deviates with mean 1 (own
 * derivation; checked by simulation in the tests).
 *
 * @param kBetween clumping between jars, above 0; may be infinite
 * @param kWithin clumping between the growing points of a jar, above 0; may be infinite
 */
public record JarClumping(double kBetween, double kWithin) {

    /** Checks both. */
    public JarClumping {
        above0("kBetween", kBetween);
        above0("kWithin", kWithin);
    }

    private static void above0(String name, double k) {
        if (k != Double.POSITIVE_INFINITY) {
            Require.positive(name, k);
        }
    }

    /**
     * Dispersion of a jar of u growing points.
     *
     * @param samplingUnits growing points in the jar, above 0
     * @return k, above 0; infinite if nothing is clumped
     * @throws jarwise.base.InvalidInput if the units are not above 0
     */
    public double k(double samplingUnits) {
        Require.positive("units", samplingUnits);
        return 1 / (1 / kBetween + (1 + 1 / kBetween) / (samplingUnits * kWithin));
    }

    /**
     * The variance components of the density per growing point, relative to the density's square:
     * the plain Poisson scatter 1/density belongs to the single growing point.
     *
     * @param countedDensity individuals counted per growing point, above 0
     * @return between 1/kBetween, within 1/density + (1 + 1/kBetween)/kWithin
     * @throws jarwise.base.InvalidInput if the density is not above 0
     */
    public VarianceComponents components(double countedDensity) {
        Require.positive("density", countedDensity);
        return new VarianceComponents(
                1 / kBetween, 1 / countedDensity + (1 + 1 / kBetween) / kWithin);
    }
}
