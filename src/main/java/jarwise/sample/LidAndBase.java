package jarwise.sample;

import java.util.Collection;

/**
 * Whether a lid and a base belong together. A swapped lid gives one bench's insects to another, and
 * nobody can tell afterwards: it is asked when the filter goes into the freezer.
 */
public enum LidAndBase {
    PAIR,
    NO_PAIR,
    /** They are a pair, but of a jar that was not washed or is in the freezer already. */
    NOT_WASHED;

    /**
     * Compares the codes read from both.
     *
     * @param washed jars that were washed and wait for the freezer
     */
    public static LidAndBase of(SampleCode lid, SampleCode base, Collection<SampleCode> washed) {
        if (!lid.equals(base)) {
            return NO_PAIR;
        }
        return washed.contains(base) ? PAIR : NOT_WASHED;
    }
}
