package jarwise.stats.estimate;

import java.util.OptionalDouble;

/**
 * A density with its interval; individuals per sampling unit.
 *
 * @param estimate most likely density, corrected for detection; 0 where nothing was found
 * @param standardError its standard error; empty where nothing was found
 * @param lower lower limit, 0 or more; 0 where nothing was found
 * @param upper upper limit: two-sided, or one-sided where nothing was found; empty where these
 *     samples set none
 * @param confidenceLevel level of the interval, in (0, 1)
 * @param largestDensityConsidered densities above it were left out; only in integrated intervals
 */
public record DensityInterval(
        double estimate,
        OptionalDouble standardError,
        double lower,
        OptionalDouble upper,
        double confidenceLevel,
        OptionalDouble largestDensityConsidered) {}
