package jarwise.stats.detect;

import jarwise.base.Require;
import jarwise.stats.estimate.DetectionShare;
import java.util.OptionalLong;

/**
 * Short formulas for a finite lot that are found in print, to compare with. Plans use the exact
 * {@link FiniteLot}; the two differ by a unit or two.
 *
 * @param lotSize units in the lot N, 1 or more
 * @param infestedUnits infested units D that should not go unnoticed, 1 to {@code lotSize}
 */
public record LotShortForms(long lotSize, long infestedUnits) {

    /** Checks the numbers as {@link FiniteLot} does. */
    public LotShortForms {
        new FiniteLot(lotSize, infestedUnits, DetectionShare.known(1));
    }

    /**
     * The chance of a find by the short form 1 − (1 − E · n / N)^D.
     *
     * <p>The lot seen from the infested units: each is among the n with chance n / N, taken as
     * independent. Errs on the low side: the exact chance is a little higher.
     *
     * <p><b>Source.</b> MacDiarmid's form, as in the source of a published library for surveys of
     * freedom from disease. Reference values: {@code reference/detection/short-form.csv}.
     *
     * @param sampleSize units looked at, 0 to {@code lotSize}
     * @param efficacy chance that an infested unit is recognised, in (0, 1]
     * @return chance in [0, 1]
     * @throws jarwise.base.InvalidInput if a number is out of range
     */
    public double probability(long sampleSize, double efficacy) {
        Require.atLeast("sampleSize", sampleSize, 0);
        Require.atLeast("units left in the lot", lotSize - sampleSize, 0);
        Require.share("efficacy", efficacy);
        return -Math.expm1(infestedUnits * Math.log1p(-efficacy * sampleSize / lotSize));
    }

    /**
     * Sample size by the same form: n = (N / E) · [1 − (1 − C)^(1/D)], rounded up.
     *
     * @param confidenceLevel wanted chance of a find, in (0, 1)
     * @param efficacy chance that an infested unit is recognised, in (0, 1]
     * @return units; empty if the form asks for more than the lot holds
     * @throws jarwise.base.InvalidInput if a number is out of range
     */
    public OptionalLong sampleSize(double confidenceLevel, double efficacy) {
        Require.share("efficacy", efficacy);
        long units = (long) Math.ceil(lotSize / efficacy * shareNeeded(confidenceLevel));
        return units > lotSize ? OptionalLong.empty() : OptionalLong.of(units);
    }

    /**
     * Sample size before rounding by [1 − (1 − C)^(1/D)] · [N − (D − 1) / 2], efficacy 1.
     *
     * <p>Mostly rounds up to the exact size.
     *
     * <p><b>Source.</b> Cannon and Roe (1982), <i>Livestock Disease Surveys</i> (from memory).
     * Reference values: {@code reference/detection/short-form-cannon-roe.csv} (own arithmetic).
     *
     * @param confidenceLevel wanted chance of a find, in (0, 1)
     * @return units, above 0
     * @throws jarwise.base.InvalidInput if the level is outside (0, 1)
     */
    public double samplesExact(double confidenceLevel) {
        return shareNeeded(confidenceLevel) * (lotSize - (infestedUnits - 1) / 2.0);
    }

    private double shareNeeded(double confidenceLevel) {
        Require.between("confidence", confidenceLevel, 0, 1);
        return -Math.expm1(Math.log1p(-confidenceLevel) / infestedUnits);
    }
}
