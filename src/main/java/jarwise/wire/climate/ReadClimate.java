package jarwise.wire.climate;

import jarwise.phenology.TemperatureLog;
import jarwise.phenology.TemperatureUnit;
import java.time.ZoneOffset;
import java.util.Optional;

/**
 * A temperature log as it was read.
 *
 * @param log its temperatures
 * @param unit unit in which it gave them
 * @param unitAssumed whether neither the log nor the person said the unit
 * @param offset offset of all its times from UTC, that of the first one; empty if the times have
 *     none and are taken as they stand
 * @param blanks rows without a temperature, left out
 */
public record ReadClimate(
        TemperatureLog log,
        TemperatureUnit unit,
        boolean unitAssumed,
        Optional<ZoneOffset> offset,
        int blanks) {}
