package jarwise.usecase.planning;

import jarwise.sample.ProtocolVersion;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Working time between the first and the last hour in which filters may be read. A working day is
 * taken from 7 to 17 o'clock: common practice, no source.
 *
 * @param protocol freezing and reading times
 * @param workDays days of the week on which somebody reads
 * @param zone clocks of the site
 */
record ReadingHours(ProtocolVersion protocol, Set<DayOfWeek> workDays, ZoneId zone) {

    private static final LocalTime STARTS = LocalTime.of(7, 0);
    private static final LocalTime ENDS = LocalTime.of(17, 0);
    private static final int DAYS_AHEAD = 14;

    /** {@return days written MO,TU,…; every day where the site has chosen none} */
    static Set<DayOfWeek> days(Optional<String> written) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            String brief = day.name().substring(0, 2);
            if (written.map(text -> text.toUpperCase(Locale.ROOT).contains(brief)).orElse(true)) {
                days.add(day);
            }
        }
        return days;
    }

    /** {@return when filters of a wash may be read} */
    Instant from(ZonedDateTime washed) {
        return washed.toInstant().plus(protocol.freeze());
    }

    /** {@return by when they should be} */
    Instant to(ZonedDateTime washed) {
        return washed.toInstant().plus(protocol.readWithin());
    }

    /** {@return working minutes in between} */
    long minutes(ZonedDateTime washed) {
        Instant from = from(washed);
        Instant to = to(washed);
        long minutes = 0;
        LocalDate last = to.atZone(zone).toLocalDate();
        for (LocalDate day = from.atZone(zone).toLocalDate();
                !day.isAfter(last);
                day = day.plusDays(1)) {
            if (workDays.contains(day.getDayOfWeek())) {
                Instant opens = later(day.atTime(STARTS).atZone(zone).toInstant(), from);
                Instant closes = earlier(day.atTime(ENDS).atZone(zone).toInstant(), to);
                minutes += Math.max(0, Duration.between(opens, closes).toMinutes());
            }
        }
        return minutes;
    }

    /** {@return the next working day after this one on which a wash can be read in time} */
    Optional<LocalDate> nextThatFits(ZonedDateTime washed, long minutesNeeded) {
        for (int days = 1; days <= DAYS_AHEAD; days++) {
            ZonedDateTime other = washed.plusDays(days);
            if (workDays.contains(other.getDayOfWeek()) && minutes(other) >= minutesNeeded) {
                return Optional.of(other.toLocalDate());
            }
        }
        return Optional.empty();
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }
}
