package jarwise.usecase;

import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Stand;
import jarwise.pest.Pest;
import jarwise.sample.CollectedSample;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SamplingMethod;
import jarwise.store.CountedSample;
import jarwise.store.SiteStore;
import jarwise.store.work.TreatmentStore;
import jarwise.treatment.Application;
import jarwise.usecase.findings.BareStands;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.Group;
import jarwise.usecase.findings.Rounds;
import jarwise.usecase.findings.Scope;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.findings.Sorting;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Shows how many there are, where, and whether it rises: by round, bench, variety and stage.
 *
 * @param counts samples and settings
 * @param site benches and crops
 * @param treatments ledger
 */
public record ShowFindings(SiteCounts counts, SiteStore site, TreatmentStore treatments) {

    /** Rounds older than this are shown only when asked for. */
    public static final int USUAL_DAYS = 70;

    /**
     * Finds what is known in a choice of places and days.
     *
     * @param nursery slug of the site
     * @param zone its time zone, for the days of treatments
     * @param rules what the site has chosen
     * @param scope what is asked
     */
    public Findings run(String nursery, ZoneId zone, SiteRules rules, Scope scope) {
        List<CollectedSample> all =
                counts.cropSamples(nursery, SamplingMethod.WASH, scope.from(), scope.to());
        Map<SampleCode, Long> individuals =
                counts.individuals(
                        nursery,
                        rules.stagesOf(scope.subject()),
                        scope.subject(),
                        scope.from(),
                        scope.to());
        Rounds rounds = Rounds.of(daysOf(all.stream().filter(scope::holds).toList()));
        List<Group> groups = SiteCounts.groups(all, individuals, rounds, scope::holds);
        EstimateDensity estimate =
                new EstimateDensity(
                        counts.estimates(),
                        rules,
                        counts.history(nursery, rules, scope.subject(), scope.to()),
                        scope.subject());
        List<Findings.Series> series =
                series(
                        groups,
                        estimate,
                        taps(nursery, rules, scope, rounds),
                        treatmentsOf(nursery, zone, scope));
        return new Findings(
                scope,
                rules,
                choices(rules, all),
                rounds,
                series,
                bare(nursery, scope, all),
                stages(nursery, rules, scope, groups),
                targeted(groups),
                lowExtraction(groups, series, estimate));
    }

    /**
     * {@return which animals to show first: those nearest to a line, else the first that can be}
     */
    public static Optional<Subject> usual(SiteRules rules, LocalDate day) {
        List<Subject> withLine = rules.subjectsWithLine(day);
        return withLine.isEmpty()
                ? subjects(rules).stream().findFirst()
                : withLine.stream().findFirst();
    }

    private static List<LocalDate> daysOf(List<CollectedSample> samples) {
        return samples.stream().flatMap(sample -> sample.collectedOn().stream()).toList();
    }

    private List<Findings.Series> series(
            List<Group> groups,
            EstimateDensity estimate,
            Map<Stand, Map<LocalDate, Findings.Taps>> taps,
            List<Application> applications) {
        Map<Stand, List<Group>> byStand =
                groups.stream()
                        .collect(
                                Collectors.groupingBy(
                                        Group::stand, TreeMap::new, Collectors.toList()));
        List<Findings.Series> series = new ArrayList<>();
        byStand.forEach(
                (stand, rounds) ->
                        series.add(
                                new Findings.Series(
                                        stand,
                                        findings(rounds, estimate),
                                        taps.getOrDefault(stand, Map.of()),
                                        applications.stream()
                                                .filter(a -> treats(a, stand, rounds))
                                                .toList())));
        series.sort(Comparator.comparing(Findings.Series::lastRead, URGENT_FIRST));
        return series;
    }

    /** Most likely above the line first; without a line, densest first; not read last. */
    public static final Comparator<Finding> URGENT_FIRST =
            Comparator.comparingDouble(
                            (Finding finding) ->
                                    -finding.judgement()
                                            .map(judgement -> judgement.probabilityAbove())
                                            .orElse(-1.0))
                    .thenComparingDouble(
                            finding ->
                                    -finding.estimated()
                                            .map(known -> known.density().estimate())
                                            .orElse(-1.0))
                    .thenComparing(Finding::stand);

    /** Every round, the newest one that was read with the jars that would tell. */
    private static List<Finding> findings(List<Group> rounds, EstimateDensity estimate) {
        List<Finding> findings = new ArrayList<>(rounds.stream().map(estimate::run).toList());
        for (int i = findings.size() - 1; i >= 0; i--) {
            if (findings.get(i).estimated().isPresent()) {
                findings.set(i, estimate.withMoreSamples(rounds.get(i), findings.get(i)));
                break;
            }
        }
        return findings;
    }

    private static boolean treats(Application application, Stand stand, List<Group> rounds) {
        String house =
                rounds.stream()
                        .flatMap(group -> group.samples().stream())
                        .flatMap(sample -> sample.place().house().stream())
                        .findFirst()
                        .orElse("");
        return stand.bench().map(bench -> application.covers(house, bench)).orElse(false);
    }

    private List<Application> treatmentsOf(String nursery, ZoneId zone, Scope scope) {
        return treatments.applications(
                nursery,
                scope.from().atStartOfDay(zone).toInstant(),
                scope.to().plusDays(1).atStartOfDay(zone).toInstant());
    }

