package jarwise.store;

import jarwise.sample.CollectedSample;

/**
 * A sample and what was counted in it.
 *
 * @param sample the sample
 * @param individuals of the pest and stages asked for
 */
public record CountedSample(CollectedSample sample, long individuals) {}
