package jarwise.usecase.microscope;

import jarwise.decision.Finding.Subject;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.usecase.EstimateDensity;
import jarwise.usecase.findings.Group;
import jarwise.usecase.findings.Rounds;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.SiteRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/**
 * Works out for filters that wait at which numbers the verdict of their stand and round changes,
 * the other filters as they stand: by the same engine and evidence as findings. With these a device
 * knows without a server whether the rest of a filter still matters.
 *
 * @param counts counts of the site
 */
public record StopLimits(SiteCounts counts) {

    /** Filters older than this have dried out. */
    private static final int RECENT_DAYS = 35;

    private static final Set<SampleState> NOT_WAITING =
            EnumSet.of(
                    SampleState.PLANNED,
                    SampleState.READ,
                    SampleState.PARTLY_READ,
                    SampleState.LOST,
                    SampleState.SPILLED,
                    SampleState.DISCARDED);

    /**
     * What a filter would do to the verdict on one kind of animal. Numbers are of individuals on
     * the whole filter.
     *
     * @param pest pest code
     * @param group stages that are added up
     * @param stages codes of these stages
     * @param below largest number with which the verdict is below the line; empty if with none
     * @param above smallest number from which on it is above the line; empty if with none up to
     *     10,000
     * @param belowFrom smallest number with which it is below: mostly 0, but where none at all is
     *     found the estimate is more careful than where one is
     */
    public record Limit(
            String pest,
            String group,
            List<String> stages,
            OptionalInt below,
            OptionalInt above,
            int belowFrom) {

        public Limit {
            stages = List.copyOf(stages);
        }
    }

    /**
     * One filter.
     *
     * @param groups kinds of animals with an action threshold; empty where the filter will not
     *     enter the mean
     * @param othersToRead other filters of the same stand and round that wait
     */
    public record OfFilter(List<Limit> groups, int othersToRead) {

        public OfFilter {
            groups = List.copyOf(groups);
        }
    }

    /**
     * Works them out for every washed crop sample that waits to be read.
     *
     * @param nursery slug of the site
     * @param rules what the site has chosen
     * @param today last day of cutting that is looked at
     * @param reader who will read; empty if nobody knows: then as if all on the filter were seen
     * @return by code
     */
    public Map<SampleCode, OfFilter> run(
            String nursery, SiteRules rules, LocalDate today, Optional<String> reader) {
        LocalDate from = today.minusDays(RECENT_DAYS);
        List<CollectedSample> jars = counts.cropSamples(nursery, SamplingMethod.WASH, from, today);
        Map<SampleCode, List<Limit>> limits = new HashMap<>();
        for (Subject subject : rules.subjectsWithLine(today)) {
            Map<SampleCode, Long> individuals =
                    counts.individuals(nursery, rules.stagesOf(subject), subject, from, today);
            EstimateDensity estimate =
                    new EstimateDensity(
                            counts.estimates(),
                            rules,
                            counts.history(nursery, rules, subject, today),
                            subject);
            for (Group group : byDay(jars, individuals)) {
                new StandLimits(estimate, group, reader)
                        .of(waiting(group))
                        .forEach(
                                (code, limit) ->
                                        limits.computeIfAbsent(code, c -> new ArrayList<>())
                                                .add(limit));
            }
        }
        Map<SampleCode, OfFilter> filters = new TreeMap<>();
        for (Group group : byDay(jars, Map.of())) {
            List<CollectedSample> waiting = waiting(group);
            waiting.forEach(
                    jar ->
                            filters.put(
                                    jar.code(),
                                    new OfFilter(
                                            limits.getOrDefault(jar.code(), List.of()),
                                            waiting.size() - 1)));
        }
        return filters;
    }

    private static List<Group> byDay(
            List<CollectedSample> jars, Map<SampleCode, Long> individuals) {
        return SiteCounts.groups(jars, individuals, new Rounds(List.of(), false), jar -> true);
    }

    private static List<CollectedSample> waiting(Group group) {
        return group.samples().stream().filter(jar -> !NOT_WAITING.contains(jar.state())).toList();
    }
}
