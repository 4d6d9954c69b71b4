package jarwise.usecase.findings;

import jarwise.decision.Finding.Subject;
import jarwise.decision.Stand;
import jarwise.sample.CollectedSample;
import jarwise.sample.Fluid;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;

/** Counts of one site as findings need them, with as few questions to the database as there are. */
public final class SiteCounts {

    /** Older rounds say little of how clumped a pest is now. */
    private static final int HISTORY_DAYS = 366;

    private final SampleStore samples;
    private final SettingsStore settings;
    private final PestStore pests;
    private final EventStore events;
    private final Estimates estimates = new Estimates();
    private final Map<HistoryKey, KnownHistory> histories = new ConcurrentHashMap<>();

    /** Reads from these stores. */
    public SiteCounts(
            SampleStore samples, SettingsStore settings, PestStore pests, EventStore events) {
        this.samples = samples;
        this.settings = settings;
        this.pests = pests;
        this.events = events;
    }

    private record HistoryKey(String nursery, Subject subject, LocalDate from, LocalDate to) {}

    private record KnownHistory(long eventPosition, EarlierRounds history) {}

    private record Place(Stand stand, LocalDate day) {}

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
        return samples.between(nursery, from, to).stream()
                .filter(sample -> sample.method() == method)
                .filter(sample -> sample.role() == SampleRole.CROP)
                .filter(sample -> sample.state() != SampleState.PLANNED)
                .toList();
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
        return samples.counts(
                new CountQuery(
                        nursery,
                        method,
                        pest,
                        lifeStages,
                        from,
                        to,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
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
        HistoryKey key = new HistoryKey(nursery, subject, to.minusDays(HISTORY_DAYS), to);
        long position = events.lastPosition();
        KnownHistory known = histories.get(key);
        if (known == null || known.eventPosition() != position) {
            histories.values().removeIf(old -> old.eventPosition() != position);
            known = new KnownHistory(position, readHistory(key, rules.stagesOf(subject)));
            histories.put(key, known);
        }
        return known.history();
    }

    private EarlierRounds readHistory(HistoryKey key, List<String> lifeStages) {
        Map<Place, List<Observation>> groups = new HashMap<>();
        for (CountedSample counted :
                samples.counts(
                        CountQuery.random(
                                key.nursery(),
                                SamplingMethod.WASH,
                                key.subject().pest(),
                                lifeStages,
                                key.from(),
                                key.to()))) {
            CollectedSample sample = counted.sample();
            boolean water = sample.wash().fluid().equals(Optional.of(Fluid.WATER));
            double share = sample.reading().filterShare();
            if (!water && share > 0 && sample.collectedOn().isPresent()) {
                groups.computeIfAbsent(
                                new Place(standOf(sample), sample.collectedOn().get()),
                                place -> new ArrayList<>())
                        .add(new Observation(counted.individuals(), sample.samplingUnits(), share));
            }
        }
        return new EarlierRounds(
                groups.entrySet().stream()
                        .map(
                                group ->
                                        new EarlierRounds.Group(
                                                group.getKey().day(), group.getValue()))
                        .toList());
    }
}
