package jarwise.usecase.model;

import jarwise.stats.count.Observation;
import jarwise.stats.efficacy.TrialBench;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The samples of one arm while they are sorted by bench and time. */
final class TrialArm {

    private final TreeMap<String, List<Observation>> before = new TreeMap<>();
    private final TreeMap<String, List<Observation>> after = new TreeMap<>();

    void add(String bench, boolean isAfter, List<Observation> observations) {
        (isAfter ? after : before)
                .computeIfAbsent(bench, b -> new ArrayList<>())
                .addAll(observations);
    }

    List<String> missing(String arm) {
        List<String> missing = new ArrayList<>();
        if (before.isEmpty()) {
            missing.add(arm + " before");
        }
        if (after.isEmpty()) {
            missing.add(arm + " after");
        }
        return missing;
    }

    List<TrialBench> benches() {
        return Stream.concat(before.keySet().stream(), after.keySet().stream())
                .distinct()
                .sorted()
                .map(
                        name ->
                                new TrialBench(
                                        name,
                                        before.getOrDefault(name, List.of()),
                                        after.getOrDefault(name, List.of())))
                .toList();
    }
}
