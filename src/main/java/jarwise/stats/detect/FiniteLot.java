package jarwise.stats.detect;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.estimate.DetectionShare;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hipparchus.distribution.discrete.HypergeometricDistribution;

/**
 * How many units of a lot must be looked at to find one of the infested ones?
 *
 * <pre>
 *   P(miss) = Σ_j C(D, j) · C(N − D, n − j) · (1 − E)^j / C(N, n)
 * </pre>
 *
 * <p>the exact hypergeometric chance that n units of a lot of N hold j of the D infested ones, and
 * that each of those is overlooked. Where the efficacy E of detection was measured, (1 − E)^j is
 * averaged over what the measurement leaves open.
 *
 * <p><b>Assumes</b> units drawn at random without replacement, one inspection each, nothing taken
 * for infested that is not.
 *
 * <p><b>Source.</b> International Standard for Phytosanitary Measures 31 (2008), acceptance number
 * 0; its tables as recomputed in {@code reference/detection/finite-lot-table.csv}. Exact sizes,
 * also with efficacy below 1: {@code reference/detection/finite-lot.csv}.
 *
 * @param lotSize units in the lot, 1 to {@value #LARGEST_LOT}
 * @param infestedUnits infested units that should not go unnoticed, 1 to {@code lotSize}
 * @param efficacy chance that an infested unit that is looked at is recognised
 */
public record FiniteLot(long lotSize, long infestedUnits, DetectionShare efficacy)
        implements DetectionCurve {

    /** The largest lot. */
    public static final long LARGEST_LOT = 1_000_000_000;

    /** Checks the numbers. */
    public FiniteLot {
        if (!(lotSize >= 1 && lotSize <= LARGEST_LOT)) {
            throw new InvalidInput(
                    "lot is %d; it must be a whole number from 1 to %d."
                            .formatted(lotSize, LARGEST_LOT));
        }
        if (!(infestedUnits >= 1 && infestedUnits <= lotSize)) {
            throw new InvalidInput(
                    "infested is %d of a lot of %d; it must be 1 to %d."
                            .formatted(infestedUnits, lotSize, lotSize));
        }
    }

    /**
     * Infested units in a lot with a share of infested ones, rounded down.
     *
     * @param lotSize units in the lot, 1 or more
     * @param proportionInfested share of infested units, above 0 and below 1, taken as the decimal
     *     number that it is written as
     * @return whole units
     * @throws InvalidInput if not one whole unit is left, or a number is out of range
     */
    public static long infestedUnits(long lotSize, double proportionInfested) {
        Require.atLeast("lot", lotSize, 1);
        Require.between("infested", proportionInfested, 0, 1);
        long units =
                BigDecimal.valueOf(proportionInfested)
                        .multiply(BigDecimal.valueOf(lotSize))
                        .setScale(0, RoundingMode.DOWN)
                        .longValueExact();
        if (units == 0) {
            throw new InvalidInput(
                    ("infested is %s of a lot of %d, which is less than one unit; it must be at"
                                    + " least one. Maybe give it as a whole number: 1")
                            .formatted(proportionInfested, lotSize));
        }
        return units;
    }

    @Override
    public long mostSamples() {
        return lotSize;
    }

    @Override
    public double missed(long sampleSize) {
        if (!(sampleSize >= 0 && sampleSize <= lotSize)) {
            throw new InvalidInput(
                    "sampleSize is %d; it must be 0 to %d.".formatted(sampleSize, lotSize));
        }
        if (sampleSize == 0) {
            return 1;
        }
        if (efficacy.equals(DetectionShare.known(1))) {
            return allSound(sampleSize);
        }
        HypergeometricDistribution infested =
                new HypergeometricDistribution(
                        (int) lotSize, (int) infestedUnits, (int) sampleSize);
        long lowest = infested.getSupportLowerBound();
        long highest = infested.getSupportUpperBound();
        long mode = (sampleSize + 1) * (infestedUnits + 1) / (lotSize + 2);
        return new SpreadMean(j -> infested.logProbability((int) j), lowest, highest)
                .of(
                        Math.max(lowest, Math.min(highest, mode)),
                        Math.sqrt(infested.getNumericalVariance()),
                        j -> MissedUnits.all(efficacy, (double) j));
    }

    /** C(N − D, n) / C(N, n) as a product over the shorter of the two, until nothing is left. */
    private double allSound(long sampleSize) {
        long many = Math.max(infestedUnits, sampleSize);
        long few = Math.min(infestedUnits, sampleSize);
        double product = 1;
        for (long i = 0; i < few && product > 0; i++) {
            product *= Math.max(0, lotSize - many - i) / (double) (lotSize - i);
        }
        return product;
    }
}
