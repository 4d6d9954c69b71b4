package jarwise.stats.detect;

import jarwise.base.Require;
import jarwise.numeric.LogOnePlus;
import jarwise.numeric.Roots;
import jarwise.stats.count.GivenK;
import jarwise.stats.estimate.Detection;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * How many jars find insects of a given density, if they are clumped?
 *
 * <pre>
 *   P(at least one in J samples) = 1 − (1 + u · e · s · density / k)^(−k · J)
 * </pre>
 *
 * <p>with 1 − exp(−u · e · s · density · J) for infinite k. Where efficiency e or sensitivity s was
 * measured, the chance of missing all is averaged over what the measurement leaves open; e and s
 * are the same for all J samples, so that more samples never quite make up for a bad wash.
 *
 * <p><b>Assumes</b> samples drawn independently and at random, all of u sampling units, and a k of
 * the sample that is right for the low densities that one wants to find. Stages that the method
 * does not see (eggs in tissue) are not found by any number of samples.
 *
 * <p><b>Source.</b> Zero class of the negative binomial (Bliss and Fisher 1953, <i>Biometrics</i>
 * 9:176-200). Reference values: {@code reference/detection/clumped.csv}.
 *
 * @param density density that should be found, individuals per sampling unit; above 0
 * @param samplingUnits sampling units in one sample, above 0
 * @param k dispersion of one sample, in the range of {@link GivenK}; may be infinite
 * @param detection share of the individuals that is counted
 */
public record ClumpedDetection(double density, double samplingUnits, double k, Detection detection)
        implements DetectionCurve {

    /** The largest number of samples looked at; up to here whole numbers have no gaps. */
    public static final long MOST_SAMPLES = 1_000_000_000_000_000L;

    /** Checks the parameters. */
    public ClumpedDetection {
        Require.positive("density", density);
        Require.positive("units", samplingUnits);
        Require.positive("individuals in a sample", density * samplingUnits);
        GivenK.require(k);
    }

    @Override
    public long mostSamples() {
        return MOST_SAMPLES;
    }

    @Override
    public double missed(long sampleSize) {
        Require.atLeast("sampleSize", sampleSize, 0);
        return missedBy((double) sampleSize);
    }

    /**
     * The number of samples as the formula gives it, before it is rounded up.
     *
     * @param confidenceLevel wanted chance of at least one find, in (0, 1)
     * @return above 0; empty if it is beyond {@link #MOST_SAMPLES}
     * @throws jarwise.base.InvalidInput if the level is outside (0, 1)
     */
    public OptionalDouble samplesExact(double confidenceLevel) {
        Require.between("confidence", confidenceLevel, 0, 1);
        double logMissed = Math.log1p(-confidenceLevel);
        double atMean = logMissed / -evidence(detection.mean());
        if (!(atMean <= MOST_SAMPLES)) {
            return OptionalDouble.empty();
        }
        if (detection.varianceOfLog() == 0) {
            return OptionalDouble.of(atMean);
        }
        // By Jensen's inequality an open share needs more samples than its mean would.
        // whichever of the two chances is the smaller one keeps its digits
        DoubleUnaryOperator shortOf =
                confidenceLevel < 0.5
                        ? t -> Math.log(confidenceLevel) - Math.log(foundBy(Math.exp(t)))
                        : t -> Math.log(missedBy(Math.exp(t))) - logMissed;
        OptionalDouble root =
                Roots.walkingFrom(shortOf, Math.log(atMean) - 1, 1, Math.log(MOST_SAMPLES));
        return root.isPresent() ? OptionalDouble.of(Math.exp(root.getAsDouble())) : root;
    }

    private double missedBy(double samples) {
        return Math.min(1, detection.average(share -> Math.exp(-samples * evidence(share))));
    }

    private double foundBy(double samples) {
        return detection.average(share -> -Math.expm1(-samples * evidence(share)));
    }

    /** Minus the logarithm of the chance that one sample shows nothing. */
    private double evidence(double share) {
        double mean = samplingUnits * density * share;
        return GivenK.isPoisson(k) ? mean : k * LogOnePlus.ratio(mean, k);
    }
}
