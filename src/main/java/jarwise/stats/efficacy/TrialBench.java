package jarwise.stats.efficacy;

import jarwise.stats.count.Observation;
import java.util.List;

/**
 * The samples of one bench of one arm, from before and from after the treatment.
 *
 * @param name what the bench is called; the same name in both arms is one place with two parts
 * @param before samples from before; may be none
 * @param after samples from after; may be none
 */
public record TrialBench(String name, List<Observation> before, List<Observation> after) {

    /** Keeps the lists from being changed. */
    public TrialBench {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }
}
