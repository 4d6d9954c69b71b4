package jarwise.usecase.findings;

import jarwise.decision.Finding.Subject;
import jarwise.decision.Stand;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.stats.count.Observation;
import jarwise.store.CountQuery;
import jarwise.store.CountedSample;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Counts of one site as findings need them, with as few questions to the database as there are. */
public final class SiteCounts {

    /** Older rounds say little of how clumped a pest is now. */
    private static final int HISTORY_DAYS = 366;

    private final SampleStore samples;
    private final SettingsStore settings;
    private final PestStore pests;
    private final SampleMemory memory;
    private final Estimates estimates = new Estimates();
    private final Map<HistoryKey, KnownHistory> histories = new ConcurrentHashMap<>();

    /** Reads from these stores. */
    public SiteCounts(
            SampleStore samples, SettingsStore settings, PestStore pests, EventStore events) {
        this.samples = samples;
        this.settings = settings;
        this.pests = pests;
        this.memory = new SampleMemory(samples, events);
    }

    private record HistoryKey(String nursery, List<StageKey> stages, LocalDate to) {}

    private record KnownHistory(long eventPosition, EarlierRounds history) {}

    /** {@return the engine, with its memory} */
    public Estimates estimates() {
        return estimates;
    }

    /** {@return what the site has chosen} */
    public SiteRules rules(String nursery) {
        return new SiteRules(
                pests.pests(),
                settings.thresholds(nursery),
                settings.detection(nursery),
                settings.protocols(nursery),
                settings.settings(nursery));
    }

    /** {@return the last day on which any sample was cut; empty before the first} */
    public Optional<LocalDate> lastDay(String nursery) {
        return samples.lastDay(nursery);
    }

    /** {@return crop samples taken by one method in these days, whatever became of them} */
    public List<CollectedSample> cropSamples(
            String nursery, SamplingMethod method, LocalDate from, LocalDate to) {
        return tallied(nursery, from, to)
                .map(TalliedSample::sample)
                .filter(sample -> sample.method() == method)
                .filter(sample -> sample.role() == SampleRole.CROP)
                .filter(sample -> sample.state() != SampleState.PLANNED)
                .toList();
    }

    private Stream<TalliedSample> tallied(String nursery, LocalDate from, LocalDate to) {
        return memory.days(nursery, from, to).values().stream()
                .flatMap(day -> day.samples().stream());
    }

    /** {@return what was counted by wash, by sample} */
    public Map<SampleCode, Long> individuals(
            String nursery,
            List<String> lifeStages,
            Subject subject,
            LocalDate from,
            LocalDate to) {
        Map<SampleCode, Long> individuals = new HashMap<>();
        for (CountedSample counted :
                counts(nursery, SamplingMethod.WASH, subject.pest(), lifeStages, from, to)) {
            individuals.put(counted.sample().code(), counted.individuals());
        }
        return individuals;
    }

    /** {@return crop samples with their counts, random and targeted} */
    public List<CountedSample> counts(
            String nursery,
            SamplingMethod method,
            String pest,
            List<String> lifeStages,
            LocalDate from,
            LocalDate to) {
        CountQuery query =
                new CountQuery(
                        nursery,
                        method,
                        lifeStages.stream().map(stage -> new StageKey(pest, stage)).toList(),
                        from,
                        to,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        return tallied(nursery, from, to).flatMap(one -> query.of(one).stream()).toList();
    }

    /**
     * Groups samples by stand and round.
     *
     * @param all crop samples of one method
     * @param individuals of the animals asked for
     * @param rounds which round a day belongs to
     * @param wanted stands to keep
     * @return by stand, then day
     */
    public static List<Group> groups(
            List<CollectedSample> all,
            Map<SampleCode, Long> individuals,
            Rounds rounds,
            Predicate<CollectedSample> wanted) {
        Map<Stand, Map<LocalDate, List<CollectedSample>>> places = new TreeMap<>();
        for (CollectedSample sample : all) {
            if (sample.collectedOn().isPresent() && wanted.test(sample)) {
                places.computeIfAbsent(standOf(sample), stand -> new TreeMap<>())
                        .computeIfAbsent(
                                rounds.of(sample.collectedOn().get()), day -> new ArrayList<>())
                        .add(sample);
            }
        }
        List<Group> groups = new ArrayList<>();
        places.forEach(
                (stand, days) ->
                        days.forEach(
                                (day, there) ->
                                        groups.add(new Group(stand, day, there, individuals))));
        return groups;
    }

    /** {@return where a sample was cut} */
    public static Stand standOf(CollectedSample sample) {
        return new Stand(sample.place().bench(), sample.place().variety());
    }

    /**
     * How clumped these animals were, up to a day. Kept until anything new is recorded, since it is
     * the costliest part of a page.
     */
    public EarlierRounds history(String nursery, SiteRules rules, Subject subject, LocalDate to) {
        List<StageKey> stages =
                rules.stagesOf(subject).stream()
                        .map(stage -> new StageKey(subject.pest(), stage))
                        .toList();
        HistoryKey key = new HistoryKey(nursery, stages, to);
        long position = memory.position();
        KnownHistory known = histories.get(key);
        if (known == null || known.eventPosition() != position) {
            histories.values().removeIf(old -> old.eventPosition() != position);
            known = new KnownHistory(position, readHistory(key));
            histories.put(key, known);
        }
        return known.history();
    }

    private EarlierRounds readHistory(HistoryKey key) {
        NavigableMap<LocalDate, List<List<Observation>>> groups = new TreeMap<>();
        memory.days(key.nursery(), key.to().minusDays(HISTORY_DAYS), key.to())
                .forEach((day, there) -> groups.put(day, there.washed(key.stages())));
        return new EarlierRounds(estimates, groups);
    }
}
