package jarwise.wire.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * Writes a calendar by RFC 5545: lines of at most 75 octets that end in CRLF, times in UTC. Events
 * only: phones pass over tasks in calendars that they subscribe to.
 *
 * <p>The alarm goes off two hours before an entry ends: before filters dry out, and before people
 * may enter again.
 */
public final class CalendarFile {

    private static final int LINE_OCTETS = 75;
    private static final Duration ALARM_BEFORE_END = Duration.ofHours(2);
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT)
                    .withZone(ZoneOffset.UTC);

    private final StringBuilder out = new StringBuilder(4096);

    private CalendarFile() {}

    /**
     * {@return the file's text}
     *
     * @param name of the calendar, as a phone lists it
     * @param language ISO 639-1 code of its texts
     * @param entries in the order in which they are written
     */
    public static String write(String name, String language, List<CalendarEntry> entries) {
        CalendarFile file = new CalendarFile();
        file.line("BEGIN:VCALENDAR");
        file.line("VERSION:2.0");
        file.line("PRODID:-//Jarwise//Jarwise//" + language.toUpperCase(Locale.ROOT));
        file.line("CALSCALE:GREGORIAN");
        file.line("METHOD:PUBLISH");
        file.text("X-WR-CALNAME", name);
        file.line("REFRESH-INTERVAL;VALUE=DURATION:PT1H");
        file.line("X-PUBLISHED-TTL:PT1H");
        entries.forEach(file::entry);
        file.line("END:VCALENDAR");
        return file.out.toString();
    }

    private void entry(CalendarEntry entry) {
        boolean cancelled = entry.version().cancelled();
        line("BEGIN:VEVENT");
        text("UID", entry.uid());
        line("DTSTAMP:" + utc(entry.version().changedAt()));
        line("LAST-MODIFIED:" + utc(entry.version().changedAt()));
        line("SEQUENCE:" + entry.version().sequence());
        line("STATUS:" + (cancelled ? "CANCELLED" : "CONFIRMED"));
        line("DTSTART:" + utc(entry.times().start()));
        line("DTEND:" + utc(entry.times().end()));
        text("SUMMARY", entry.text().summary());
        text("DESCRIPTION", entry.text().description());
        text("LOCATION", entry.text().place());
        text("CATEGORIES", entry.text().category());
        line("TRANSP:TRANSPARENT");
        if (!cancelled) {
            alarm(entry.text().summary());
        }
        line("END:VEVENT");
    }

    private void alarm(String says) {
        line("BEGIN:VALARM");
        line("ACTION:DISPLAY");
        text("DESCRIPTION", says);
        line("TRIGGER;RELATED=END:-" + ALARM_BEFORE_END);
        line("END:VALARM");
    }

    private static String utc(Instant at) {
        return UTC.format(at);
    }

    private void text(String name, String value) {
        line(name + ":" + escaped(value));
    }

    /** RFC 5545, 3.3.11. Other control characters may not stand in a text at all. */
    private static String escaped(String value) {
        return value.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r\n", "\n")
                .replace("\n", "\\n")
                .replaceAll("\\p{Cntrl}", " ");
    }

    /** Folds by octets, between characters: a phone may join the bytes before it reads them. */
    private void line(String whole) {
        int octets = 0;
        for (int at = 0; at < whole.length(); ) {
            int character = whole.codePointAt(at);
            String one = Character.toString(character);
            int length = one.getBytes(StandardCharsets.UTF_8).length;
            if (octets + length > LINE_OCTETS) {
                out.append("\r\n ");
                octets = 1;
            }
            out.append(one);
            octets += length;
            at += one.length();
        }
        out.append("\r\n");
    }
}
