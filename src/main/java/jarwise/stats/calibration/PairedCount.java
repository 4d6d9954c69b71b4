package jarwise.stats.calibration;

import jarwise.stats.count.Observation;

/**
 * A sample of a pair.
 *
 * @param pair the bench and day it is from
 * @param first whether it is of the first method
 * @param observation what was counted
 */
public record PairedCount(String pair, boolean first, Observation observation) {}
