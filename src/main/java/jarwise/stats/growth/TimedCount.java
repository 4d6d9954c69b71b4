package jarwise.stats.growth;

import jarwise.stats.count.Observation;

/**
 * A sample with the time at which it was taken.
 *
 * @param observation what was counted
 * @param time days, or degree-days, from any start
 */
public record TimedCount(Observation observation, double time) {}
