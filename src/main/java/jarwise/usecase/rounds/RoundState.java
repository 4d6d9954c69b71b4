package jarwise.usecase.rounds;

import jarwise.sample.CollectedSample;
import jarwise.sample.SampleState;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Where a round stands, by its jars. */
public enum RoundState {
    /** No jar is cut. */
    PLANNED,
    /** Some jars are cut, others are not. */
    BEING_WALKED,
    /** All are cut; some wait to be read. */
    TO_READ,
    /** Nothing waits any more. */
    READ;

    private static final Set<SampleState> UNDER_WAY =
            EnumSet.of(
                    SampleState.CUT, SampleState.WASHED, SampleState.FROZEN, SampleState.READING);

    static RoundState of(List<CollectedSample> jars) {
        long planned = jars.stream().filter(jar -> jar.state() == SampleState.PLANNED).count();
        if (planned == jars.size()) {
            return PLANNED;
        }
        if (planned > 0) {
            return BEING_WALKED;
        }
        return jars.stream().anyMatch(jar -> UNDER_WAY.contains(jar.state())) ? TO_READ : READ;
    }
}
