package jarwise.tally;

import jarwise.sample.Step;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Counts of one sample: the fold of its events. Order and repeats make no difference.
 *
 * @param individuals what was counted, zeros included; a stage that is not here was not read
 * @param cellsRead filter cells read to their end, where it was counted cell by cell
 * @param cellsObscured filter cells that could not be read, likewise
 * @param byCell whether it was counted cell by cell, so that a filter not called done is not read
 * @param done whether the filter was called done
 */
public record Tally(
        SortedMap<StageKey, Long> individuals,
        int cellsRead,
        int cellsObscured,
        boolean byCell,
        boolean done) {

    /**
     * Folds events into counts.
     *
     * @param events of one sample, in any order, repeats allowed
     * @param stagesOf life stages of each pest, by pest code: a filter that is done has zeros there
     */
    public static Tally of(Collection<SampleEvent> events, Map<String, List<String>> stagesOf) {
        Map<EventId, SampleEvent> distinct = distinct(events);
        Set<EventId> slips = slips(distinct.values());
        TreeMap<StageKey, Long> individuals = new TreeMap<>();
        Set<String> cellsRead = new HashSet<>();
        Set<String> cellsObscured = new HashSet<>();
        boolean byCell = false;
        boolean done = false;
        for (SampleEvent event : distinct.values()) {
            if (slips.contains(event.id())) {
                continue;
            }
            if (event.deed() instanceof Deed.Counted counted) {
                StageKey key = new StageKey(counted.pest(), counted.lifeStage());
                individuals.merge(key, counted.individuals(), Long::sum);
                byCell |= counted.filterCell().isPresent();
            } else if (event.deed() instanceof Deed.CellDone cell) {
                (cell.obscured() ? cellsObscured : cellsRead).add(cell.filterCell());
                byCell = true;
            } else if (event.deed() instanceof Deed.FilterDone filter) {
                done = true;
                fillZeros(individuals, filter.pests(), stagesOf);
            }
        }
        cellsRead.removeAll(cellsObscured);
        return new Tally(individuals, cellsRead.size(), cellsObscured.size(), byCell, done);
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
