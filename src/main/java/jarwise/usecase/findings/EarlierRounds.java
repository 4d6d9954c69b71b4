package jarwise.usecase.findings;

import jarwise.stats.count.Observation;
import jarwise.stats.estimate.KPrior;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Samples of one kind of animal at one site, by place and day: what is known of k before a day
 * comes from the days before it. A figure of an old round therefore never changes because of later
 * ones, and no count is used twice.
 */
public final class EarlierRounds {

    /** More groups with a find say nothing new of k, and old ones less than the newest. */
    private static final int ENOUGH_GROUPS = 300;

    private final Estimates estimates;
    private final NavigableMap<LocalDate, List<List<Observation>>> groupsOfDay;
    private final Map<LocalDate, Known> known = new ConcurrentHashMap<>();

    private record Known(Optional<KPrior> prior, int samples) {}

    /**
     * Keeps what was counted.
     *
     * @param estimates the engine, with its memory
     * @param groupsOfDay samples by day, in groups of one place
     */
    public EarlierRounds(
            Estimates estimates, NavigableMap<LocalDate, List<List<Observation>>> groupsOfDay) {
        this.estimates = estimates;
        this.groupsOfDay = new TreeMap<>(groupsOfDay);
    }

    /** {@return what is known of k before a day; empty where there are too few samples} */
    public Optional<KPrior> priorBefore(LocalDate day) {
        return known.computeIfAbsent(day, this::knownBefore).prior();
    }

    /** {@return how many samples that is from} */
    public int samplesBefore(LocalDate day) {
        return known.computeIfAbsent(day, this::knownBefore).samples();
    }

    private Known knownBefore(LocalDate day) {
        List<List<Observation>> groups = newestBefore(day);
        return new Known(estimates.prior(groups), groups.stream().mapToInt(List::size).sum());
    }

    /** Groups that say something of k, whole days of them, the oldest first. */
    private List<List<Observation>> newestBefore(LocalDate day) {
        List<List<List<Observation>>> days = new ArrayList<>();
        int groups = 0;
        for (List<List<Observation>> there :
                groupsOfDay.headMap(day, false).descendingMap().values()) {
            if (groups >= ENOUGH_GROUPS) {
                break;
            }
            List<List<Observation>> telling = there.stream().filter(KPrior::tells).toList();
            days.add(telling);
            groups += telling.size();
        }
        Collections.reverse(days);
        return days.stream().flatMap(List::stream).toList();
    }
}
