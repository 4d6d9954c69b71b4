package jarwise.stats.detect;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.estimate.DetectionShare;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * How many units must be looked at if infested ones come together?
 *
 * <p>Beta-binomial: the share of infested units p in what is sampled is itself Beta distributed
 * with mean P and correlation ρ between two units:
 *
 * <pre>
 *   θ = ρ / (1 − ρ),  p ~ Beta(P / θ, (1 − P) / θ)
 *   P(miss) = mean of (1 − p · E)^n over p
 *           = ∏_{j=0}^{n−1} (1 − P + j · θ) / (1 + j · θ)                     for E = 1
 *           = Σ_m C(n, m) E^m (1 − E)^(n−m) ∏_{j=0}^{m−1} (1 − P + jθ)/(1 + jθ)  for E &lt; 1
 * </pre>
 *
 * <p>Efficacy thins: each infested unit that is looked at is recognised with chance E on its own,
 * as if only a Binomial(n, E) number of units had been looked at with full efficacy. It is not put
 * into the mean P with ρ unchanged. ρ → 0 gives the binomial of {@link LargeLot}.
 *
 * <p><b>Assumes</b> a large lot, and all n units from one such clustered part: units taken from
 * many independent parts need fewer.
 *
 * <p><b>Source.</b> Beta-binomial after Skellam (1948), <i>Journal of the Royal Statistical Society
 * B</i> 10:257-261 (from memory); the form used by the International Standard for Phytosanitary
 * Measures 31 for efficacy below 1 could not be read, so sizes may differ from its table. Reference
 * values: {@code reference/detection/correlated-lot.csv} (own arithmetic).
 *
 * @param proportionInfested mean share of infested units, above 0, below 1
 * @param correlation ρ between two units of the sample, 0.000001 to 0.999999
 * @param efficacy chance that an infested unit that is looked at is recognised
 */
public record CorrelatedLot(double proportionInfested, double correlation, DetectionShare efficacy)
        implements DetectionCurve {

    /** The largest number of units looked at. */
    public static final long MOST_SAMPLES = 1_000_000_000;

    private static final double LEAST_CORRELATION = 1e-6;

    /** Checks both shares. */
    public CorrelatedLot {
        LargeLot.proportion(proportionInfested);
        if (!(correlation >= LEAST_CORRELATION && correlation <= 1 - LEAST_CORRELATION)) {
            throw new InvalidInput(
                    ("correlation is %s; it must be 0.000001 to 0.999999."
                                    + " Maybe leave it out: then units are infested independently.")
                            .formatted(correlation));
        }
    }

    /** {@return aggregation θ = ρ / (1 − ρ)} */
    public double theta() {
        return correlation / (1 - correlation);
    }

    @Override
    public long mostSamples() {
        return MOST_SAMPLES;
    }

    @Override
    public double missed(long sampleSize) {
        Require.atLeast("sampleSize", sampleSize, 0);
        return Math.min(1, efficacy.average(share -> missed(sampleSize, share)));
    }

    private double missed(long sampleSize, double share) {
        if (share == 1 || sampleSize == 0) {
            return allSound(sampleSize);
        }
        BinomialDistribution recognisable = new BinomialDistribution((int) sampleSize, share);
        return new SpreadMean(m -> recognisable.logProbability((int) m), 0, sampleSize)
                .of(
                        Math.min(sampleSize, (long) ((sampleSize + 1) * share)),
                        Math.sqrt(recognisable.getNumericalVariance()),
                        this::allSound);
    }

    private double allSound(long units) {
        return MissedUnits.betaMoment(
                proportionInfested / theta(), (1 - proportionInfested) / theta(), (double) units);
    }
}
