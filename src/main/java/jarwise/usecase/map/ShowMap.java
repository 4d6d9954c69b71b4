package jarwise.usecase.map;

import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.decision.Verdict;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.Spot;
import jarwise.sample.Purpose;
import jarwise.sample.SamplingMethod;
import jarwise.site.CropLot;
import jarwise.site.Nursery;
import jarwise.site.Occupancy;
import jarwise.site.PlantMove;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.PlacedBench;
import jarwise.store.Database;
import jarwise.store.SiteStore;
import jarwise.store.work.FloorStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.store.work.RoundStore;
import jarwise.store.work.TreatmentStore;
import jarwise.treatment.Application;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.map.CropMap.BenchState;
import jarwise.usecase.map.CropMap.NoEntry;
import jarwise.usecase.map.CropMap.Status;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Shows the nursery from above, with what one round found: the same findings as the page Findings,
 * worked out by the same use case from the same samples.
 */
public final class ShowMap {

    /** Plants moved longer ago say little of what a round finds. */
    private static final int MOVED_DAYS = 28;

    private static final int LONGEST_INTERVAL_DAYS = 30;

    private final ShowFindings showFindings;
    private final SiteStore sites;
    private final FloorStore floors;
    private final RoundStore rounds;
    private final RoundPlanStore plans;
    private final TreatmentStore treatments;

    /** Shows what {@code showFindings} finds on the plan in a database. */
    public ShowMap(Database database, ShowFindings showFindings) {
        this.showFindings = showFindings;
        this.sites = new SiteStore(database);
        this.floors = new FloorStore(database);
        this.rounds = new RoundStore(database);
        this.plans = new RoundPlanStore(database);
        this.treatments = new TreatmentStore(database);
    }

    /** {@return the findings behind the map} */
    public ShowFindings showFindings() {
        return showFindings;
    }

    /** {@return the plan of a site alone} */
    public FloorPlan plan(String slug) {
        return FloorPlan.of(sites.houses(slug), sites.benches(slug), floors.drawn(slug));
    }

    /**
     * Shows one round on the plan.
     *
     * @param nursery the site
     * @param asked what is shown; empty where the site has no animals to look for
     * @param wanted the round to show; the newest one that was read, where it is not there
     * @param now the moment of the page, for re-entry
     */
    public CropMap run(
            Nursery nursery, Optional<Asked> asked, Optional<LocalDate> wanted, ZonedDateTime now) {
        String slug = nursery.slug();
        Optional<Findings> all =
                asked.map(ask -> showFindings.run(slug, nursery.zone(), ask.rules(), ask.scope()));
        List<RoundPlan> planned =
                plans.plans(
                        slug,
                        asked.map(ask -> ask.scope().from()).orElse(now.toLocalDate()),
                        now.toLocalDate().plusYears(1));
        List<CropMap.Stop> stops = stops(all, planned);
        LocalDate day = chosen(stops, all, wanted).orElse(now.toLocalDate());
        LocalDate end = end(all, day);
        FloorPlan plan = plan(slug);
        boolean walked = stops.stream().anyMatch(stop -> stop.day().equals(day) && stop.walked());
        List<BenchState> benches = benches(slug, plan, all, day, end);
        Optional<Findings> round =
                all.map(
                        found ->
                                RoundAlone.of(found, day, end, walked ? bare(benches) : List.of()));
        return new CropMap(
                plan,
                round,
                day,
                walked,
                stops,
                benches,
                new CropMap.Extras(
                        noEntry(slug, plan, now.toInstant()),
                        moves(slug, end),
                        places(planned, all, day)));
    }

    /**
     * What is asked for.
     *
     * @param rules what the site has chosen
     * @param scope animals and days
     */
    public record Asked(SiteRules rules, jarwise.usecase.findings.Scope scope) {}

    private static List<CropMap.Stop> stops(Optional<Findings> all, List<RoundPlan> planned) {
        TreeMap<LocalDate, CropMap.Stop> stops = new TreeMap<>();
        all.ifPresent(
                found ->
                        found.rounds()
                                .days()
                                .forEach(
                                        day ->
                                                stops.put(
                                                        day,
                                                        new CropMap.Stop(
                                                                day, above(found, day), true))));
        planned.stream()
                .filter(plan -> plan.method() == SamplingMethod.WASH)
                .map(plan -> round(all, plan.day()))
                .forEach(day -> stops.putIfAbsent(day, new CropMap.Stop(day, 0, false)));
        return List.copyOf(stops.values());
    }

    private static LocalDate round(Optional<Findings> all, LocalDate day) {
        return all.map(found -> found.rounds().of(day)).orElse(day);
    }

    private static int above(Findings found, LocalDate day) {
        return (int)
                found.series().stream()
                        .flatMap(series -> series.rounds().stream())
                        .filter(finding -> finding.day().equals(day))
                        .filter(ShowMap::isAbove)
                        .flatMap(finding -> finding.stand().bench().stream())
                        .distinct()
                        .count();
    }

    private static boolean isAbove(Finding finding) {
        return finding.verdict().equals(Optional.of(Verdict.ABOVE_THE_LINE));
    }

