package jarwise.usecase.calendar;

import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import jarwise.sample.CollectedSample;
import jarwise.treatment.Application;
import jarwise.usecase.findings.ReadingWindows;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.Today.Due;
import jarwise.wire.calendar.CalendarEntry.Text;
import jarwise.wire.calendar.CalendarEntry.Times;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a site's calendar has to say at a moment, in the site's language. Places and times only: a
 * phone's calendar may keep it where others read it.
 *
 * @param words of the site's language
 * @param now in the site's time zone
 */
record Deadlines(Words words, ZonedDateTime now) {

    /**
     * One deadline.
     *
     * @param about what it is about, the same whenever it is asked
     * @param times from when to when
     * @param text what it says
     */
    record Deadline(String about, Times times, Text text) {}

    /** {@return one for the filters of a bench and day, since they are read together} */
    List<Deadline> reading(List<CollectedSample> waiting, ReadingWindows windows) {
        Map<String, List<CollectedSample>> together = new TreeMap<>();
        waiting.stream()
                .filter(ReadingWindows::hasOne)
                .forEach(
                        filter ->
                                together.computeIfAbsent(about(filter), key -> new ArrayList<>())
                                        .add(filter));
        return together.entrySet().stream()
                .map(one -> reading(one.getKey(), one.getValue(), windows.of(one.getValue())))
                .toList();
    }

    private String about(CollectedSample filter) {
        String day = filter.collectedOn().orElse(now.toLocalDate()).toString();
        return "reading " + day + " " + SiteCounts.standOf(filter).bench().orElse("");
    }

    private Deadline reading(String about, List<CollectedSample> filters, Due.Window window) {
        String place = SiteCounts.standOf(filters.get(0)).bench().orElse("");
        String counted = new Figures(words).counted("today.filters", filters.size());
        String summary =
                place.isEmpty()
                        ? words.say("calendar.read.anywhere", counted)
                        : words.say("calendar.read", counted, place);
        // A protocol may ask for more freezer time than a filter lasts: then it is late at once.
        Instant start = earlier(window.earliest(), window.readBy());
        return new Deadline(
                about,
                new Times(start, window.readBy()),
                new Text(summary, said("calendar.read.text"), place, "READING"));
    }

    /** {@return one for each application whose re-entry interval runs, or is not known} */
    List<Deadline> noEntry(List<Application> applications) {
        return applications.stream()
                .filter(application -> !application.mayBeEntered(now.toInstant()))
                .map(this::noEntry)
                .toList();
    }

    private Deadline noEntry(Application application) {
        String place =
                application.benches().isEmpty()
                        ? application.house()
                        : String.join(", ", application.benches());
        Optional<Instant> end = application.reentryEnds();
        Instant start = application.ended().orElse(application.started());
        String key = end.isPresent() ? "calendar.no-entry" : "calendar.no-entry.open";
        return new Deadline(
                "no entry " + application.id(),
                new Times(start, end.orElseGet(this::endOfDay)),
                new Text(words.say(key, place), said(key + ".text"), place, "REI"));
    }

    /** While the end is not known nobody may enter: the entry grows day by day. */
    private Instant endOfDay() {
        return now.toLocalDate().plusDays(1).atStartOfDay(now.getZone()).toInstant();
    }

    private String said(String key) {
        return words.say(key) + "\n" + words.say("caution.label");
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
