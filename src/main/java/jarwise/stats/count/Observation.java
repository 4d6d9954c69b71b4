package jarwise.stats.count;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * One sample as it was counted: a jar, a tap or a card.
 *
 * @param individuals individuals counted, 0 to 1,000,000,000; 0 is a value, a sample that was not
 *     read is no observation
 * @param samplingUnits sampling units in the sample (growing points in the jar), above 0 and at
 *     most 1,000,000,000; times the share read not under a billionth
 * @param filterShare share of the filter that was read: readable cells read over readable cells in
 *     all; above 0 and at most 1
 */
public record Observation(long individuals, double samplingUnits, double filterShare) {

    private static final long MOST_INDIVIDUALS = 1_000_000_000;
    private static final double MOST_UNITS = 1e9;
    private static final double LEAST_EXPOSURE = 1e-9;

    /** Checks the three numbers; throws {@link InvalidInput} naming the one out of range. */
    public Observation {
        if (!(individuals >= 0 && individuals <= MOST_INDIVIDUALS)) {
            throw new InvalidInput(
                    "individuals is %d; it must be 0 to %d."
                            .formatted(individuals, MOST_INDIVIDUALS));
        }
        Require.positive("samplingUnits", samplingUnits);
        Require.share("filterShare", filterShare);
        if (!(samplingUnits * filterShare >= LEAST_EXPOSURE && samplingUnits <= MOST_UNITS)) {
            throw new InvalidInput(
                    ("samplingUnits is %s and filterShare %s; samplingUnits can be 1000000000 at"
                                    + " most, and times filterShare 0.000000001 at least.")
                            .formatted(samplingUnits, filterShare));
        }
    }

    /**
     * A sample of which the whole filter was read.
     *
     * @param individuals individuals counted, 0 or more
     * @param samplingUnits sampling units in it, above 0
     * @return the observation
     */
    public static Observation of(long individuals, double samplingUnits) {
        return new Observation(individuals, samplingUnits, 1);
    }

    /** {@return what the expected count is in proportion to: sampling units times share read} */
    public double exposure() {
        return samplingUnits * filterShare;
    }
}
