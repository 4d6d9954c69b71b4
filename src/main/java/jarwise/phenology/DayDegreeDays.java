package jarwise.phenology;

import java.time.LocalDate;

/**
 * Degree-days of one day.
 *
 * @param day the day
 * @param degreeDays in °C·d
 * @param hours hours of the day for which the log tells the temperature, up to 24
 */
public record DayDegreeDays(LocalDate day, double degreeDays, double hours) {}
