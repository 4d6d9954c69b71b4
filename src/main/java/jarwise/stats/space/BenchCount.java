package jarwise.stats.space;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * What was counted on one bench, and where it stands.
 *
 * @param house house it stands in; benches of two houses are never neighbours
 * @param bench its name
 * @param x place on the map of the house, in any unit
 * @param y place across, in the same unit
 * @param individuals individuals in all samples of the bench, 0 or more
 * @param effort sampling units times share read, summed over its samples; above 0
 */
public record BenchCount(
        String house, String bench, double x, double y, long individuals, double effort) {

    /** Checks the numbers. */
    public BenchCount {
        Require.atLeast("individuals", individuals, 0);
        Require.positive("effort", effort);
        if (!(Math.abs(x) <= 1e9 && Math.abs(y) <= 1e9)) {
            throw new InvalidInput(
                    "Bench %s stands at %s, %s; each must be a number up to 1000000000."
                            .formatted(bench, x, y));
        }
    }

    /** {@return whether anything was found} */
    public boolean isPositive() {
        return individuals > 0;
    }

    /** {@return individuals per sampling unit} */
    public double density() {
        return individuals / effort;
    }

    /** {@return ln(density + ½ per effort), which exists without a find, too} */
    public double logDensity() {
        return Math.log((individuals + 0.5) / effort);
    }
}