    private Map<Stand, Map<LocalDate, Findings.Taps>> taps(
            String nursery, SiteRules rules, Scope scope, Rounds rounds) {
        Map<Stand, Map<LocalDate, Findings.Taps>> taps = new HashMap<>();
        for (CountedSample counted :
                counts.counts(
                        nursery,
                        SamplingMethod.TAP,
                        scope.subject().pest(),
                        rules.stagesOf(scope.subject()),
                        scope.from(),
                        scope.to())) {
            CollectedSample sample = counted.sample();
            if (scope.holds(sample)
                    && sample.purpose() == Purpose.RANDOM
                    && sample.collectedOn().isPresent()) {
                taps.computeIfAbsent(SiteCounts.standOf(sample), stand -> new TreeMap<>())
                        .merge(
                                rounds.of(sample.collectedOn().get()),
                                new Findings.Taps(sample.samplingUnits(), counted.individuals()),
                                Findings.Taps::plus);
            }
        }
        return taps;
    }

    private static Findings.Choices choices(SiteRules rules, List<CollectedSample> all) {
        TreeSet<String> varieties = new TreeSet<>();
        TreeSet<String> houses = new TreeSet<>();
        TreeSet<String> benches = new TreeSet<>();
        for (CollectedSample sample : all) {
            sample.place().variety().ifPresent(varieties::add);
            sample.place().house().ifPresent(houses::add);
            sample.place().bench().ifPresent(benches::add);
        }
        return new Findings.Choices(
                subjects(rules), List.copyOf(varieties), List.copyOf(houses), List.copyOf(benches));
    }

    private static List<Subject> subjects(SiteRules rules) {
        List<Subject> subjects = new ArrayList<>();
        for (Pest pest : rules.pests().all()) {
            pest.stageGroups().forEach(group -> subjects.add(new Subject(pest.code(), group)));
        }
        return subjects;
    }

    private List<Stand> bare(String nursery, Scope scope, List<CollectedSample> all) {
        return BareStands.of(site, nursery, scope.to(), all).stream()
                .filter(bare -> matches(scope.house(), bare.house()))
                .filter(bare -> matches(scope.bench(), bare.stand().bench()))
                .filter(bare -> matches(scope.variety(), bare.stand().variety()))
                .map(BareStands.Bare::stand)
                .sorted()
                .toList();
    }

    private static boolean matches(Optional<String> wanted, Optional<String> there) {
        return wanted.isEmpty() || wanted.equals(there);
    }

    private List<Findings.StageCounts> stages(
            String nursery, SiteRules rules, Scope scope, List<Group> groups) {
        Map<SampleCode, LocalDate> used = new HashMap<>();
        for (Group group : groups) {
            new Sorting(group, rules.protocolOn(group.day()))
                    .used()
                    .forEach(sample -> used.put(sample.code(), group.day()));
        }
        List<Findings.StageCounts> stages = new ArrayList<>();
        rules.pests()
                .find(scope.subject().pest())
                .ifPresent(
                        pest ->
                                pest.lifeStages()
                                        .forEach(
                                                stage ->
                                                        stages.add(
                                                                stageCounts(
                                                                        nursery,
                                                                        scope,
                                                                        stage.code(),
                                                                        used))));
        return stages.stream().filter(stage -> !stage.byRound().isEmpty()).toList();
    }

    private Findings.StageCounts stageCounts(
            String nursery, Scope scope, String stage, Map<SampleCode, LocalDate> used) {
        Map<LocalDate, Long> byRound = new TreeMap<>();
        counts.individuals(nursery, List.of(stage), scope.subject(), scope.from(), scope.to())
                .forEach(
                        (code, individuals) -> {
                            LocalDate day = used.get(code);
                            if (day != null) {
                                byRound.merge(day, individuals, Long::sum);
                            }
                        });
        return new Findings.StageCounts(stage, byRound);
    }

    private static List<Findings.Targeted> targeted(List<Group> groups) {
        return groups.stream()
                .flatMap(ShowFindings::targeted)
                .sorted(Comparator.comparing(t -> t.sample().code()))
                .toList();
    }

    private static Stream<Findings.Targeted> targeted(Group group) {
        return group.samples().stream()
                .filter(sample -> sample.purpose() == Purpose.TARGETED)
                .map(sample -> new Findings.Targeted(sample, individuals(group, sample)));
    }

    private static Optional<Long> individuals(Group group, CollectedSample sample) {
        return Optional.ofNullable(group.individuals().get(sample.code()));
    }

    private static Map<Stand, Finding> lowExtraction(
            List<Group> groups, List<Findings.Series> series, EstimateDensity estimate) {
        Map<Stand, Finding> low = new HashMap<>();
        for (Findings.Series one : series) {
            groups.stream()
                    .filter(group -> group.stand().equals(one.stand()))
                    .filter(group -> group.day().equals(one.lastRead().day()))
                    .findFirst()
                    .flatMap(group -> estimate.withExtraction(group, Findings.LOW_EXTRACTION))
                    .ifPresent(finding -> low.put(one.stand(), finding));
        }
        return low;
    }
}
