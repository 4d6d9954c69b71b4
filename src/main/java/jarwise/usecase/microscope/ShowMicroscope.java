package jarwise.usecase.microscope;

import jarwise.decision.ActionThreshold;
import jarwise.pest.Pest;
import jarwise.pest.Pests;
import jarwise.plan.RoundPlan;
import jarwise.sample.CollectedSample;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.Reader;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.sample.SeededFilter;
import jarwise.stats.filter.FilterLayout;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.ReaderStore;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.store.work.SeededFilterStore;
import jarwise.usecase.findings.SiteCounts;
import jarwise.wire.microscope.MicroscopeSheet;
import jarwise.wire.microscope.MicroscopeSheet.Rules;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts together what counting filters needs where there is no server. */
public final class ShowMicroscope {

    /** A jar that was planned longer ago and not cut will not come. */
    private static final int DAYS_PLANNED = 14;

    /** A filter washed longer ago has dried out long since. */
    private static final int DAYS_KEPT = 30;

    private static final int DAYS_READ = 7;

    private static final Set<SampleState> WAITING =
            EnumSet.of(
                    SampleState.PLANNED,
                    SampleState.CUT,
                    SampleState.WASHED,
                    SampleState.FROZEN,
                    SampleState.READING);

    private static final Set<SampleState> READ =
            EnumSet.of(SampleState.READ, SampleState.PARTLY_READ);

    /** Speeds older than this say little about today. */
    private static final int DAYS_OF_SPEED = 180;

    private final SampleStore samples;
    private final EventStore events;
    private final RoundPlanStore plans;
    private final SettingsStore settings;
    private final PestStore pests;
    private final ReaderStore readers;
    private final SeededFilterStore seeded;
    private final SiteCounts counts;

    public ShowMicroscope(Database database, SiteCounts counts) {
        this.samples = new SampleStore(database);
        this.events = new EventStore(database);
        this.plans = new RoundPlanStore(database);
        this.settings = new SettingsStore(database);
        this.pests = new PestStore(database);
        this.readers = new ReaderStore(database);
        this.seeded = new SeededFilterStore(database);
        this.counts = counts;
    }

    /**
     * {@return the filters to read at a moment}
     *
     * @param nursery slug of the site
     * @param reader who will read, where that is known: limits are for their eyes
     * @param now by the clocks of the site
     */
    public MicroscopeSheet run(String nursery, Optional<String> reader, ZonedDateTime now) {
        LocalDate today = now.toLocalDate();
        ProtocolVersion protocol = settings.protocolOn(nursery, today);
        Map<SampleCode, RoundPlan> rounds = rounds(nursery, today);
        List<CollectedSample> waiting =
                samples.inStates(nursery, WAITING).stream()
                        .filter(sample -> sample.method() == SamplingMethod.WASH)
                        .filter(sample -> isOfNow(sample, rounds, today))
                        .toList();
        LookedFor lookedFor = LookedFor.of(samples, nursery, today, usual(nursery, today));
        Desk desk =
                new Desk(
                        protocol,
                        rounds,
                        samples.find(nursery, firstsOf(waiting)),
                        lookedFor,
                        new StopLimits(counts).run(nursery, counts.rules(nursery), today, reader),
                        events.ofSamples(nursery, codes(waiting)));
        return new MicroscopeSheet(
                FilterLayout.ofCells(protocol.filterCells()),
                waiting.stream().map(desk::lay).toList(),
                read(nursery, today),
                seeded.all(nursery).stream().filter(filter -> isInUse(filter, today)).toList(),
                pests.pests(),
                lookedFor.usual(),
                people(nursery),
                rules(ReadingRules.on(settings, nursery, today)),
                secondsPerCell(nursery, today));
    }

    private static List<SampleCode> codes(List<CollectedSample> filters) {
        return filters.stream().map(CollectedSample::code).toList();
    }

    private static List<SampleCode> firstsOf(List<CollectedSample> filters) {
        return filters.stream().flatMap(filter -> filter.recountOf().stream()).distinct().toList();
    }

    private static boolean isInUse(SeededFilter filter, LocalDate today) {
        return filter.retiredOn().filter(day -> !day.isAfter(today)).isEmpty();
    }

    private List<String> people(String nursery) {
        return readers.readers(nursery).stream().filter(Reader::active).map(Reader::code).toList();
    }

    private static Rules rules(ReadingRules rules) {
        return new Rules(rules.passes(), rules.wantedRelativeError(), rules.minutesAllowed());
    }

    private Map<String, Double> secondsPerCell(String nursery, LocalDate today) {
        Map<String, Double> seconds = new HashMap<>();
        seconds.put("", ReadingSpeed.USUAL.secondsPerCell());
        ReadingSpeed.byReader(samples.between(nursery, today.minusDays(DAYS_OF_SPEED), today))
                .forEach((reader, speed) -> seconds.put(reader, speed.secondsPerCell()));
        return seconds;
    }

    private Map<SampleCode, RoundPlan> rounds(String nursery, LocalDate today) {
        Map<SampleCode, RoundPlan> rounds = new HashMap<>();
        for (RoundPlan plan : plans.plans(nursery, today.minusDays(DAYS_KEPT), today)) {
            plan.jars().forEach(jar -> rounds.put(jar.code(), plan));
        }
        return rounds;
    }

    /** Jars of rounds that nobody walked, and filters long since dry, only hide the others. */
    private static boolean isOfNow(
            CollectedSample sample, Map<SampleCode, RoundPlan> rounds, LocalDate today) {
        boolean isFirst = sample.role() != SampleRole.RECOUNT;
        if (isFirst && sample.state() == SampleState.PLANNED) {
            RoundPlan plan = rounds.get(sample.code());
            return plan != null && plan.day().isAfter(today.minusDays(DAYS_PLANNED));
        }
        return sample.collectedOn()
                .map(day -> day.isAfter(today.minusDays(DAYS_KEPT)))
                .orElse(true);
    }

    private List<CollectedSample> read(String nursery, LocalDate today) {
        Collection<CollectedSample> lately =
                samples.between(nursery, today.minusDays(DAYS_READ), today);
        return lately.stream()
                .filter(sample -> READ.contains(sample.state()))
                .filter(sample -> sample.method() == SamplingMethod.WASH)
                .toList();
    }

    /** Pests with a line come first; where there is none, the first of the list. */
    private List<String> usual(String nursery, LocalDate today) {
        Pests all = pests.pests();
        List<String> withLine =
                settings.thresholds(nursery).stream()
                        .filter(line -> !line.setOn().isAfter(today))
                        .map(ActionThreshold::pest)
                        .distinct()
                        .toList();
        return withLine.isEmpty() ? List.of(firstOf(all)) : withLine;
    }

    private static String firstOf(Pests all) {
        return all.all().stream().findFirst().map(Pest::code).orElseThrow();
    }
}
