package jarwise.usecase.walk;

import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.sample.Reader;
import jarwise.sample.SampleCode;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.ReaderStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.store.work.TreatmentStore;
import jarwise.tally.Deed;
import jarwise.tally.SampleEvent;
import jarwise.treatment.Application;
import jarwise.wire.walk.WalkSheet;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Puts together what a round needs where there is no server. */
public final class ShowWalk {

    private static final int LONGEST_INTERVAL_DAYS = 30;

    private final RoundPlanStore plans;
    private final SettingsStore settings;
    private final SiteStore sites;
    private final TreatmentStore treatments;
    private final ReaderStore readers;
    private final EventStore events;

    public ShowWalk(Database database) {
        this.plans = new RoundPlanStore(database);
        this.settings = new SettingsStore(database);
        this.sites = new SiteStore(database);
        this.treatments = new TreatmentStore(database);
        this.readers = new ReaderStore(database);
        this.events = new EventStore(database);
    }

    /** {@return the sheet of a round at a moment; empty where there is no such round} */
    public Optional<WalkSheet> find(String nursery, String id, Instant now) {
        return plans.find(nursery, id).map(plan -> sheet(nursery, plan, now));
    }

    private WalkSheet sheet(String nursery, RoundPlan plan, Instant now) {
        return new WalkSheet(
                plan,
                settings.protocolOn(nursery, plan.day()),
                sites.benches(nursery),
                noEntry(nursery, now),
                readers.readers(nursery).stream().filter(Reader::active).map(Reader::code).toList(),
                steps(nursery, plan));
    }

    /** {@return the places that nobody may enter at a moment} */
    List<WalkSheet.NoEntry> noEntry(String nursery, Instant now) {
        Instant from = now.minus(LONGEST_INTERVAL_DAYS, ChronoUnit.DAYS);
        return treatments.applications(nursery, from, now).stream()
                .filter(application -> !application.mayBeEntered(now))
                .map(ShowWalk::place)
                .toList();
    }

    private static WalkSheet.NoEntry place(Application application) {
        return new WalkSheet.NoEntry(
                application.house(), List.copyOf(application.benches()), application.reentryEnds());
    }

    private Map<SampleCode, List<SampleEvent>> steps(String nursery, RoundPlan plan) {
        Map<SampleCode, List<SampleEvent>> steps = new TreeMap<>();
        events.ofSamples(nursery, plan.jars().stream().map(PlannedJar::code).toList())
                .forEach(
                        (code, all) ->
                                steps.put(code, all.stream().filter(ShowWalk::isStep).toList()));
        return steps;
    }

    /** Presses at the microscope are no steps of the walk, and there may be thousands. */
    private static boolean isStep(SampleEvent event) {
        return event.deed() instanceof Deed.StepTaken || event.deed() instanceof Deed.Voided;
    }
}
