package jarwise.phenology;

import java.time.LocalDate;

/**
 * Lowest and highest temperature of a day.
 *
 * @param day the day
 * @param lowest in °C
 * @param highest in °C
 */
public record DailyRange(LocalDate day, double lowest, double highest) {}
