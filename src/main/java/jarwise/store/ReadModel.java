package jarwise.store;

import jarwise.sample.SampleCode;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Keeps the tables sample and sample_count equal to the fold of the events. */
final class ReadModel {

    private final Handle handle;
    private final String nursery;
    private final Map<String, List<String>> stagesOf;

    ReadModel(Handle handle, String nursery) {
        this.handle = handle;
        this.nursery = nursery;
        this.stagesOf =
                handle
                        .createQuery("select pest, code from life_stage order by pest, position")
                        .map((row, context) -> Map.entry(row.getString(1), row.getString(2)))
                        .list()
                        .stream()
                        .collect(
                                Collectors.groupingBy(
                                        Map.Entry::getKey,
                                        Collectors.mapping(
                                                Map.Entry::getValue, Collectors.toList())));
    }

    Optional<SampleFold> fold(SampleCode code) {
        List<SampleEvent> events = EventStore.ofSample(handle, nursery, code);
        return events.isEmpty()
                ? Optional.empty()
                : Optional.of(SampleFold.of(code, events, stagesOf));
    }

    void refresh(Collection<SampleCode> codes) {
        PreparedBatch samples = handle.prepareBatch(SampleRow.UPSERT);
        PreparedBatch emptied =
                handle.prepareBatch(
                        "delete from sample_count where nursery = :nursery and sample = :sample");
        PreparedBatch counts =
                handle.prepareBatch(
                        "insert into sample_count (nursery, sample, pest, life_stage, individuals)"
                                + " values (:nursery, :sample, :pest, :stage, :individuals)");
        for (SampleCode code : codes) {
            SampleFold fold = fold(code).orElseThrow();
            SampleRow.bind(samples, nursery, fold).add();
            emptied.bind("nursery", nursery).bind("sample", code.text()).add();
            fold.tally()
                    .individuals()
                    .forEach(
                            (key, individuals) ->
                                    counts.bind("nursery", nursery)
                                            .bind("sample", code.text())
                                            .bind("pest", key.pest())
                                            .bind("stage", key.lifeStage())
                                            .bind("individuals", individuals)
                                            .add());
        }
        samples.execute();
        emptied.execute();
        if (counts.size() > 0) {
            counts.execute();
        }
    }

    /** Codes whose stored row or counts differ from the fold. */
    List<String> stale() {
        List<String> stale = new ArrayList<>(withoutEvents());
        List<String> codes =
                handle.createQuery(
                                "select distinct sample from event where nursery = :nursery"
                                        + " order by sample")
                        .bind("nursery", nursery)
                        .mapTo(String.class)
                        .list();
        for (String text : codes) {
            SampleCode code = new SampleCode(text);
            SampleFold fold = fold(code).orElseThrow();
            boolean same =
                    SampleRow.find(handle, nursery, code).equals(Optional.of(fold.sample()))
                            && counts(code).equals(fold.tally().individuals());
            if (!same) {
                stale.add(text);
            }
        }
        return stale;
    }

    private List<String> withoutEvents() {
        return handle.createQuery(
                        "select s.code from sample s where s.nursery = :nursery and not exists"
                                + " (select 1 from event e where e.nursery = s.nursery and"
                                + " e.sample = s.code) order by s.code")
                .bind("nursery", nursery)
                .mapTo(String.class)
                .list();
    }

    private SortedMap<StageKey, Long> counts(SampleCode code) {
        return countsOf(handle, nursery, code);
    }

    static SortedMap<StageKey, Long> countsOf(Handle handle, String nursery, SampleCode code) {
        SortedMap<StageKey, Long> counts = new TreeMap<>();
        handle.createQuery(
                        "select pest, life_stage, individuals from sample_count"
                                + " where nursery = :nursery and sample = :sample")
                .bind("nursery", nursery)
                .bind("sample", code.text())
                .map(
                        (row, context) ->
                                Map.entry(
                                        new StageKey(row.getString(1), row.getString(2)),
                                        row.getLong(3)))
                .forEach(entry -> counts.put(entry.getKey(), entry.getValue()));
        return counts;
    }
}
