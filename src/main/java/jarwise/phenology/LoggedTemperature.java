package jarwise.phenology;

import java.time.LocalDateTime;

/**
 * One reading of a log.
 *
 * @param at when, as the log's clock shows it
 * @param celsius temperature in °C
 */
public record LoggedTemperature(LocalDateTime at, double celsius) {}
