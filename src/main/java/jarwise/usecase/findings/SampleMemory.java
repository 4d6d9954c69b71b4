package jarwise.usecase.findings;

import jarwise.sample.SampleCode;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.store.TalliedSample;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Samples with their counts, kept in memory day by day. Every question first asks the event log
 * what has come since, and days of samples that were touched are read again: what is answered is
 * never older than the log.
 */
final class SampleMemory {

    /** About 200 MB; two years of the biggest nursery we know of. */
    private static final int MOST_SAMPLES = 100_000;

    /** After an import of more than this it is quicker to forget everything. */
    private static final int MOST_CHANGES = 2_000;

    private final SampleStore samples;
    private final EventStore events;
    private final Map<String, NavigableMap<LocalDate, SampleDay>> nurseries = new HashMap<>();
    private final Map<Known, LocalDate> dayOf = new HashMap<>();
    private long position = -1;

    private record Known(String nursery, SampleCode code) {}

    SampleMemory(SampleStore samples, EventStore events) {
        this.samples = samples;
        this.events = events;
    }

    /** {@return the position in the event log that the answers are as new as} */
    synchronized long position() {
        catchUp();
        return position;
    }

    /** {@return every day from one to another on which a sample was cut} */
    synchronized NavigableMap<LocalDate, SampleDay> days(
            String nursery, LocalDate from, LocalDate to) {
        if (from.isAfter(to)) {
            return new TreeMap<>();
        }
        catchUp();
        if (dayOf.size() > MOST_SAMPLES) {
            forgetAll();
        }
        NavigableMap<LocalDate, SampleDay> known =
                nurseries.computeIfAbsent(nursery, slug -> new TreeMap<>());
        readMissing(nursery, known, from, to);
        NavigableMap<LocalDate, SampleDay> days = new TreeMap<>(known.subMap(from, true, to, true));
        days.values().removeIf(SampleDay::isEmpty);
        return days;
    }

    private void readMissing(
            String nursery,
            NavigableMap<LocalDate, SampleDay> known,
            LocalDate from,
            LocalDate to) {
        LocalDate first = from;
        while (!first.isAfter(to)) {
            LocalDate last = first;
            while (!known.containsKey(last) && last.isBefore(to)) {
                last = last.plusDays(1);
            }
            if (!known.containsKey(first)) {
                LocalDate end = known.containsKey(last) ? last.minusDays(1) : last;
                read(nursery, known, first, end);
            }
            first = last.plusDays(1);
        }
    }

    private void read(
            String nursery,
            NavigableMap<LocalDate, SampleDay> known,
            LocalDate from,
            LocalDate to) {
        Map<LocalDate, List<TalliedSample>> byDay =
                samples.tallied(nursery, from, to).stream()
                        .collect(Collectors.groupingBy(SampleMemory::dayOf));
        from.datesUntil(to.plusDays(1))
                .forEach(
                        day -> {
                            List<TalliedSample> there = byDay.getOrDefault(day, List.of());
                            known.put(day, new SampleDay(nursery, day, there));
                            there.forEach(one -> dayOf.put(key(nursery, one), day));
                        });
    }

    private static LocalDate dayOf(TalliedSample tallied) {
        return tallied.sample().collectedOn().orElseThrow();
    }

    private static Known key(String nursery, TalliedSample tallied) {
        return new Known(nursery, tallied.sample().code());
    }

    private void catchUp() {
        long now = events.lastPosition();
        if (now != position && position >= 0) {
            List<EventStore.Changed> changed = events.changedAfter(position, MOST_CHANGES + 1);
            if (now < position || changed.size() > MOST_CHANGES) {
                forgetAll();
            }
            changed.forEach(this::forgetDays);
        }
        position = now;
    }

    /** The day it was known under, and the day it is at now. */
    private void forgetDays(EventStore.Changed changed) {
        NavigableMap<LocalDate, SampleDay> known =
                nurseries.getOrDefault(changed.nursery(), new TreeMap<>());
        LocalDate before = dayOf.remove(new Known(changed.nursery(), changed.sample()));
        if (before != null) {
            known.remove(before);
        }
        changed.day().ifPresent(known::remove);
    }

    private void forgetAll() {
        nurseries.clear();
        dayOf.clear();
    }
}
