package jarwise.phenology;

import jarwise.stats.thermal.TemperatureLimits;
import java.time.Duration;
import java.time.LocalDateTime;

/** A stretch of time of which the temperature is known or assumed. */
public sealed interface TemperatureSpan permits LineSpan, SineSpan {

    /** {@return its beginning} */
    LocalDateTime from();

    /** {@return its end} */
    LocalDateTime to();

    /** {@return mean temperature in °C} */
    double mean();

    /**
     * {@return degree-days in °C·d between two moments}
     *
     * @param limits between which development gets faster
     * @param start not before the beginning
     * @param end not after the end
     */
    double degreeDays(TemperatureLimits limits, LocalDateTime start, LocalDateTime end);

    /** {@return the same stretch, so many degrees warmer} */
    TemperatureSpan warmedBy(double celsius);

    /** {@return its length in days} */
    default double days() {
        return days(from(), to());
    }

    /** {@return the moment, as a share of this stretch} */
    default double share(LocalDateTime moment) {
        return days(from(), moment) / days();
    }

    /** {@return days from one moment to another} */
    static double days(LocalDateTime from, LocalDateTime to) {
        Duration time = Duration.between(from, to);
        return (time.getSeconds() + time.getNano() * 1e-9) / 86_400;
    }
}
