package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.pest.Pest;
import jarwise.pest.Pests;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.stats.agreement.CountPair;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Puts counts and recounts together.
 *
 * @param pests what can be counted
 */
record Recounts(Pests pests) {

    private static final Set<SampleState> READ = Set.of(SampleState.READ, SampleState.PARTLY_READ);

    /** {@return each recount beside its first count, in the order of the recounts} */
    List<Recount> of(List<TalliedSample> again, Map<SampleCode, TalliedSample> first) {
        return again.stream()
                .flatMap(
                        one ->
                                one.sample().recountOf().map(first::get).stream()
                                        .map(base -> recount(base, one)))
                .toList();
    }

    private Recount recount(TalliedSample first, TalliedSample again) {
        boolean both =
                READ.contains(first.sample().state()) && READ.contains(again.sample().state());
        return new Recount(
                first.sample(),
                again.sample(),
                both && sameCells(first.sample(), again.sample())
                        ? pairs(first.individuals(), again.individuals())
                        : Map.of());
    }

    /** Of two different parts of a filter a difference says nothing. */
    private static boolean sameCells(CollectedSample first, CollectedSample again) {
        return first.reading().filterShare() == 1 && again.reading().filterShare() == 1;
    }

    private Map<Subject, CountPair> pairs(Map<StageKey, Long> first, Map<StageKey, Long> again) {
        Map<Subject, CountPair> pairs = new LinkedHashMap<>();
        for (Pest pest : pests.all()) {
            for (String group : pest.stageGroups()) {
                Optional<Long> one = sum(pest, group, first);
                Optional<Long> two = sum(pest, group, again);
                if (one.isPresent() && two.isPresent()) {
                    pairs.put(new Subject(pest.code(), group), new CountPair(one.get(), two.get()));
                }
            }
        }
        return pairs;
    }

    private static Optional<Long> sum(Pest pest, String group, Map<StageKey, Long> counts) {
        List<StageKey> stages =
                pest.stagesIn(group).stream()
                        .map(stage -> new StageKey(pest.code(), stage.code()))
                        .toList();
        return counts.keySet().containsAll(stages)
                ? Optional.of(
                        stages.stream().mapToLong(stage -> counts.getOrDefault(stage, 0L)).sum())
                : Optional.empty();
    }
}
