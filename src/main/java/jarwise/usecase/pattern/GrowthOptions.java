package jarwise.usecase.pattern;

import jarwise.base.Require;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How growth is judged.
 *
 * @param rounds how many of the last days of sampling to use, 2 or more
 * @param degreeDays column with the degree-days since any start; calendar days if empty
 * @param threshold density to be watched for, above 0
 * @param confidenceLevel level of all limits, between 0 and 1
 */
public record GrowthOptions(
        int rounds, Optional<String> degreeDays, OptionalDouble threshold, double confidenceLevel) {

    /** Checks the number of rounds. */
    public GrowthOptions {
        Require.atLeast("rounds", rounds, 2);
    }
}
