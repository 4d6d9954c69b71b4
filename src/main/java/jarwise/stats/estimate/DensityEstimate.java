package jarwise.stats.estimate;

import jarwise.stats.count.CountFit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Mean density of one group of samples with its interval: individuals per sampling unit, corrected
 * for extraction efficiency and reader sensitivity.
 *
 * @param samples what it was made from
 * @param interval density and limits
 * @param fit most likely density as counted and k, with the log-likelihood
 * @param apparent density as counted; present where efficiency or sensitivity was given
 * @param probabilityAboveThreshold chance that the density is above the action threshold; empty
 *     where no threshold was given or the samples cannot say
 * @param warnings what a reader of the figure has to know, each one sentence or two
 */
public record DensityEstimate(
        SampleSummary samples,
        DensityInterval interval,
        CountFit fit,
        Optional<ApparentDensity> apparent,
        OptionalDouble probabilityAboveThreshold,
        List<String> warnings) {

    /** Keeps the warnings from being changed. */
    public DensityEstimate {
        warnings = List.copyOf(warnings);
    }

    /** {@return number of samples, J} */
    public int sampleSize() {
        return samples.sampleSize();
    }

    /** {@return sampling units in all samples} */
    public double samplingUnits() {
        return samples.samplingUnits();
    }

    /** {@return individuals counted in all samples} */
    public long individuals() {
        return samples.individuals();
    }

    /** {@return share of samples with at least one find} */
    public double proportionPositive() {
        return samples.proportionPositive();
    }

    /** {@return most likely density} */
    public double estimate() {
        return interval.estimate();
    }

    /** {@return its standard error; empty where nothing was found} */
    public OptionalDouble standardError() {
        return interval.standardError();
    }

    /** {@return lower limit} */
    public double lower() {
        return interval.lower();
    }

    /** {@return upper limit; empty where these samples set none} */
    public OptionalDouble upper() {
        return interval.upper();
    }

    /** {@return level of the interval} */
    public double confidenceLevel() {
        return interval.confidenceLevel();
    }

    /** {@return densities above it were left out; only in integrated intervals} */
    public OptionalDouble largestDensityConsidered() {
        return interval.largestDensityConsidered();
    }

    /**
     * {@return most likely or given k; empty for Poisson, or where nothing was found and k unknown}
     */
    public OptionalDouble k() {
        return fit.k();
    }

    /** {@return natural logarithm of the likelihood, all constants included} */
    public double logLikelihood() {
        return fit.logLikelihood();
    }
}
