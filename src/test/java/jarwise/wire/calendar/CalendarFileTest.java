package jarwise.wire.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VAlarm;
import biweekly.component.VEvent;
import biweekly.parameter.Related;
import jarwise.Seeds;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The file is read back by a reader that others wrote, and held against RFC 5545. */
class CalendarFileTest {

    private static final Instant START = Instant.parse("2026-05-04T09:00:00Z");
    private static final Instant END = Instant.parse("2026-05-07T07:40:00Z");
    private static final Instant CHANGED = Instant.parse("2026-05-04T10:11:12.5Z");

    static CalendarEntry entry(String summary, String description, boolean cancelled) {
        return new CalendarEntry(
                "7f0c",
                new CalendarEntry.Times(START, END),
                new CalendarEntry.Text(summary, description, "P1-B4", "READING"),
                new CalendarEntry.Version(3, CHANGED, cancelled));
    }

    private static String written(CalendarEntry... entries) {
        return CalendarFile.write("Jarwise deadlines", "en", List.of(entries));
    }

    private static VEvent read(String file) {
        List<ICalendar> calendars = Biweekly.parse(file).all();
        assertThat(calendars).hasSize(1);
        assertThat(calendars.get(0).validate(ICalVersion.V2_0).isEmpty())
                .as(calendars.get(0).validate(ICalVersion.V2_0).toString())
                .isTrue();
        return calendars.get(0).getEvents().get(0);
    }

    @Test
    void anotherReaderFindsWhatWasWritten() {
        VEvent event = read(written(entry("Read 4 filters, P1-B4", "One.\nTwo; three\\.", false)));

        assertThat(event.getUid().getValue()).isEqualTo("7f0c");
        assertThat(event.getSequence().getValue()).isEqualTo(3);
        assertThat(event.getDateStart().getValue().toInstant()).isEqualTo(START);
        assertThat(event.getDateEnd().getValue().toInstant()).isEqualTo(END);
        assertThat(event.getDateTimeStamp().getValue().toInstant())
                .isEqualTo(Instant.parse("2026-05-04T10:11:12Z"));
        assertThat(event.getSummary().getValue()).isEqualTo("Read 4 filters, P1-B4");
        assertThat(event.getDescription().getValue()).isEqualTo("One.\nTwo; three\\.");
        assertThat(event.getLocation().getValue()).isEqualTo("P1-B4");
        assertThat(event.getStatus().isConfirmed()).isTrue();
    }

    @Test
    void theAlarmGoesOffTwoHoursBeforeTheEnd() {
        VAlarm alarm = read(written(entry("Read", "Text.", false))).getAlarms().get(0);

        assertThat(alarm.getTrigger().getRelated()).isEqualTo(Related.END);
        assertThat(alarm.getTrigger().getDuration().toMillis()).isEqualTo(-2 * 3_600_000L);
        assertThat(alarm.getAction().isDisplay()).isTrue();
    }

    @Test
    void whatIsCancelledSaysSoAndRingsNoMore() {
        VEvent event = read(written(entry("Read", "Text.", true)));

        assertThat(event.getStatus().isCancelled()).isTrue();
        assertThat(event.getAlarms()).isEmpty();
    }

    /** RFC 5545, 3.1: lines end in CRLF and are no longer than 75 octets without it. */
    private static void isFolded(String file) {
        assertThat(file.replace("\r\n", "")).doesNotContain("\r", "\n");
        for (String line : file.lines().toList()) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length)
                    .as(line)
                    .isLessThanOrEqualTo(75);
            assertThat(new String(line.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8))
                    .as("no character is cut")
                    .doesNotContain("\uFFFD");
        }
    }

    /** The long description of RFC 5545, 3.1, folds to the same text however wide its letters. */
    @Test
    void longLinesAreFoldedBetweenCharacters() {
        String wide =
                "This is a long description that exists on a long line. "
                        + "é".repeat(80)
                        + "€".repeat(40)
                        + "\uD83C\uDF3F".repeat(40);
        String file = written(entry("Read", wide, false));

        isFolded(file);
        assertThat(read(file).getDescription().getValue()).isEqualTo(wide);
    }

    static LongStream seeds() {
        return Seeds.some();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void anyTextComesBackAsItWas(long seed) {
        Random random = new Random(seed);
        String symbols = "ab ,;:\\\"'\n()=éñ€\uD83C\uDF3F-/<>&";
        List<String> characters = new ArrayList<>();
        symbols.codePoints().forEach(one -> characters.add(Character.toString(one)));
        StringBuilder text = new StringBuilder("x");
        int length = random.nextInt(300);
        for (int i = 0; i < length; i++) {
            text.append(characters.get(random.nextInt(characters.size())));
        }
        text.append('x');
        String file = written(entry("Read", text.toString(), false));

        isFolded(file);
        assertThat(read(file).getDescription().getValue()).isEqualTo(text.toString());
    }

    @Test
    void anEmptyCalendarIsACalendar() {
        assertThat(written())
                .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:")
                .endsWith("\r\nEND:VCALENDAR\r\n");
    }
}
