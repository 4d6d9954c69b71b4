package jarwise.stats.efficacy;

import java.util.OptionalDouble;

/**
 * The limits of an efficacy alone.
 *
 * @param lower lower limit; empty where there is none
 * @param upper upper limit; empty where there is none
 */
public record EfficacyLimits(OptionalDouble lower, OptionalDouble upper) {}
