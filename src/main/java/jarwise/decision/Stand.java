package jarwise.decision;

import java.util.Comparator;
import java.util.Optional;

/**
 * What a finding is about: a variety on a bench. Either may be unknown, as in a sheet from
 * elsewhere.
 *
 * @param bench bench code
 * @param variety cultivar
 */
public record Stand(Optional<String> bench, Optional<String> variety) implements Comparable<Stand> {

    private static final Comparator<Stand> ORDER =
            Comparator.comparing((Stand stand) -> stand.bench.orElse(""))
                    .thenComparing(stand -> stand.variety.orElse(""));

    /** {@return whether neither bench nor variety is known} */
    public boolean unknown() {
        return bench.isEmpty() && variety.isEmpty();
    }

    @Override
    public int compareTo(Stand other) {
        return ORDER.compare(this, other);
    }
}
