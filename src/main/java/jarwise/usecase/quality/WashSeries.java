package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.pest.Pest;
import jarwise.pest.Pests;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.stats.removal.RemovalCatches;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The washes of one jar's plants, in order, each counted whole by the same reader: what one
 * overlooks in every wash alike does not change how they fall off.
 *
 * @param fluid in which all were washed, as forms write it
 * @param washes the first is the jar itself
 */
record WashSeries(String fluid, List<TalliedSample> washes) {

    /** A further wash: of which jar, and which it is. */
    record Place(SampleCode base, int number) {}

    /** {@return the series without a gap that can be held together} */
    static List<WashSeries> of(
            Map<SampleCode, TalliedSample> bases, Map<Place, TalliedSample> further) {
        List<WashSeries> series = new ArrayList<>();
        bases.forEach(
                (code, first) -> {
                    SortedMap<Integer, TalliedSample> washes = new TreeMap<>(Map.of(1, first));
                    further.forEach(
                            (place, wash) -> {
                                if (place.base().equals(code)) {
                                    washes.put(place.number(), wash);
                                }
                            });
                    if (washes.lastKey() == washes.size()) {
                        of(List.copyOf(washes.values())).ifPresent(series::add);
                    }
                });
        return series;
    }

    private static Optional<WashSeries> of(List<TalliedSample> washes) {
        CollectedSample first = washes.get(0).sample();
        boolean alike =
                washes.size() > 1
                        && washes.stream()
                                .map(TalliedSample::sample)
                                .allMatch(
                                        wash ->
                                                wash.state() == SampleState.READ
                                                        && wash.reading()
                                                                .reader()
                                                                .equals(first.reading().reader())
                                                        && wash.wash()
                                                                .fluid()
                                                                .equals(first.wash().fluid()));
        return alike
                ? first.wash().fluid().map(fluid -> new WashSeries(Fields.wordOf(fluid), washes))
                : Optional.empty();
    }

    /** {@return the catches of each kind of animal that was looked for in every wash and found} */
    Map<Subject, RemovalCatches> catches(Pests pests) {
        Map<Subject, RemovalCatches> catches = new LinkedHashMap<>();
        for (Pest pest : pests.all()) {
            for (String group : pest.stageGroups()) {
                List<StageKey> stages = KnownSamples.stages(pests, new Subject(pest.code(), group));
                boolean counted =
                        washes.stream()
                                .allMatch(wash -> wash.individuals().keySet().containsAll(stages));
                List<Long> found = washes.stream().map(wash -> sum(wash, stages)).toList();
                if (counted && found.stream().anyMatch(individuals -> individuals > 0)) {
                    catches.put(new Subject(pest.code(), group), new RemovalCatches(found));
                }
            }
        }
        return catches;
    }

    private static long sum(TalliedSample wash, List<StageKey> stages) {
        return stages.stream().mapToLong(stage -> wash.individuals().getOrDefault(stage, 0L)).sum();
    }
}
