package jarwise.usecase.rounds;

import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Stand;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.usecase.EstimateDensity;
import jarwise.usecase.findings.Group;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.SiteRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What the jars of a round say, by themselves: each stand, and all of them together.
 *
 * @param counts counts of the site
 */
public record RoundResult(SiteCounts counts) {

    private static final int LATE_DAYS = 14;
    private static final Set<SampleState> UNCUT =
            EnumSet.of(SampleState.PLANNED, SampleState.DISCARDED);

    /**
     * What is known.
     *
     * @param rules what the site has chosen
     * @param subject which animals the round was for
     * @param together all jars as one group; empty before one is read
     * @param stands each stand with a jar that was read
     */
    public record Known(
            SiteRules rules,
            Optional<Subject> subject,
            Optional<Finding> together,
            List<Finding> stands) {}

    /** {@return what the jars that were read say} */
    public Known of(String nursery, ShowRounds.Shown shown) {
        SiteRules rules = counts.rules(nursery);
        Optional<Subject> subject = subject(shown, rules);
        if (subject.isEmpty()) {
            return new Known(rules, subject, Optional.empty(), List.of());
        }
        LocalDate day = shown.plan().day();
        List<CollectedSample> jars =
                shown.jars().values().stream()
                        .filter(jar -> jar.role() == SampleRole.CROP)
                        .filter(jar -> !UNCUT.contains(jar.state()))
                        .toList();
        Map<SampleCode, Long> individuals =
                new HashMap<>(
                        counts.individuals(
                                nursery,
                                rules.stagesOf(subject.get()),
                                subject.get(),
                                day.minusDays(LATE_DAYS),
                                day.plusDays(LATE_DAYS)));
        List<CollectedSample> read =
                jars.stream().filter(jar -> individuals.containsKey(jar.code())).toList();
        if (read.isEmpty()) {
            return new Known(rules, subject, Optional.empty(), List.of());
        }
        return known(nursery, rules, subject.get(), day, jars, individuals);
    }

    private Known known(
            String nursery,
            SiteRules rules,
            Subject subject,
            LocalDate day,
            List<CollectedSample> jars,
            Map<SampleCode, Long> individuals) {
        EstimateDensity estimate =
                new EstimateDensity(
                        counts.estimates(),
                        rules,
                        counts.history(nursery, rules, subject, day),
                        subject);
        Map<Stand, List<CollectedSample>> byStand = new TreeMap<>();
        jars.forEach(
                jar ->
                        byStand.computeIfAbsent(SiteCounts.standOf(jar), s -> new ArrayList<>())
                                .add(jar));
        Stand everywhere = new Stand(Optional.empty(), Optional.empty());
        return new Known(
                rules,
                Optional.of(subject),
                Optional.of(estimate.run(new Group(everywhere, day, jars, individuals))),
                byStand.entrySet().stream()
                        .map(
                                stand ->
                                        estimate.run(
                                                new Group(
                                                        stand.getKey(),
                                                        day,
                                                        stand.getValue(),
                                                        individuals)))
                        .toList());
    }

    private static Optional<Subject> subject(ShowRounds.Shown shown, SiteRules rules) {
        String[] parts = shown.plan().numbers().getOrDefault("subject", "").split("/", 2);
        return Optional.of(parts)
                .filter(two -> two.length == 2)
                .filter(
                        two ->
                                rules.pests().find(two[0]).stream()
                                        .anyMatch(pest -> pest.stageGroups().contains(two[1])))
                .map(two -> new Subject(two[0], two[1]));
    }
}
