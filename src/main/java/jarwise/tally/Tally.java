package jarwise.tally;

import jarwise.sample.Step;
import jarwise.stats.filter.CellWalk;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Counts of one sample: the fold of its events. Order and repeats make no difference.
 *
 * @param individuals what was counted, zeros included; a stage that is not here was not read
 * @param aside what was counted too but is in no estimate: in obscured cells, in passes broken off,
 *     and by a second device in cells that another had read
 * @param cellsRead filter cells read to their end, where it was counted cell by cell; those of
 *     completed passes once the filter is done
 * @param cellsObscured filter cells that could not be read, likewise
 * @param cellsReadTwice filter cells that two devices called done
 * @param byCell whether it was counted cell by cell, so that a filter not called done is not read
 * @param done whether the filter was called done
 */
public record Tally(
        SortedMap<StageKey, Long> individuals,
        SortedMap<StageKey, Long> aside,
        int cellsRead,
        int cellsObscured,
        int cellsReadTwice,
        boolean byCell,
        boolean done) {

    /** Folds events of a filter whose passes are not known. */
    public static Tally of(Collection<SampleEvent> events, Map<String, List<String>> stagesOf) {
        return of(events, stagesOf, Optional.empty());
    }

    /**
     * Folds events into counts.
     *
     * @param events of one sample, in any order, repeats allowed
     * @param stagesOf life stages of each pest, by pest code: a filter that is done has zeros there
     * @param walk the passes in which it was read, where they are known
     */
    public static Tally of(
            Collection<SampleEvent> events,
            Map<String, List<String>> stagesOf,
            Optional<CellWalk> walk) {
        Map<EventId, SampleEvent> distinct = distinct(events);
        Set<EventId> slips = slips(distinct.values());
        List<SampleEvent> standing =
                distinct.values().stream().filter(event -> !slips.contains(event.id())).toList();
        FilterCells cells = FilterCells.of(standing, walk);
        TreeMap<StageKey, Long> individuals = new TreeMap<>();
        TreeMap<StageKey, Long> aside = new TreeMap<>();
        boolean byCell = !cells.byName().isEmpty();
        boolean done = false;
        for (SampleEvent event : standing) {
            if (event.deed() instanceof Deed.Counted counted) {
                StageKey key = new StageKey(counted.pest(), counted.lifeStage());
                boolean apart = cells.aside(event.id().device(), counted).isPresent();
                (apart ? aside : individuals).merge(key, counted.individuals(), Long::sum);
                byCell |= counted.filterCell().isPresent();
            } else if (event.deed() instanceof Deed.FilterDone filter) {
                done = true;
                fillZeros(individuals, filter.pests(), stagesOf);
            }
        }
        return new Tally(
                individuals,
                aside,
                cells.read(),
                cells.obscured(),
                cells.readTwice(),
                byCell,
                done);
    }

    /** {@return individuals of a stage; empty where it was not read} */
    public OptionalLong of(StageKey key) {
        Long number = individuals.get(key);
        return number == null ? OptionalLong.empty() : OptionalLong.of(number);
    }

    /** {@return whether anything was read at all} */
    public boolean hasCounts() {
        return done || byCell || !individuals.isEmpty();
    }

    static Map<EventId, SampleEvent> distinct(Collection<SampleEvent> events) {
        return events.stream()
                .collect(
                        Collectors.toMap(
                                SampleEvent::id, event -> event, (one, same) -> one, TreeMap::new));
    }

    /** Events taken back: voided ones, filters reopened, steps that a later one replaces. */
    static Set<EventId> slips(Collection<SampleEvent> events) {
        Set<EventId> voided = new HashSet<>();
        for (SampleEvent event : events) {
            if (event.deed() instanceof Deed.Voided slip) {
                voided.add(slip.slip());
            } else if (event.deed() instanceof Deed.Reopened reopened) {
                voided.add(reopened.done());
            }
        }
        Set<EventId> slips = new HashSet<>(voided);
        for (SampleEvent event : events) {
            // A correction that was itself taken back replaces nothing.
            if (event.deed() instanceof Deed.StepTaken step && !voided.contains(event.id())) {
                step.replaces().ifPresent(slips::add);
            }
        }
        return slips;
    }

    private static void fillZeros(
            Map<StageKey, Long> individuals,
            Set<String> pests,
            Map<String, List<String>> stagesOf) {
        for (String pest : pests) {
            for (String stage : Objects.requireNonNullElse(stagesOf.get(pest), List.<String>of())) {
                individuals.merge(new StageKey(pest, stage), 0L, Long::sum);
            }
        }
    }

    /** {@return whether an event is a step of this kind} */
    static boolean isStep(SampleEvent event, Step wanted) {
        return event.deed() instanceof Deed.StepTaken taken && taken.step() == wanted;
    }
}
