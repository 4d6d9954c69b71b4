package jarwise.phenology;

import jarwise.stats.thermal.TemperatureLimits;
import java.time.LocalDateTime;

/**
 * From one reading to the next. What drives development is a line between its values at the two
 * ends (trapezoid), so the sum does not change when a day ends in between.
 *
 * @param from first reading's time
 * @param to second reading's time, later
 * @param first temperature at the beginning in °C
 * @param last temperature at the end in °C
 */
record LineSpan(LocalDateTime from, LocalDateTime to, double first, double last)
        implements TemperatureSpan {

    /** {@return a stretch of constant temperature} */
    static LineSpan constant(LocalDateTime from, LocalDateTime to, double celsius) {
        return new LineSpan(from, to, celsius, celsius);
    }

    @Override
    public double mean() {
        return (first + last) / 2;
    }

    @Override
    public double degreeDays(TemperatureLimits limits, LocalDateTime start, LocalDateTime end) {
        double beginning = limits.degreesAbove(first);
        double slope = limits.degreesAbove(last) - beginning;
        double middle = (share(start) + share(end)) / 2;
        return TemperatureSpan.days(start, end) * (beginning + slope * middle);
    }

    @Override
    public LineSpan warmedBy(double celsius) {
        return new LineSpan(from, to, first + celsius, last + celsius);
    }
}
