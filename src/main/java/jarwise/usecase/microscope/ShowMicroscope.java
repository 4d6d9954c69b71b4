package jarwise.usecase.microscope;

import jarwise.decision.ActionThreshold;
import jarwise.pest.Pest;
import jarwise.pest.Pests;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.sample.CollectedSample;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.Reader;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.stats.filter.FilterLayout;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.ReaderStore;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.tally.SampleEvent;
import jarwise.wire.microscope.MicroscopeSheet;
import jarwise.wire.microscope.MicroscopeSheet.FilterToRead;
import jarwise.wire.microscope.MicroscopeSheet.Window;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;

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

    private final SampleStore samples;
    private final EventStore events;
    private final RoundPlanStore plans;
    private final SettingsStore settings;
    private final PestStore pests;
    private final ReaderStore readers;

    public ShowMicroscope(Database database) {
        this.samples = new SampleStore(database);
        this.events = new EventStore(database);
        this.plans = new RoundPlanStore(database);
        this.settings = new SettingsStore(database);
        this.pests = new PestStore(database);
        this.readers = new ReaderStore(database);
    }

    /** {@return the filters to read at a moment, by the clocks of the site} */
    public MicroscopeSheet run(String nursery, ZonedDateTime now) {
        LocalDate today = now.toLocalDate();
        ProtocolVersion protocol = settings.protocolOn(nursery, today);
        FilterLayout layout = FilterLayout.ofCells(protocol.filterCells());
        Map<SampleCode, RoundPlan> rounds = rounds(nursery, today);
        List<CollectedSample> waiting =
                samples.inStates(nursery, WAITING).stream()
                        .filter(sample -> sample.method() == SamplingMethod.WASH)
                        .filter(sample -> isOfNow(sample, rounds, today))
                        .toList();
        Map<SampleCode, List<SampleEvent>> known =
                events.ofSamples(nursery, waiting.stream().map(CollectedSample::code).toList());
        LookedFor lookedFor = LookedFor.of(samples, nursery, today, usual(nursery, today));
        List<FilterToRead> filters =
                waiting.stream()
                        .map(
                                sample ->
                                        filter(
                                                sample,
                                                Optional.ofNullable(rounds.get(sample.code())),
                                                window(sample, protocol),
                                                lookedFor,
                                                known))
                        .toList();
        return new MicroscopeSheet(
                layout,
                filters,
                read(nursery, today),
                pests.pests(),
                lookedFor.usual(),
                readers.readers(nursery).stream()
                        .filter(Reader::active)
                        .map(Reader::code)
                        .toList());
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
        if (sample.state() == SampleState.PLANNED) {
            RoundPlan plan = rounds.get(sample.code());
            return plan != null && plan.day().isAfter(today.minusDays(DAYS_PLANNED));
        }
        return sample.collectedOn()
                .map(day -> day.isAfter(today.minusDays(DAYS_KEPT)))
                .orElse(true);
    }

    private static FilterToRead filter(
            CollectedSample sample,
            Optional<RoundPlan> round,
            Optional<Window> window,
            LookedFor lookedFor,
            Map<SampleCode, List<SampleEvent>> known) {
        SampleCode code = sample.code();
        Optional<PlannedJar> jar =
                round.flatMap(
                        plan ->
                                plan.jars().stream()
                                        .filter(one -> one.code().equals(code))
                                        .findAny());
        return new FilterToRead(
                sample,
                jar,
                round.map(plan -> plan.ofCrop().size()).orElse(0),
                window,
                lookedFor.on(sample),
                drawnStart(code),
                known.getOrDefault(code, List.of()));
    }

    private static Optional<Window> window(CollectedSample sample, ProtocolVersion protocol) {
        return sample.times()
                .washed()
                .map(
                        washed -> {
                            Instant frozen = sample.times().freezerIn().orElse(washed);
                            return new Window(
                                    frozen.plus(protocol.freeze()),
                                    washed.plus(protocol.readWithin()));
                        });
    }

    /** Drawn from the code, so that every device walks the same filter in the same order. */
    private static int drawnStart(SampleCode code) {
        CRC32 sum = new CRC32();
        sum.update(code.text().getBytes(StandardCharsets.UTF_8));
        return (int) (sum.getValue() & Integer.MAX_VALUE);
    }

    private List<SampleCode> read(String nursery, LocalDate today) {
        Collection<CollectedSample> lately =
                samples.between(nursery, today.minusDays(DAYS_READ), today);
        return lately.stream()
                .filter(sample -> READ.contains(sample.state()))
                .filter(sample -> sample.method() == SamplingMethod.WASH)
                .map(CollectedSample::code)
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
