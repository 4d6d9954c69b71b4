package jarwise.store;

import jarwise.sample.CollectedSample;
import jarwise.tally.StageKey;
import java.util.Map;

/**
 * A sample and everything that was read in it.
 *
 * @param sample the sample
 * @param individuals by stage, zeros included; a stage that is not here was not read
 */
public record TalliedSample(CollectedSample sample, Map<StageKey, Long> individuals) {

    public TalliedSample {
        individuals = Map.copyOf(individuals);
    }
}
