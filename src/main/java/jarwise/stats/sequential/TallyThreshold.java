package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.Roots;
import jarwise.stats.count.GivenK;

/**
 * How density and the proportion of infested samples go together: a sample is infested if it holds
 * as many individuals as the tally threshold, or more.
 *
 * <pre>
 *   proportion = P(Y ≥ tallyThreshold), Y negative binomial with mean units · density and this k
 * </pre>
 *
 * <p><b>Assumes</b> the same k at every density; where k changes, the proportion at one density may
 * belong to another density, and a presence–absence plan errs with it. The higher the tally
 * threshold (up to about the critical mean), the less k matters.
 *
 * <p><b>Source.</b> Binns, Nyrop and van der Werf (2000), <i>Sampling and Monitoring in Crop
 * Protection</i>, ch. 4 (from memory). Checked by plain sums in the tests: our own arithmetic.
 *
 * @param individuals individuals from which a sample counts as infested, 1 to 1,000,000
 * @param k dispersion of one sample; infinite for Poisson
 * @param unitsPerSample sampling units in a sample, above 0
 */
public record TallyThreshold(int individuals, double k, double unitsPerSample) {

    private static final int MOST = 1_000_000;
    private static final double FARTHEST = 1e9;

    /** Checks the three numbers; throws {@link InvalidInput} naming the one out of range. */
    public TallyThreshold {
        if (!(individuals >= 1 && individuals <= MOST)) {
            throw new InvalidInput(
                    "tallyThreshold is %d; it must be 1 to %d.".formatted(individuals, MOST));
        }
        GivenK.require(k);
        Require.positive("sampling units in a sample", unitsPerSample);
    }

    /**
     * The proportion of samples at or over the tally threshold.
     *
     * @param density individuals per sampling unit, 0 or more
     * @return in [0, 1], rising with density
     * @throws InvalidInput if the density is negative, infinite or NaN
     */
    public double proportionInfested(double density) {
        Require.notNegative("density", density);
        return new NegativeBinomial(unitsPerSample * density, k)
                .exceedanceProbability(individuals - 1);
    }

    /**
     * The density at which so many samples are at or over the tally threshold.
     *
     * @param proportion proportion of samples, above 0 and below 1
     * @return individuals per sampling unit
     * @throws InvalidInput if the proportion is out of range, or belongs to no density that a
     *     sample can have
     */
    public double density(double proportion) {
        Require.between("proportion infested", proportion, 0, 1);
        double logMean =
                Roots.walkingFrom(
                                log ->
                                        proportionInfested(Math.exp(log) / unitsPerSample)
                                                - proportion,
                                Math.log(FARTHEST),
                                -1,
                                -700)
                        .orElseThrow(
                                () ->
                                        new InvalidInput(
                                                ("proportion infested is %s; with this k no"
                                                                + " density gives it.")
                                                        .formatted(proportion)));
        return Math.exp(logMean) / unitsPerSample;
    }
}
