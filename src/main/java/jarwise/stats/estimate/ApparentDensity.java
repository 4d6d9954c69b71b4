package jarwise.stats.estimate;

import java.util.OptionalDouble;

/**
 * The density as counted, not corrected for extraction efficiency and reader sensitivity.
 *
 * @param estimate individuals counted per sampling unit, 0 or more
 * @param lower lower limit, 0 or more
 * @param upper upper limit; empty where the samples set none
 */
public record ApparentDensity(double estimate, double lower, OptionalDouble upper) {}
