package jarwise.usecase.calendar;

import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.sample.SampleState;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.SampleStore;
import jarwise.store.work.CalendarStore;
import jarwise.store.work.TreatmentStore;
import jarwise.usecase.calendar.Deadlines.Deadline;
import jarwise.usecase.findings.ReadingWindows;
import jarwise.usecase.findings.SiteCounts;
import jarwise.wire.calendar.CalendarEntry;
import jarwise.wire.calendar.CalendarEntry.Version;
import jarwise.wire.calendar.CalendarFile;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * Tells calendars when filters are to be read and where nobody may enter. What was told before is
 * kept, so that a change comes as a new version of the same entry, and what no longer holds is
 * cancelled instead of left out: a calendar that took a file in once would keep it.
 *
 * @param database holds samples, ledger and what was told
 * @param counts what the site has chosen
 */
public record TellCalendar(Database database, SiteCounts counts) {

    private static final Duration LOOKED_BACK = Duration.ofDays(30);
    private static final Duration KEPT = Duration.ofDays(60);
    private static final Set<SampleState> WAITING =
            EnumSet.of(
                    SampleState.CUT, SampleState.WASHED, SampleState.FROZEN, SampleState.READING);

    /** {@return the calendar of a site as an iCalendar file; the same until something changes} */
    public String run(Nursery nursery, Instant instant) {
        ZonedDateTime now = instant.atZone(nursery.zone());
        Language language = Language.of(nursery.language()).orElse(Language.ENGLISH);
        Words words = Words.of(language);
        List<Deadline> deadlines = deadlines(nursery, words, now);
        List<CalendarEntry> told =
                database.inOneTransaction(() -> tell(nursery.slug(), deadlines, instant));
        return CalendarFile.write(words.say("calendar.name"), language.code(), told);
    }

    private List<Deadline> deadlines(Nursery nursery, Words words, ZonedDateTime now) {
        String slug = nursery.slug();
        Deadlines deadlines = new Deadlines(words, now);
        List<Deadline> all =
                new ArrayList<>(
                        deadlines.reading(
                                new SampleStore(database).inStates(slug, WAITING),
                                new ReadingWindows(counts.rules(slug), now)));
        Instant instant = now.toInstant();
        all.addAll(
                deadlines.noEntry(
                        new TreatmentStore(database)
                                .applications(slug, instant.minus(LOOKED_BACK), instant)));
        return all;
    }

    private List<CalendarEntry> tell(String nursery, List<Deadline> deadlines, Instant now) {
        CalendarStore store = new CalendarStore(database);
        store.forget(nursery, now.minus(KEPT));
        Map<String, CalendarEntry> told = store.entries(nursery);
        Set<String> holds = new HashSet<>();
        for (Deadline deadline : deadlines) {
            holds.add(deadline.about());
            CalendarEntry before = told.get(deadline.about());
            CalendarEntry fresh =
                    before == null ? first(deadline, now) : next(before, deadline, now);
            if (!fresh.equals(before)) {
                store.put(nursery, deadline.about(), fresh);
                told.put(deadline.about(), fresh);
            }
        }
        told.replaceAll(
                (about, entry) -> {
                    if (holds.contains(about) || !mayBeCancelled(entry, now)) {
                        return entry;
                    }
                    CalendarEntry cancelled = cancelled(entry, now);
                    store.put(nursery, about, cancelled);
                    return cancelled;
                });
        return List.copyOf(told.values());
    }

    /** What has ended held until then. */
    private static boolean mayBeCancelled(CalendarEntry entry, Instant now) {
        return !entry.version().cancelled() && entry.times().end().isAfter(now);
    }

    private static CalendarEntry first(Deadline deadline, Instant now) {
        return new CalendarEntry(
                UUID.randomUUID().toString(),
                deadline.times(),
                deadline.text(),
                new Version(0, now, false));
    }

    private static CalendarEntry next(CalendarEntry before, Deadline deadline, Instant now) {
        boolean same =
                before.times().equals(deadline.times())
                        && before.text().equals(deadline.text())
                        && !before.version().cancelled();
        return same
                ? before
                : new CalendarEntry(
                        before.uid(),
                        deadline.times(),
                        deadline.text(),
                        new Version(before.version().sequence() + 1, now, false));
    }

    private static CalendarEntry cancelled(CalendarEntry entry, Instant now) {
        return new CalendarEntry(
                entry.uid(),
                entry.times(),
                entry.text(),
                new Version(entry.version().sequence() + 1, now, true));
    }
}
