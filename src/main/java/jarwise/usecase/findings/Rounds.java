package jarwise.usecase.findings;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * Which round a day of cutting belongs to: the day itself, or its week where there are more days
 * than a picture has room for.
 *
 * @param days the rounds in order
 * @param weeks whether days are put together by week
 */
public record Rounds(List<LocalDate> days, boolean weeks) {

    private static final int MOST = 12;

    public Rounds {
        days = List.copyOf(days);
    }

    /** {@return the rounds of these days of cutting} */
    public static Rounds of(Collection<LocalDate> cut) {
        TreeSet<LocalDate> days = new TreeSet<>(cut);
        if (days.size() <= MOST) {
            return new Rounds(List.copyOf(days), false);
        }
        TreeSet<LocalDate> mondays = new TreeSet<>();
        days.forEach(day -> mondays.add(monday(day)));
        return new Rounds(List.copyOf(mondays), true);
    }

    /** {@return the round of a day} */
    public LocalDate of(LocalDate day) {
        return weeks ? monday(day) : day;
    }

    private static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
