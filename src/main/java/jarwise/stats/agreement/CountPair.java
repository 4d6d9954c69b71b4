package jarwise.stats.agreement;

import jarwise.base.Require;

/**
 * Two counts of the same thing.
 *
 * @param first individuals in the first count, 0 or more
 * @param second individuals in the second, 0 or more
 */
public record CountPair(long first, long second) {

    /** Checks both counts. */
    public CountPair {
        Require.atLeast("first count", first, 0);
        Require.atLeast("second count", second, 0);
    }

    double first(AgreementScale scale) {
        return scale.of((double) first);
    }

    double second(AgreementScale scale) {
        return scale.of((double) second);
    }

    double difference(AgreementScale scale) {
        return first(scale) - second(scale);
    }
}
