package jarwise.stats.detect;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.estimate.DetectionShare;

/**
 * How many units of a large lot must be looked at to find an infested one?
 *
 * <pre>
 *   binomial: P(miss) = (1 − P · E)^n      n = ⌈ln(1 − C) / ln(1 − P · E)⌉
 *   Poisson:  P(miss) = exp(−P · E · n)    n = ⌈−ln(1 − C) / (P · E)⌉
 * </pre>
 *
 * <p>The Poisson form is an approximation that asks for a few more. Where the efficacy E was
 * measured, P(miss) is averaged over what the measurement leaves open, the same for all n units.
 *
 * <p><b>Assumes</b> a lot so large that taking units out does not change it (a sample of at most
 * one in twenty; otherwise {@link FiniteLot} asks for fewer), and infested units spread at random.
 * Where they come together, {@link CorrelatedLot} asks for more.
 *
 * <p><b>Source.</b> International Standard for Phytosanitary Measures 31 (2008), acceptance number
 * 0; its tables as recomputed in {@code reference/detection/large-lot-table.csv}.
 *
 * @param proportionInfested share of infested units that should not go unnoticed, above 0, below 1
 * @param efficacy chance that an infested unit that is looked at is recognised
 * @param form which of the two formulas
 */
public record LargeLot(double proportionInfested, DetectionShare efficacy, Form form)
        implements DetectionCurve {

    /** The largest number of units looked at; up to here whole numbers have no gaps. */
    public static final long MOST_SAMPLES = 1_000_000_000_000_000L;

    /** The formula for a large lot. */
    public enum Form {
        BINOMIAL,
        POISSON
    }

    /** Checks the share. */
    public LargeLot {
        proportion(proportionInfested);
    }

    static void proportion(double proportionInfested) {
        if (!(proportionInfested > 0 && proportionInfested < 1)) {
            throw new InvalidInput(
                    ("infested is %s; without the size of the lot it must be a share above 0 and"
                                    + " below 1. Maybe the lot is missing.")
                            .formatted(proportionInfested));
        }
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
        double found = proportionInfested * share;
        double evidence = form == Form.POISSON ? found : -Math.log1p(-found);
        return Math.exp(-sampleSize * evidence);
    }
}
