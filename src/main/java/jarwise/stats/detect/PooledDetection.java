package jarwise.stats.detect;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * How many pools find it, if units are tested together?
 *
 * <pre>
 *   θ = Se − (Se + Sp − 1) · (1 − p)^k      chance that a pool of k units tests positive
 *   P(at least one positive of r pools) = 1 − (1 − θ)^r
 * </pre>
 *
 * <p><b>Assumes</b> units infested independently, pools formed at random, a test that is no worse
 * in a large pool. With a specificity below 1 some positives are false; {@link #allNegative} tells
 * how often a sound crop passes.
 *
 * <p><b>Source.</b> Christensen and Gardner (2000), <i>Preventive Veterinary Medicine</i>
 * 45:83-106, as printed in the examples of a statistics library's help pages. Reference values:
 * {@code reference/detection/pools.csv}.
 *
 * @param proportionInfested share of infested units, in [0, 1]
 * @param poolSize units tested together, 1 or more
 * @param sensitivity share of pools with an infested unit that test positive, in (0, 1]
 * @param specificity share of sound pools that test negative, in (0, 1]
 */
public record PooledDetection(
        double proportionInfested, int poolSize, double sensitivity, double specificity)
        implements DetectionCurve {

    /** Checks the parameters. */
    public PooledDetection {
        if (!(proportionInfested >= 0 && proportionInfested <= 1)) {
            throw new InvalidInput(
                    "proportionInfested is %s; it must be 0 to 1.".formatted(proportionInfested));
        }
        Require.atLeast("poolSize", poolSize, 1);
        Require.share("sensitivity", sensitivity);
        Require.share("specificity", specificity);
        if (!(sensitivity + specificity > 1)) {
            throw new InvalidInput(
                    ("sensitivity is %s and specificity %s; together they must be above 1, or the"
                                    + " test tells nothing.")
                            .formatted(sensitivity, specificity));
        }
    }

    /** {@return θ, the chance that one pool tests positive} */
    public double positive() {
        double sound = Math.pow(1 - proportionInfested, poolSize);
        return sensitivity * (1 - sound) + (1 - specificity) * sound;
    }

    /**
     * The chance that a crop without any infested unit passes.
     *
     * @param pools pools tested, 0 or more
     * @return specificity to the power of the pools
     */
    public double allNegative(long pools) {
        return Math.pow(specificity, (double) Require.atLeast("pools", pools, 0));
    }

    @Override
    public long mostSamples() {
        return LargeLot.MOST_SAMPLES;
    }

    @Override
    public double missed(long sampleSize) {
        return Math.pow(1 - positive(), (double) Require.atLeast("sampleSize", sampleSize, 0));
    }
}
