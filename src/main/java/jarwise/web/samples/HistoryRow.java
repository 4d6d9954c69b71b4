package jarwise.web.samples;

import jarwise.render.words.Figures;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.usecase.samples.IdentifyUnsure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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
        Set<String> identified =
                history.stream()
                        .filter(HistoryRow::identifies)
                        .map(HistoryRow::batch)
                        .collect(Collectors.toSet());
        List<HistoryRow> rows = new ArrayList<>();
        List<SampleEvent> run = new ArrayList<>();
        String kind = "";
        for (SampleEvent event : newestFirst) {
            String own = identified.contains(batch(event)) ? batch(event) : kind(event, byId);
            if (!own.equals(kind) || !fits(run, event)) {
                close(rows, run);
            }
            kind = own;
            if (own.isEmpty()) {
                rows.add(new HistoryRow(List.of(event)));
            } else {
                run.add(event);
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

    /** What is done at once by one form of the desk. */
    private static String batch(SampleEvent event) {
        return event.id().device() + " " + event.at();
    }

    private static boolean identifies(SampleEvent event) {
        return event.deed() instanceof Deed.Voided voided
                && voided.reason().equals(IdentifyUnsure.REASON);
    }

    private static String kind(SampleEvent event, Map<EventId, SampleEvent> byId) {
        return cell(event, byId).isPresent() ? "cell" : "";
    }

    private static boolean fits(List<SampleEvent> run, SampleEvent event) {
        if (run.isEmpty()) {
            return true;
        }
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
        return events.stream().anyMatch(HistoryRow::identifies)
                ? words.frame().say("deed.identified", named(words))
                : cells(words);
    }

    /** What unsure individuals turned out to be, the earliest first. */
    private String named(DeedWords words) {
        List<SampleEvent> earliestFirst = new ArrayList<>(events);
        Collections.reverse(earliestFirst);
        return earliestFirst.stream()
                .filter(
                        event ->
                                event.deed() instanceof Deed.Counted counted
                                        && !counted.pest().equals(IdentifyUnsure.UNSURE))
                .map(words::say)
                .collect(Collectors.joining("; "));
    }

    private String cells(DeedWords words) {
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
