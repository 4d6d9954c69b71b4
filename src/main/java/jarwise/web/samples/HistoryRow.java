package jarwise.web.samples;

import jarwise.render.words.Figures;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One row of the history: one event, or a run of what one person recorded cell by cell, which would
 * otherwise fill pages and is shown when it is asked for.
 *
 * @param events in the order of the page, at least one
 */
public record HistoryRow(List<SampleEvent> events) {

    public HistoryRow {
        events = List.copyOf(events);
    }

    /**
     * Puts events into rows.
     *
     * @param history everything that happened, the oldest first
     * @return the rows, the latest first
     */
    static List<HistoryRow> of(List<SampleEvent> history) {
        Map<EventId, SampleEvent> byId = new HashMap<>();
        history.forEach(event -> byId.put(event.id(), event));
        List<SampleEvent> newestFirst = new ArrayList<>(history);
        Collections.reverse(newestFirst);
        List<HistoryRow> rows = new ArrayList<>();
        List<SampleEvent> run = new ArrayList<>();
        for (SampleEvent event : newestFirst) {
            boolean goesOn = cell(event, byId).isPresent() && (run.isEmpty() || fits(run, event));
            if (!goesOn) {
                close(rows, run);
            }
            if (cell(event, byId).isPresent()) {
                run.add(event);
            } else {
                rows.add(new HistoryRow(List.of(event)));
            }
        }
        close(rows, run);
        return rows;
    }

    private static void close(List<HistoryRow> rows, List<SampleEvent> run) {
        if (!run.isEmpty()) {
            rows.add(new HistoryRow(run));
            run.clear();
        }
    }

    private static boolean fits(List<SampleEvent> run, SampleEvent event) {
        SampleEvent last = run.get(0);
        return last.person().equals(event.person())
                && last.id().device().equals(event.id().device());
    }

    /** The cell an event is about; a slip taken back is about the cell of the slip. */
    private static Optional<String> cell(SampleEvent event, Map<EventId, SampleEvent> byId) {
        if (event.deed() instanceof Deed.Voided voided) {
            return Optional.ofNullable(byId.get(voided.slip())).flatMap(HistoryRow::ownCell);
        }
        return ownCell(event);
    }

    private static Optional<String> ownCell(SampleEvent event) {
        if (event.deed() instanceof Deed.Counted counted) {
            return counted.filterCell();
        }
        return event.deed() instanceof Deed.CellDone done
                ? Optional.of(done.filterCell())
                : Optional.empty();
    }

    /** {@return whether this is a run that is folded into one line} */
    public boolean folded() {
        return events.size() > 1;
    }

    /** {@return the latest event of the row} */
    public SampleEvent latest() {
        return events.get(0);
    }

    /** {@return the earliest event of the row} */
    public SampleEvent earliest() {
        return events.get(events.size() - 1);
    }

    /** {@return the run in one line, such as "read cell by cell: 24 cells, 31 entries"} */
    public String summary(DeedWords words) {
        Figures figures = new Figures(words.frame().words());
        long cells =
                events.stream()
                        .map(HistoryRow::ownCell)
                        .flatMap(Optional::stream)
                        .distinct()
                        .count();
        return words.frame()
                .say(
                        "deed.cells",
                        cells,
                        figures.whole(cells),
                        events.size(),
                        figures.whole(events.size()));
    }
}
