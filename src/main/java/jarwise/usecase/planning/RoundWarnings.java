package jarwise.usecase.planning;

import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.sample.SampleState;
import jarwise.site.Nursery;
import jarwise.store.SampleStore;
import jarwise.store.work.TreatmentStore;
import jarwise.usecase.findings.SiteRules;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks for what stands in the way of a round.
 *
 * @param nursery the site
 * @param rules what it has chosen
 * @param treatments ledger
 * @param samples filters in the freezer
 */
record RoundWarnings(
        Nursery nursery, SiteRules rules, TreatmentStore treatments, SampleStore samples) {

    /** Re-entry intervals last hours or days; an open one may be as old as this. */
    private static final Duration LEDGER = Duration.ofDays(30);

    /** Below this many counted on the check, chance alone moves it by a third: a rule of thumb. */
    private static final double LEAST_ON_CHECK = 10;

    List<RoundWarning> of(PlanRequest request, List<JarPlace> places, Map<Stand, Finding> last) {
        List<RoundWarning> warnings = new ArrayList<>();
        List<StandThere> stops =
                places.stream().flatMap(jar -> jar.stand().stream()).distinct().toList();
        warnings.addAll(noEntry(request, stops));
        warnings.addAll(notToCut(request, stops));
        warnings.addAll(nobodyReads(request, places.size()));
        if (request.ask() instanceof Ask.Compare compare) {
            warnings.addAll(comparison(request, compare, last));
        }
        warnings.addAll(freezer(request, places.size()));
        List<StandThere> unknown =
                stops.stream().filter(stand -> stand.growingPoints().isEmpty()).toList();
        if (!unknown.isEmpty() && stops.size() > 1) {
            warnings.add(new RoundWarning.SizesUnknown(unknown));
        }
        return List.copyOf(warnings);
    }

    private List<RoundWarning> noEntry(PlanRequest request, List<StandThere> stops) {
        Instant there = request.day().atTime(request.start()).atZone(nursery.zone()).toInstant();
        List<RoundWarning> warnings = new ArrayList<>();
        treatments.applications(nursery.slug(), there.minus(LEDGER), there).stream()
                .filter(application -> !application.mayBeEntered(there))
                .forEach(
                        application -> {
                            List<StandThere> inside =
                                    stops.stream()
                                            .filter(
                                                    stop ->
                                                            application.covers(
                                                                    stop.house().code(),
                                                                    stop.bench().code()))
                                            .toList();
                            if (!inside.isEmpty()) {
                                boolean excepted = request.exception().isPresent();
                                warnings.add(
                                        new RoundWarning.NoEntry(application, inside, excepted));
                            }
                        });
        return warnings;
    }

    private List<RoundWarning> notToCut(PlanRequest request, List<StandThere> stops) {
        Set<String> marked =
                Set.copyOf(
                        List.of(
                                rules.textOn(SiteRules.NOT_TO_CUT, request.day())
                                        .orElse("")
                                        .split("[\\s,;]+")));
        List<StandThere> touched =
                stops.stream()
                        .filter(
                                stop ->
                                        marked.contains(stop.bench().code())
                                                || marked.contains(stop.lot().code()))
                        .toList();
        return touched.isEmpty() ? List.of() : List.of(new RoundWarning.NotToCut(touched));
    }

    private List<RoundWarning> nobodyReads(PlanRequest request, int jars) {
        ReadingHours hours =
                new ReadingHours(
                        rules.protocolOn(request.day()),
                        ReadingHours.days(rules.textOn(SiteRules.WORKING_DAYS, request.day())),
                        nursery.zone());
        var workload = request.assumed().workload();
        long before = Math.round(jars * (workload.cutMinutes() + workload.washMinutes()));
        ZonedDateTime washed =
                request.day().atTime(request.start()).atZone(nursery.zone()).plusMinutes(before);
        long needed = Math.round(workload.readingMinutes(jars));
        long there = hours.minutes(washed);
        return there >= Math.max(1, needed)
                ? List.of()
                : List.of(
                        new RoundWarning.NobodyReads(
                                hours.from(washed),
                                hours.to(washed),
                                there,
                                needed,
                                hours.nextThatFits(washed, Math.max(1, needed))));
    }

    private static List<RoundWarning> comparison(
            PlanRequest request, Ask.Compare ask, Map<Stand, Finding> last) {
        List<RoundWarning> warnings = new ArrayList<>();
        request.stands().stream()
                .filter(stand -> stand.key().equals(ask.check()))
                .forEach(
                        check -> {
                            thin(request, ask, check, last).ifPresent(warnings::add);
                            request.stands().stream()
                                    .filter(
                                            stand ->
                                                    !stand.lot()
                                                            .variety()
                                                            .equals(check.lot().variety()))
                                    .findFirst()
                                    .map(other -> new RoundWarning.VarietyIsBench(other, check))
                                    .ifPresent(warnings::add);
                        });
        return warnings;
    }

    /** Expected by the density last found there; by the density asked for where nobody looked. */
    private static Optional<RoundWarning> thin(
            PlanRequest request, Ask.Compare ask, StandThere check, Map<Stand, Finding> last) {
        Finding finding = last.get(check.stand());
        double density =
                finding == null
                        ? ask.density()
                        : finding.estimated()
                                .map(known -> known.density().estimate())
                                .orElse(ask.density());
        Assumed assumed = request.assumed();
        double expected = assumed.counted(density) * assumed.growingPoints() * ask.jarsPerGroup();
        return expected < LEAST_ON_CHECK
                ? Optional.of(new RoundWarning.ThinCheck(check, expected))
                : Optional.empty();
    }

    private List<RoundWarning> freezer(PlanRequest request, int jars) {
        int taken = samples.inStates(nursery.slug(), Set.of(SampleState.FROZEN)).size();
        return rules
                .numberOn(SiteRules.FREEZER_PLACES, request.day())
                .map(Double::intValue)
                .filter(places -> taken + jars > places)
                .map(places -> (RoundWarning) new RoundWarning.FreezerFull(places, taken, jars))
                .stream()
                .toList();
    }
}
