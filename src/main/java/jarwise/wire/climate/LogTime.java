package jarwise.wire.climate;

import jarwise.wire.sheet.CellReader;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A time as somebody wrote it.
 *
 * @param local what the clock showed
 * @param offset offset from UTC, if it was written
 */
public record LogTime(LocalDateTime local, Optional<ZoneOffset> offset) {

    private static final Pattern FORM =
            Pattern.compile(
                    "([0-9./-]+)(?:[T ]+([0-9]{1,2}):([0-9]{2})(?::([0-9]{2})(?:[.,][0-9]{1,9})?)?"
                            + "(?: ?([AaPp])[Mm])?(?: ?(Z|[+-][0-9]{2}:?(?:[0-9]{2})?))?)?");

    /** {@return the time that a text says; a day alone is its beginning; empty if it says none} */
    public static Optional<LogTime> read(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            return Optional.empty();
        }
        Optional<LocalDate> day = CellReader.date(form.group(1)).value();
        try {
            Optional<ZoneOffset> offset = Optional.ofNullable(form.group(6)).map(ZoneOffset::of);
            return day.map(date -> new LogTime(date.atTime(time(form)), offset));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static LocalTime time(Matcher form) {
        if (form.group(2) == null) {
            return LocalTime.MIDNIGHT;
        }
        int hour = Integer.parseInt(form.group(2));
        if (form.group(5) != null) {
            if (hour < 1 || hour > 12) {
                throw new DateTimeException("no hour of a clock with two halves");
            }
            hour = hour % 12 + (form.group(5).equalsIgnoreCase("p") ? 12 : 0);
        }
        int second = form.group(4) == null ? 0 : Integer.parseInt(form.group(4));
        return LocalTime.of(hour, Integer.parseInt(form.group(3)), second);
    }

    /** {@return what a clock with this offset showed at that moment; as it stands without one} */
    public LocalDateTime at(Optional<ZoneOffset> clock) {
        return offset.isPresent() && clock.isPresent()
                ? local.atOffset(offset.get()).withOffsetSameInstant(clock.get()).toLocalDateTime()
                : local;
    }
}
