package jarwise.usecase.quality;

import jarwise.sample.CollectedSample;
import jarwise.sample.SampleState;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Jars washed with nothing in them: whatever is found came from an earlier jar.
 *
 * @param read blanks that were read
 * @param notRead blanks that still wait
 * @param withFinds those in which anything was found
 */
public record Blanks(int read, int notRead, List<Carried> withFinds) {

    /**
     * A blank with a find.
     *
     * @param sample the blank
     * @param individuals what was found in it, by stage
     */
    public record Carried(CollectedSample sample, SortedMap<StageKey, Long> individuals) {}

    static Blanks of(List<TalliedSample> blanks) {
        List<TalliedSample> read =
                blanks.stream()
                        .filter(
                                blank ->
                                        blank.sample().state() == SampleState.READ
                                                || blank.sample().state()
                                                        == SampleState.PARTLY_READ)
                        .toList();
        long waiting =
                blanks.stream()
                        .filter(
                                blank ->
                                        blank.sample().state() == SampleState.CUT
                                                || blank.sample().state() == SampleState.WASHED
                                                || blank.sample().state() == SampleState.FROZEN)
                        .count();
        return new Blanks(
                read.size(),
                (int) waiting,
                read.stream()
                        .map(blank -> new Carried(blank.sample(), found(blank.individuals())))
                        .filter(blank -> !blank.individuals().isEmpty())
                        .toList());
    }

    private static SortedMap<StageKey, Long> found(Map<StageKey, Long> counts) {
        SortedMap<StageKey, Long> found = new TreeMap<>(counts);
        found.values().removeIf(individuals -> individuals == 0);
        return found;
    }

    public Blanks {
        withFinds = List.copyOf(withFinds);
    }
}
