package jarwise.phenology;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * One reading of a temperature logger.
 *
 * @param house greenhouse the sensor hangs in
 * @param sensor its name
 * @param at when, to the microsecond
 * @param celsius degrees Celsius, from −60 to 80
 * @param deliveredIn unit in which the logger gave it
 */
public record TemperatureReading(
        String house, String sensor, Instant at, double celsius, TemperatureUnit deliveredIn) {

    public TemperatureReading {
        Require.notBlank("house", house);
        Require.notBlank("sensor", sensor);
        at = at.truncatedTo(ChronoUnit.MICROS);
        if (!(celsius >= -60 && celsius <= 80)) {
            throw new InvalidInput(
                    ("The temperature in %s at %s is %s °C; it must be from -60 to 80."
                                    + " Maybe it is in Fahrenheit.")
                            .formatted(house, at, celsius));
        }
    }
}
