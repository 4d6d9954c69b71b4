package jarwise.stats.removal;

import jarwise.numeric.Roots;
import java.util.OptionalDouble;

/**
 * The large-sample form of the removal estimate: the share from the catches given their total, and
 * the total from the share.
 *
 * <pre>
 *   q/p − s q^s/(1 − q^s) = Σ (i − 1) c_i / T,   N = T / (1 − q^s),   q = 1 − p
 * </pre>
 *
 * <p>It lies above the maximum likelihood for small numbers and meets it for large ones. There is
 * an estimate only if the washes fall off: Σ (i − 1) c_i / T under (s − 1)/2.
 *
 * <p><b>Source.</b> Zippin (1956), <i>Biometrics</i> 12:163-189 (from memory); Seber (2002), 7.2,
 * eq. 7.23. Reference values: {@code reference/removal/zippin.csv}.
 */
final class ZippinRemoval {

    private static final double LEAST_SHARE = 1e-12;

    private ZippinRemoval() {}

    static RemovalEstimate estimate(RemovalCatches catches, double confidenceLevel) {
        OptionalDouble share = share(catches);
        if (share.isEmpty()) {
            return RemovalEstimate.none(RemovalMethod.ZIPPIN, catches, confidenceLevel);
        }
        double p = share.getAsDouble();
        double total = total(catches, p);
        double error = RemovalPrecision.standardError(total, p, catches.washes());
        return RemovalEstimate.normal(
                RemovalMethod.ZIPPIN, catches, confidenceLevel, total, error, p);
    }

    static double total(RemovalCatches catches, double share) {
        return catches.total() / -Math.expm1(catches.washes() * Math.log1p(-share));
    }

    /** {@return the share; 1 if all came off in the first wash, empty if washes do not fall off} */
    static OptionalDouble share(RemovalCatches catches) {
        int washes = catches.washes();
        double mean = (double) catches.washesBefore() / catches.total();
        if (2 * catches.washesBefore() >= (washes - 1) * catches.total()) {
            return OptionalDouble.empty();
        }
        if (mean == 0) {
            return OptionalDouble.of(1);
        }
        if (beforeFirst(LEAST_SHARE, washes) <= mean) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Roots.between(p -> beforeFirst(p, washes) - mean, LEAST_SHARE, 1));
    }

    /**
     * Expected number of washes withstood by one that came off in the end; falls from half of s − 1
     * to 0 as the share rises. The sum itself: its closed form has no digits at small shares.
     */
    private static double beforeFirst(double share, int washes) {
        double weight = 1;
        double weights = 0;
        double sum = 0;
        for (int i = 0; i < washes; i++) {
            weights += weight;
            sum += i * weight;
            weight *= 1 - share;
        }
        return sum / weights;
    }
}
