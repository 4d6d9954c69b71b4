package jarwise.usecase.rounds;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.plan.PlannedJar;
import jarwise.plan.Round;
import jarwise.plan.RoundPlan;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.site.CropLot;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.store.work.RoundStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Registers a round: from now on each of its jars is a planned sample with all its facts, and the
 * round adds to what is planned for that day. All of it or nothing.
 */
public final class RegisterRound {

    private final Database database;
    private final EventStore events;
    private final SiteStore sites;
    private final RoundPlanStore plans;
    private final RoundStore rounds;

    public RegisterRound(Database database) {
        this.database = database;
        this.events = new EventStore(database);
        this.sites = new SiteStore(database);
        this.plans = new RoundPlanStore(database);
        this.rounds = new RoundStore(database);
    }

    /**
     * Registers.
     *
     * @param nursery slug of the site
     * @param plan the round; its name and the codes of its jars must be new
     * @throws jarwise.base.InvalidInput if one is taken
     */
    public void run(String nursery, RoundPlan plan) {
        database.inOneTransaction(
                () -> {
                    events.holdOthersBack();
                    plan.jars().forEach(jar -> refuseIfTaken(nursery, jar));
                    plans.put(nursery, plan);
                    events.append(nursery, registered(nursery, plan));
                    stops(plan.day(), plan.method(), plan.jars())
                            .ifPresent(more -> rounds.addTo(nursery, more));
                    return plan;
                });
    }

    private void refuseIfTaken(String nursery, PlannedJar jar) {
        if (events.fold(nursery, jar.code()).isPresent()) {
            throw new Refused(Message.of("sample.code.taken", jar.code().text()));
        }
    }

    private List<SampleEvent> registered(String nursery, RoundPlan plan) {
        String device = "desk-" + nursery;
        long sequence = events.lastSequence(device);
        Map<String, String> crops =
                sites.cropLots(nursery).stream()
                        .collect(Collectors.toMap(CropLot::code, CropLot::crop));
        List<SampleEvent> added = new ArrayList<>();
        for (PlannedJar jar : plan.jars()) {
            added.add(
                    new SampleEvent(
                            new EventId(device, ++sequence),
                            jar.code(),
                            plan.plannedAt(),
                            plan.plannedBy(),
                            Optional.empty(),
                            new Deed.StepTaken(
                                    Step.REGISTERED,
                                    facts(plan, jar, crops),
                                    Optional.empty(),
                                    Optional.empty())));
        }
        return added;
    }

    /** Everything that is known of a jar before it is cut; what is not known is left out. */
    private static Map<String, String> facts(
            RoundPlan plan, PlannedJar jar, Map<String, String> crops) {
        Map<String, String> facts = new TreeMap<>();
        facts.put(Facts.METHOD, Fields.wordOf(plan.method()));
        facts.put(Facts.PURPOSE, Fields.wordOf(jar.purpose()));
        facts.put(Facts.ROLE, Fields.wordOf(jar.role()));
        facts.put(Facts.HOUSE, jar.house());
        facts.put(Facts.BENCH, jar.bench());
        facts.put(Facts.CROP_LOT, jar.cropLot().orElse(""));
        facts.put(Facts.CROP, jar.cropLot().map(lot -> crops.getOrDefault(lot, "")).orElse(""));
        facts.put(Facts.VARIETY, jar.variety().orElse(""));
        if (jar.growingPoints() > 0) {
            facts.put(Facts.SAMPLING_UNITS, String.valueOf(jar.growingPoints()));
        }
        if (jar.role() == SampleRole.SPIKE) {
            facts.put(Facts.KNOWN, plan.numbers().getOrDefault("spiked", ""));
        }
        facts.values().removeIf(String::isBlank);
        return facts;
    }

    /** {@return what these jars are on each bench; empty for checks of the work alone} */
    static Optional<Round> stops(LocalDate day, SamplingMethod method, List<PlannedJar> jars) {
        Map<String, List<PlannedJar>> byBench =
                jars.stream()
                        .filter(PlannedJar::isOfCrop)
                        .collect(
                                Collectors.groupingBy(
                                        PlannedJar::bench,
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        List<Round.Stop> stops = new ArrayList<>();
        byBench.forEach(
                (bench, there) ->
                        stops.add(
                                new Round.Stop(
                                        bench,
                                        there.size(),
                                        there.stream().anyMatch(RegisterRound::isRandom)
                                                ? Purpose.RANDOM
                                                : Purpose.TARGETED)));
        return stops.isEmpty() ? Optional.empty() : Optional.of(new Round(day, method, stops));
    }

    private static boolean isRandom(PlannedJar jar) {
        return jar.purpose() == Purpose.RANDOM;
    }
}
