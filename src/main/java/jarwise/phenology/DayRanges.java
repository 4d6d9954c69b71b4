package jarwise.phenology;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Each day's lowest and highest reading, of days that were read all day long. */
final class DayRanges {

    private DayRanges() {}

    /** {@return the days of these readings that have no hole of more than 6 hours} */
    static DailyLog of(List<LoggedTemperature> readings) {
        Map<LocalDate, List<LoggedTemperature>> byDay = new TreeMap<>();
        for (LoggedTemperature reading : readings) {
            byDay.computeIfAbsent(reading.at().toLocalDate(), day -> new ArrayList<>())
                    .add(reading);
        }
        List<DailyRange> days = new ArrayList<>();
        byDay.forEach(
                (day, read) -> {
                    if (isWhole(day, read)) {
                        days.add(range(day, read));
                    }
                });
        return new DailyLog(days);
    }

    private static boolean isWhole(LocalDate day, List<LoggedTemperature> read) {
        LocalDateTime before = day.atStartOfDay();
        for (LoggedTemperature reading : read) {
            if (isHole(before, reading.at())) {
                return false;
            }
            before = reading.at();
        }
        return !isHole(before, day.plusDays(1).atStartOfDay());
    }

    private static boolean isHole(LocalDateTime from, LocalDateTime to) {
        return Duration.between(from, to).compareTo(LogGap.LONGEST_FILLED) > 0;
    }

    private static DailyRange range(LocalDate day, List<LoggedTemperature> read) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (LoggedTemperature reading : read) {
            lowest = Math.min(lowest, reading.celsius());
            highest = Math.max(highest, reading.celsius());
        }
        return new DailyRange(day, lowest, highest);
    }
}
