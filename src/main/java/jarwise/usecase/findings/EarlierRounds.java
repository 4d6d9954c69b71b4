package jarwise.usecase.findings;

import jarwise.stats.count.Observation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * Samples of one kind of animal at one site, by place and day: what is known of k before a day
 * comes from the days before it. A figure of an old round therefore never changes because of later
 * ones, and no count is used twice.
 */
public final class EarlierRounds {

    private final NavigableMap<LocalDate, List<List<Observation>>> byDay = new TreeMap<>();

    /**
     * The samples of one place and day.
     *
     * @param day day they were collected
     * @param observations as counted, at least one
     */
    public record Group(LocalDate day, List<Observation> observations) {}

    /** Keeps these groups, in any order. */
    public EarlierRounds(List<Group> groups) {
        for (Group group : groups) {
            byDay.computeIfAbsent(group.day(), day -> new ArrayList<>())
                    .add(List.copyOf(group.observations()));
        }
    }

    /** {@return the groups of all days before this one} */
    public List<List<Observation>> before(LocalDate day) {
        return byDay.headMap(day, false).values().stream().flatMap(List::stream).toList();
    }

    /** {@return samples of the days before, in groups that say something of k: with a find} */
    public int samplesBefore(LocalDate day) {
        return before(day).stream()
                .filter(group -> group.size() > 1)
                .filter(group -> group.stream().anyMatch(one -> one.individuals() > 0))
                .mapToInt(List::size)
                .sum();
    }
}
