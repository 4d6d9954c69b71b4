package jarwise.phenology.window;

import jarwise.stats.thermal.ThermalConstants;

/**
 * What one published set says about the two stages that make a window.
 *
 * @param source where it was published
 * @param egg from laying to hatching
 * @param hit from the beginning to the end of the stage that the product kills
 * @param shared whether both are assumed shares of the degree-days from egg to adult
 * @param surrogate whether it is of another species
 */
public record WindowConstants(
        String source,
        ThermalConstants egg,
        ThermalConstants hit,
        boolean shared,
        boolean surrogate) {}
