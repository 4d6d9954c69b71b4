package jarwise.usecase.climate;

import jarwise.base.InvalidInput;
import jarwise.phenology.DayDegreeDays;
import jarwise.phenology.DegreeDayMethod;
import jarwise.phenology.TemperatureCourse;
import jarwise.phenology.TemperatureLog;
import jarwise.phenology.TemperatureUnit;
import jarwise.stats.thermal.TemperatureLimits;
import jarwise.wire.climate.ReadClimate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Adds up the heat that a log tells of.
 *
 * @param request the log
 * @param lower lower limit in the log's unit
 * @param upper upper limit in the log's unit, if any
 * @param method how the log becomes degree-days; the one that suits it if empty
 */
public record SumDegreeDays(
        LogRequest request, double lower, OptionalDouble upper, Optional<DegreeDayMethod> method) {

    /**
     * The heat of a log.
     *
     * @param climate the log as it was read
     * @param method how it became degree-days
     * @param course the temperature as it went
     * @param days each day of which something is known
     * @param total their sum in °C·d
     * @param daysLeftOut days with readings that were too few for the method
     */
    public record Sum(
            ReadClimate climate,
            DegreeDayMethod method,
            TemperatureCourse course,
            List<DayDegreeDays> days,
            double total,
            int daysLeftOut) {}

    /**
     * {@return the sum}
     *
     * @throws InvalidInput if the log or a limit cannot be used
     */
    public Sum run() {
        if (upper.isPresent() && !(upper.getAsDouble() > lower)) {
            throw new InvalidInput(
                    "--upper is %s; it must be above --lower, %s. Maybe the two are swapped."
                            .formatted(upper.getAsDouble(), lower));
        }
        ReadClimate climate = request.read();
        TemperatureUnit unit = climate.unit();
        TemperatureLimits limits =
                new TemperatureLimits(
                        unit.toCelsius(lower),
                        unit.toCelsius(upper.orElse(Double.POSITIVE_INFINITY)));
        TemperatureLog log = climate.log();
        DegreeDayMethod chosen = method.orElse(log.usualMethod());
        TemperatureCourse course = log.course(chosen);
        List<DayDegreeDays> days = course.daily(limits);
        double total = days.stream().mapToDouble(DayDegreeDays::degreeDays).sum();
        int leftOut = chosen == DegreeDayMethod.HOURLY ? 0 : log.daysRead() - days.size();
        return new Sum(climate, chosen, course, days, total, leftOut);
    }
}
