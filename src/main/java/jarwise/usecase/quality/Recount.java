package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleState;
import jarwise.stats.agreement.CountPair;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A filter that is counted again by somebody who does not know the first count.
 *
 * @param first the sample as it was counted first
 * @param again the same filter as another sample
 * @param counts what was counted first and again, by pest and stages; empty until both are in, so
 *     that nobody sees the first count before, and where two different parts were read
 */
public record Recount(
        CollectedSample first, CollectedSample again, Map<Subject, CountPair> counts) {

    private static final Set<SampleState> READ = Set.of(SampleState.READ, SampleState.PARTLY_READ);

    public Recount {
        counts = Map.copyOf(counts);
    }

    /** {@return whether the second count is in} */
    public boolean counted() {
        return READ.contains(again.state());
    }

    /** {@return whether both counts are of the same cells, so that they can be held together} */
    public boolean comparable() {
        return !counts.isEmpty();
    }

    /** {@return who counted first} */
    public Optional<String> firstReader() {
        return first.reading().reader();
    }

    /** {@return who counted again} */
    public Optional<String> secondReader() {
        return again.reading().reader();
    }
}