    private static Optional<LocalDate> chosen(
            List<CropMap.Stop> stops, Optional<Findings> all, Optional<LocalDate> wanted) {
        List<LocalDate> days = stops.stream().map(CropMap.Stop::day).toList();
        Optional<LocalDate> read =
                all.stream()
                        .flatMap(found -> found.series().stream())
                        .flatMap(series -> series.rounds().stream())
                        .filter(finding -> finding.estimated().isPresent())
                        .map(Finding::day)
                        .max(LocalDate::compareTo);
        return wanted.filter(days::contains)
                .or(() -> read)
                .or(() -> days.isEmpty() ? Optional.empty() : Optional.of(days.get(0)));
    }

    /** The last day of a round: a week where rounds are put together by week. */
    private static LocalDate end(Optional<Findings> all, LocalDate day) {
        return all.map(found -> found.rounds().weeks()).orElse(false) ? day.plusDays(6) : day;
    }

    private static List<Stand> bare(List<BenchState> benches) {
        return benches.stream()
                .filter(bench -> bench.findings().isEmpty() && !bench.lots().isEmpty())
                .map(
                        bench ->
                                new Stand(
                                        Optional.of(bench.code()),
                                        Optional.of(bench.lots().get(0).variety())))
                .toList();
    }

    private List<BenchState> benches(
            String slug, FloorPlan plan, Optional<Findings> all, LocalDate day, LocalDate end) {
        Map<String, List<CropLot>> lots = lotsOn(slug, end);
        Map<String, List<Finding>> found =
                all.stream()
                        .flatMap(one -> one.series().stream())
                        .flatMap(series -> series.rounds().stream())
                        .filter(finding -> finding.day().equals(day))
                        .filter(finding -> finding.stand().bench().isPresent())
                        .sorted(ShowFindings.URGENT_FIRST)
                        .collect(
                                Collectors.groupingBy(
                                        finding -> finding.stand().bench().orElseThrow()));
        return plan.houses().stream()
                .flatMap(house -> house.benches().stream())
                .map(
                        placed -> {
                            String code = placed.bench().code();
                            return state(
                                    placed,
                                    lots.getOrDefault(code, List.of()),
                                    found.getOrDefault(code, List.of()));
                        })
                .toList();
    }

    private static BenchState state(
            PlacedBench placed, List<CropLot> lots, List<Finding> findings) {
        Status status =
                findings.isEmpty()
                        ? lots.isEmpty() ? Status.EMPTY : Status.NOT_SAMPLED
                        : statusOf(findings.get(0));
        return new BenchState(placed, lots, findings, status);
    }

    /** {@return what a finding says of its bench} */
    static Status statusOf(Finding finding) {
        if (finding.estimated().isEmpty()) {
            return finding.notRead() ? Status.NOT_READ : Status.NOT_SAMPLED;
        }
        return finding.verdict()
                .map(
                        verdict ->
                                switch (verdict) {
                                    case ABOVE_THE_LINE -> Status.ABOVE;
                                    case BELOW_THE_LINE -> Status.BELOW;
                                    case CANNOT_TELL -> Status.CANNOT_TELL;
                                })
                .orElse(Status.NO_LINE);
    }

    private Map<String, List<CropLot>> lotsOn(String slug, LocalDate day) {
        Map<String, CropLot> lots =
                sites.cropLots(slug).stream()
                        .collect(Collectors.toMap(CropLot::code, Function.identity()));
        Map<String, List<CropLot>> byBench = new HashMap<>();
        for (Occupancy there : sites.occupancies(slug)) {
            CropLot lot = lots.get(there.cropLot());
            if (there.covers(day) && lot != null) {
                byBench.computeIfAbsent(there.bench(), code -> new ArrayList<>()).add(lot);
            }
        }
        return byBench;
    }

    private List<NoEntry> noEntry(String slug, FloorPlan plan, Instant now) {
        return treatments
                .applications(slug, now.minus(LONGEST_INTERVAL_DAYS, ChronoUnit.DAYS), now)
                .stream()
                .filter(application -> !application.mayBeEntered(now))
                .map(
                        application ->
                                new NoEntry(
                                        application,
                                        covered(plan, application),
                                        application.reentryEnds()))
                .toList();
    }

    private static Set<String> covered(FloorPlan plan, Application application) {
        return plan.houses().stream()
                .flatMap(house -> house.benches().stream())
                .map(PlacedBench::bench)
                .filter(bench -> application.covers(bench.house(), bench.code()))
                .map(bench -> bench.code())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private List<PlantMove> moves(String slug, LocalDate end) {
        return rounds.moves(slug).stream()
                .filter(move -> !move.movedOn().isAfter(end))
                .filter(move -> move.movedOn().isAfter(end.minusDays(MOVED_DAYS)))
                .toList();
    }

    private static Map<String, List<Spot>> places(
            List<RoundPlan> planned, Optional<Findings> all, LocalDate day) {
        return planned.stream()
                .filter(plan -> plan.method() == SamplingMethod.WASH)
                .filter(plan -> round(all, plan.day()).equals(day))
                .flatMap(plan -> plan.jars().stream())
                .filter(jar -> jar.purpose() == Purpose.RANDOM && jar.spot().isPresent())
                .collect(
                        Collectors.groupingBy(
                                PlannedJar::bench,
                                Collectors.mapping(
                                        jar -> jar.spot().orElseThrow(), Collectors.toList())));
    }
}
