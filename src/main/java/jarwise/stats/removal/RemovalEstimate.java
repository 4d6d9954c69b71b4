package jarwise.stats.removal;

import jarwise.numeric.Quantiles;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How many there were, from repeat washes.
 *
 * @param method how it was estimated
 * @param confidenceLevel two-sided level of the limits
 * @param estimate individuals before the first wash; empty where the washes do not fall off enough
 *     for the method to set any number
 * @param standardError of the estimate; empty where there is no estimate, or where the method has
 *     limits of its own
 * @param lower lower limit; the individuals that came off at least
 * @param upper upper limit; empty where the washes set none
 * @param removalProbability share of those still there that one wash brings off; empty without an
 *     estimate
 * @param fit whether the washes fall off as one share for all would have it; empty for two washes
 */
public record RemovalEstimate(
        RemovalMethod method,
        double confidenceLevel,
        OptionalDouble estimate,
        OptionalDouble standardError,
        double lower,
        OptionalDouble upper,
        OptionalDouble removalProbability,
        Optional<RemovalFit> fit) {

    /** {@return whether the method sets a number at all} */
    public boolean finite() {
        return estimate.isPresent();
    }

    static RemovalEstimate none(RemovalMethod method, RemovalCatches catches, double level) {
        return new RemovalEstimate(
                method,
                level,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                (double) catches.total(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                RemovalFit.of(catches));
    }

    /** Limits from a standard error; fewer than came off are impossible. */
    static RemovalEstimate normal(
            RemovalMethod method,
            RemovalCatches catches,
            double level,
            double total,
            double standardError,
            double share) {
        double z = Quantiles.normal(level);
        double reach = z * standardError;
        return new RemovalEstimate(
                method,
                level,
                OptionalDouble.of(total),
                OptionalDouble.of(standardError),
                Math.max((double) catches.total(), total - reach),
                OptionalDouble.of(total + reach),
                OptionalDouble.of(share),
                RemovalFit.of(catches));
    }
}
