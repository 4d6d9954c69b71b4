package jarwise.stats.design;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * On which days can filters be read that are washed on a day?
 *
 * @param earliestDays days from the wash until a filter may be read, 0 or more
 * @param latestDays days from the wash until it must be read, no fewer
 * @param workDays days of the week on which somebody reads
 */
public record ReadingWindow(int earliestDays, int latestDays, Set<DayOfWeek> workDays) {

    /** Checks the days. */
    public ReadingWindow {
        Require.atLeast("earliestDays", earliestDays, 0);
        if (!(latestDays >= earliestDays && latestDays <= 3650)) {
            throw new InvalidInput(
                    "latestDays is %d; it must be %d to 3650.".formatted(latestDays, earliestDays));
        }
        workDays = Set.copyOf(workDays);
    }

    /**
     * The working days between the earliest and the latest day of reading.
     *
     * @param washed day of the wash
     * @return days in order; none if the window holds only days off
     */
    public List<LocalDate> workingDays(LocalDate washed) {
        return washed.plusDays(earliestDays)
                .datesUntil(washed.plusDays(latestDays + 1L))
                .filter(day -> workDays.contains(day.getDayOfWeek()))
                .toList();
    }

    /**
     * How many filters can be read in time.
     *
     * @param washed day of the wash
     * @param minutesPerDay minutes at the microscope on a working day, 0 or more
     * @param readMinutes minutes to read one filter, above 0
     * @return whole filters
     * @throws InvalidInput if a number is out of range
     */
    public long filtersInTime(LocalDate washed, double minutesPerDay, double readMinutes) {
        Require.notNegative("minutesPerDay", minutesPerDay);
        Require.positive("readMinutes", readMinutes);
        return workingDays(washed).size() * (long) Math.floor(minutesPerDay / readMinutes);
    }
}
