package jarwise.usecase.microscope;

import jarwise.sample.CollectedSample;
import jarwise.sample.SampleRole;
import jarwise.store.SampleStore;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which pests a reader looks for on a filter: those that were counted at its bench the last time,
 * else the usual ones. Only what was looked for has zeros.
 *
 * @param usual pests with a line of this site, the most important first
 * @param atBench pests counted at each bench the last time
 */
record LookedFor(List<String> usual, Map<String, List<String>> atBench) {

    private static final int DAYS_BACK = 60;
    private static final Set<String> NO_PEST = Set.of("other", "unsure", "predatory-mites");

    static LookedFor of(SampleStore samples, String nursery, LocalDate today, List<String> usual) {
        Map<String, List<String>> atBench = new HashMap<>();
        samples.tallied(nursery, today.minusDays(DAYS_BACK), today).stream()
                .filter(tallied -> tallied.sample().role() == SampleRole.CROP)
                .filter(tallied -> tallied.sample().place().bench().isPresent())
                .sorted(Comparator.comparing(LookedFor::day))
                .forEach(
                        tallied -> {
                            List<String> counted = countedIn(tallied, usual);
                            if (!counted.isEmpty()) {
                                atBench.put(bench(tallied.sample()).orElseThrow(), counted);
                            }
                        });
        return new LookedFor(usual, atBench);
    }

    /** {@return codes of the pests looked for on a filter, the most important first} */
    List<String> on(CollectedSample sample) {
        return bench(sample).map(atBench::get).filter(pests -> !pests.isEmpty()).orElse(usual);
    }

    private static Optional<String> bench(CollectedSample sample) {
        return sample.place().bench();
    }

    private static LocalDate day(TalliedSample tallied) {
        return tallied.sample().collectedOn().orElse(LocalDate.MIN);
    }

    private static List<String> countedIn(TalliedSample tallied, List<String> usual) {
        Set<String> counted = new LinkedHashSet<>(usual);
        List<String> here =
                tallied.individuals().keySet().stream()
                        .map(StageKey::pest)
                        .filter(pest -> !NO_PEST.contains(pest))
                        .distinct()
                        .sorted()
                        .toList();
        counted.retainAll(here);
        counted.addAll(here);
        return new ArrayList<>(counted);
    }
}
