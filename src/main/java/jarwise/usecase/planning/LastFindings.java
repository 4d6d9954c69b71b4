package jarwise.usecase.planning;

import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Stand;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SamplingMethod;
import jarwise.usecase.EstimateDensity;
import jarwise.usecase.findings.Group;
import jarwise.usecase.findings.Rounds;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.SiteRules;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the newest round that was read says of each stand.
 *
 * @param counts counts of the site
 */
record LastFindings(SiteCounts counts) {

    /** A round older than this says nothing of now. */
    private static final int RECENT_DAYS = 35;

    Map<Stand, Finding> of(String nursery, SiteRules rules, Subject subject, LocalDate day) {
        LocalDate from = day.minusDays(RECENT_DAYS);
        List<CollectedSample> jars = counts.cropSamples(nursery, SamplingMethod.WASH, from, day);
        Map<SampleCode, Long> individuals =
                counts.individuals(nursery, rules.stagesOf(subject), subject, from, day);
        List<LocalDate> days =
                jars.stream().flatMap(sample -> sample.collectedOn().stream()).toList();
        EstimateDensity estimate =
                new EstimateDensity(
                        counts.estimates(),
                        rules,
                        counts.history(nursery, rules, subject, day),
                        subject);
        Map<Stand, Group> newest = new HashMap<>();
        SiteCounts.groups(jars, individuals, new Rounds(days, false), jar -> true).stream()
                .filter(group -> wasRead(group, individuals))
                .forEach(
                        group ->
                                newest.merge(
                                        group.stand(),
                                        group,
                                        (a, b) -> a.day().isAfter(b.day()) ? a : b));
        Map<Stand, Finding> findings = new HashMap<>();
        newest.forEach((stand, group) -> findings.put(stand, estimate.run(group)));
        return findings;
    }

    private static boolean wasRead(Group group, Map<SampleCode, Long> individuals) {
        return group.samples().stream().anyMatch(jar -> individuals.containsKey(jar.code()));
    }
}
