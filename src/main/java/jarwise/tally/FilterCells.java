package jarwise.tally;

import jarwise.stats.filter.CellWalk;
import jarwise.stats.filter.FilterCell;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * The cells of a filter that were looked at, and which presses count in them.
 *
 * @param byName cell to what is known of it
 * @param usable cells of completed passes, once the filter is finished and its walk is known
 */
record FilterCells(Map<String, Cell> byName, Optional<Set<String>> usable) {

    /**
     * One cell.
     *
     * @param read whether somebody read it to its end
     * @param obscured whether somebody could not read it
     * @param doers devices that said so, with the smallest identity under which each did
     */
    record Cell(boolean read, boolean obscured, SortedMap<String, EventId> doers) {

        private static final Cell UNSEEN = new Cell(false, false, new TreeMap<>());

        private Cell and(EventId id, Deed.CellDone done) {
            SortedMap<String, EventId> all = new TreeMap<>(doers);
            all.merge(id.device(), id, (one, other) -> one.compareTo(other) < 0 ? one : other);
            return new Cell(read || !done.obscured(), obscured || done.obscured(), all);
        }

        boolean isReadTwice() {
            return doers.size() > 1;
        }

        /** What a second device counted in a cell that another had read is no second insect. */
        private boolean isOfSecond(String device) {
            return doers.containsKey(device) && !doers.firstKey().equals(device);
        }
    }

    /**
     * Folds what was said of cells.
     *
     * @param standing events that were not taken back
     * @param walk the passes, where they are known
     */
    static FilterCells of(Collection<SampleEvent> standing, Optional<CellWalk> walk) {
        Map<String, Cell> cells = new HashMap<>();
        boolean finished = false;
        for (SampleEvent event : standing) {
            if (event.deed() instanceof Deed.CellDone done) {
                Cell before = cells.getOrDefault(done.filterCell(), Cell.UNSEEN);
                cells.put(done.filterCell(), before.and(event.id(), done));
            }
            finished |= event.deed() instanceof Deed.FilterDone;
        }
        Optional<Set<String>> usable =
                finished ? walk.map(known -> completed(known, cells.keySet())) : Optional.empty();
        return new FilterCells(cells, usable);
    }

    private static Set<String> completed(CellWalk walk, Set<String> seen) {
        Set<String> usable = new HashSet<>();
        for (List<FilterCell> pass : walk.passes()) {
            List<String> names = pass.stream().map(FilterCell::name).toList();
            if (seen.containsAll(names)) {
                usable.addAll(names);
            }
        }
        return usable;
    }

    /**
     * Is a press kept, but in no estimate? So are those in cells that cannot be read, in passes
     * that were broken off, and of a device that read a cell again.
     *
     * @return why it is set aside; empty for a press in use
     */
    Optional<AsideReason> aside(String device, Deed.Counted counted) {
        if (counted.filterCell().isEmpty()) {
            return Optional.empty();
        }
        String name = counted.filterCell().get();
        Cell cell = byName.getOrDefault(name, Cell.UNSEEN);
        if (cell.obscured()) {
            return Optional.of(AsideReason.OBSCURED);
        }
        if (cell.isOfSecond(device)) {
            return Optional.of(AsideReason.READ_TWICE);
        }
        return isUsable(name) ? Optional.empty() : Optional.of(AsideReason.BROKEN_OFF);
    }

    private boolean isUsable(String name) {
        return usable.map(cells -> cells.contains(name)).orElse(true);
    }

    /** {@return cells read to their end; those of completed passes once the filter is finished} */
    int read() {
        return count(cell -> cell.read() && !cell.obscured());
    }

    /** {@return cells that could not be read, likewise} */
    int obscured() {
        return count(Cell::obscured);
    }

    /** {@return cells that two devices called done} */
    int readTwice() {
        return (int) byName.values().stream().filter(Cell::isReadTwice).count();
    }

    private int count(Predicate<Cell> wanted) {
        return (int)
                byName.entrySet().stream()
                        .filter(entry -> isUsable(entry.getKey()))
                        .filter(entry -> wanted.test(entry.getValue()))
                        .count();
    }
}
