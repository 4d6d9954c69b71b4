package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.LogOnePlus;
import jarwise.numeric.NegativeBinomial;
import jarwise.stats.count.GivenK;

/**
 * Samples whose individuals are counted: negative binomial counts with known k, or Poisson.
 *
 * <p>With mean m, evidence per individual is ln(1 + k·(m1 − m0) / (m0·(m1 + k))) and evidence per
 * sample k·ln((m1 + k)/(m0 + k)); for Poisson ln(m1/m0) and m1 − m0.
 *
 * <p><b>Assumes</b> the same k at every density. Where k changes with density, use the k of the
 * density at which the decision is made, and look at the outcome with other true k.
 *
 * <p><b>Source.</b> Wald (1947), <i>Sequential Analysis</i>; Oakland (1950), <i>Biometrics</i> 6
 * (formulas from memory). Reference values: {@code reference/sequential/stop-lines.csv}.
 *
 * @param k dispersion of one sample; infinite for Poisson counts
 */
public record CountedSamples(double k) implements SampleModel {

    /** Poisson counts. */
    public static final CountedSamples POISSON = new CountedSamples(Double.POSITIVE_INFINITY);

    private static final double LARGEST_MEAN = 1e9;

    /** Checks k; throws {@link InvalidInput} if it is out of range. */
    public CountedSamples {
        GivenK.require(k);
    }

    /** {@return whether counts are Poisson: k infinite, or as good as that} */
    public boolean isPoisson() {
        return GivenK.isPoisson(k);
    }

    @Override
    public double evidencePerIndividual(double lowerMean, double upperMean) {
        double clumping = isPoisson() ? 1 : k / (k + upperMean);
        return Math.log1p((upperMean - lowerMean) / lowerMean * clumping);
    }

    @Override
    public double evidencePerSample(double lowerMean, double upperMean) {
        double more = upperMean - lowerMean;
        return isPoisson() ? more : k * Math.log1p(more / (lowerMean + k));
    }

    @Override
    public SampleChances chances(double mean, int most) {
        double clumping = isPoisson() ? Double.POSITIVE_INFINITY : k;
        return SampleChances.of(new NegativeBinomial(requireMean("density", mean), clumping), most);
    }

    @Override
    public double cumulants(double mean, double s) {
        double rise = Math.expm1(s);
        if (isPoisson()) {
            return mean * rise;
        }
        if (rise < 0) {
            return -k * LogOnePlus.ratio(-mean * rise, k);
        }
        double share = mean / k * rise;
        return share < 1 ? -k * Math.log1p(-share) : Double.POSITIVE_INFINITY;
    }

    @Override
    public double largestArgument(double mean) {
        return isPoisson() ? Double.POSITIVE_INFINITY : Math.log1p(k / mean);
    }

    @Override
    public double variance(double mean) {
        return mean + mean * mean / k;
    }

    @Override
    public double requireMean(String name, double mean) {
        Require.notNegative(name, mean);
        if (mean <= LARGEST_MEAN) {
            return mean;
        }
        throw new InvalidInput(
                "%s means %s individuals a sample; at most 1000000000 is allowed."
                        .formatted(name, mean));
    }
}
