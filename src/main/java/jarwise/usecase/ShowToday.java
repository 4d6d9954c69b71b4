package jarwise.usecase;

import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Stand;
import jarwise.decision.Verdict;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.site.Nursery;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.store.work.TreatmentStore;
import jarwise.treatment.Application;
import jarwise.usecase.findings.BareStands;
import jarwise.usecase.findings.Group;
import jarwise.usecase.findings.ReadingWindows;
import jarwise.usecase.findings.Rounds;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.findings.Today;
import jarwise.usecase.findings.Today.Due;
import jarwise.usecase.rounds.RoundsToWalk;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Shows what can't wait and what is known, at one moment.
 *
 * @param counts samples and settings
 * @param samples samples by state
 * @param site benches and crops
 * @param treatments ledger
 * @param rounds rounds that are still to be walked
 */
public record ShowToday(
        SiteCounts counts,
        SampleStore samples,
        SiteStore site,
        TreatmentStore treatments,
        RoundsToWalk rounds) {

    /** A round older than this says nothing of today. */
    private static final int RECENT_DAYS = 35;

    private static final int DAYS_AHEAD = 14;
    private static final Set<SampleState> WAITING =
            EnumSet.of(
                    SampleState.CUT, SampleState.WASHED, SampleState.FROZEN, SampleState.READING);

    private static final Set<SampleState> READ =
            EnumSet.of(SampleState.READ, SampleState.PARTLY_READ);

    /** {@return the state of a site at a moment, in its own time zone} */
    public Today run(Nursery nursery, ZonedDateTime now) {
        String slug = nursery.slug();
        SiteRules rules = counts.rules(slug);
        LocalDate day = now.toLocalDate();
        List<CollectedSample> jars =
                counts.cropSamples(slug, SamplingMethod.WASH, day.minusDays(RECENT_DAYS), day);
        List<Finding> known = known(slug, rules, jars, day);
        List<CollectedSample> waiting = samples.inStates(slug, WAITING);
        List<Due> due = new ArrayList<>();
        due.addAll(noEntry(slug, now));
        due.addAll(toRead(waiting, rules, now));
        known.stream()
                .filter(finding -> finding.verdict().equals(Optional.of(Verdict.ABOVE_THE_LINE)))
                .forEach(finding -> due.add(new Due.Decide(finding)));
        recounts(waiting).ifPresent(due::add);
        int questions = samples.withOpenQuestions(slug).size();
        if (questions > 0) {
            due.add(new Due.Answer(questions));
        }
        due.addAll(rounds.run(slug, day, day.plusDays(DAYS_AHEAD)));
        return new Today(
                rules,
                due,
                known,
                BareStands.of(site, slug, day, jars).stream()
                        .map(BareStands.Bare::stand)
                        .sorted()
                        .toList(),
                roundState(jars),
                jars.isEmpty() && counts.lastDay(slug).isEmpty());
    }

    private List<Due> noEntry(String slug, ZonedDateTime now) {
        Instant instant = now.toInstant();
        return treatments.applications(slug, instant.minus(30, ChronoUnit.DAYS), instant).stream()
                .filter(application -> !application.mayBeEntered(instant))
                .sorted(Comparator.comparing(ShowToday::endOrLater))
                .map(application -> (Due) new Due.NoEntry(application, application.reentryEnds()))
                .toList();
    }

    private static Instant endOrLater(Application application) {
        return application.reentryEnds().orElse(Instant.MAX);
    }

    /** Washed filters, put together where they come from one stand and dry out in the same hour. */
    private List<Due> toRead(List<CollectedSample> waiting, SiteRules rules, ZonedDateTime now) {
        ReadingWindows windows = new ReadingWindows(rules, now);
        Map<Instant, Map<Stand, List<CollectedSample>>> byEnd = new TreeMap<>();
        for (CollectedSample sample : waiting) {
            if (ReadingWindows.hasOne(sample)) {
                byEnd.computeIfAbsent(
                                windows.readBy(sample).truncatedTo(ChronoUnit.HOURS),
                                end -> new TreeMap<>())
                        .computeIfAbsent(SiteCounts.standOf(sample), stand -> new ArrayList<>())
                        .add(sample);
            }
        }
        return byEnd.values().stream()
                .flatMap(stands -> stands.entrySet().stream())
                .map(stand -> read(stand.getKey(), stand.getValue(), rules, now))
                .toList();
    }

    private static Due read(
            Stand stand, List<CollectedSample> filters, SiteRules rules, ZonedDateTime now) {
        double minutes = filters.size() * rules.minutesPerJarOn(now.toLocalDate());
        return new Due.Read(
                stand,
                filters.size(),
                filters.get(0).collectedOn().orElse(now.toLocalDate()),
                new ReadingWindows(rules, now).of(filters),
                Duration.ofMinutes(Math.round(minutes)));
    }

    private static Optional<Due> recounts(Collection<CollectedSample> waiting) {
        long filters = waiting.stream().filter(s -> s.role() == SampleRole.RECOUNT).count();
        return filters == 0 ? Optional.empty() : Optional.of(new Due.Recount((int) filters));
    }

    /** One finding a stand: with finds before without, then the most likely above its line. */
    private List<Finding> known(
            String slug, SiteRules rules, List<CollectedSample> jars, LocalDate day) {
        Map<Stand, List<Choice>> byStand = new HashMap<>();
        for (Subject subject : rules.subjectsWithLine(day)) {
            EstimateDensity estimate =
                    new EstimateDensity(
                            counts.estimates(),
                            rules,
                            counts.history(slug, rules, subject, day),
                            subject);
            for (Group group : newest(slug, rules, subject, jars, day)) {
                byStand.computeIfAbsent(group.stand(), stand -> new ArrayList<>())
                        .add(new Choice(estimate, group, estimate.run(group)));
            }
        }
        return byStand.values().stream()
                .flatMap(choices -> chosen(choices).stream())
                .map(choice -> choice.estimate().withMoreSamples(choice.group(), choice.finding()))
                .sorted(ShowFindings.URGENT_FIRST)
                .toList();
    }

    private record Choice(EstimateDensity estimate, Group group, Finding finding) {}

    private static List<Choice> chosen(List<Choice> choices) {
        List<Choice> above =
                choices.stream()
                        .filter(
                                choice ->
                                        choice.finding()
                                                .verdict()
                                                .equals(Optional.of(Verdict.ABOVE_THE_LINE)))
                        .toList();
        return above.isEmpty()
                ? choices.stream()
                        .min(
                                Comparator.comparing(
                                                (Choice choice) ->
                                                        choice.finding().evidence().individuals()
                                                                == 0)
                                        .thenComparing(Choice::finding, ShowFindings.URGENT_FIRST))
                        .stream()
                        .toList()
                : above;
    }

    /** The newest round of each stand; the newest that was read where a newer one waits. */
    private List<Group> newest(
            String slug,
            SiteRules rules,
            Subject subject,
            List<CollectedSample> jars,
            LocalDate day) {
        Map<SampleCode, Long> individuals =
                counts.individuals(
                        slug, rules.stagesOf(subject), subject, day.minusDays(RECENT_DAYS), day);
        List<LocalDate> days =
                jars.stream().flatMap(sample -> sample.collectedOn().stream()).toList();
        Map<Stand, List<Group>> byStand =
                SiteCounts.groups(jars, individuals, new Rounds(days, false), jar -> true).stream()
                        .collect(Collectors.groupingBy(Group::stand));
        return byStand.values().stream().flatMap(groups -> newest(groups).stream()).toList();
    }

    private static Optional<Group> newest(List<Group> rounds) {
        return rounds.stream()
                .filter(group -> group.samples().stream().anyMatch(jar -> tells(group, jar)))
                .max(Comparator.comparing(Group::day));
    }

    /** Whether a jar was looked through for these animals, or still may be. */
    private static boolean tells(Group group, CollectedSample jar) {
        return group.individuals().containsKey(jar.code()) || WAITING.contains(jar.state());
    }

    private static Optional<Today.RoundState> roundState(List<CollectedSample> jars) {
        Optional<LocalDate> newest =
                jars.stream()
                        .flatMap(sample -> sample.collectedOn().stream())
                        .max(LocalDate::compareTo);
        return newest.map(
                day -> {
                    List<CollectedSample> cut =
                            jars.stream()
                                    .filter(jar -> Objects.equals(jar.collectedOn(), newest))
                                    .toList();
                    long read = cut.stream().filter(jar -> READ.contains(jar.state())).count();
                    long toRead = cut.stream().filter(jar -> WAITING.contains(jar.state())).count();
                    return new Today.RoundState(day, cut.size(), (int) read, (int) toRead);
                });
    }
}
