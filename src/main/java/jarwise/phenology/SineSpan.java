package jarwise.phenology;

import jarwise.stats.thermal.DailySine;
import jarwise.stats.thermal.TemperatureLimits;
import java.time.LocalDate;
import java.time.LocalDateTime;

/**
 * A day of which only the lowest and the highest temperature are known, drawn as a sine wave:
 * coolest at 3 in the morning, warmest at 3 in the afternoon. The hour matters only to a window
 * that opens or closes within the day.
 *
 * @param day the day
 * @param sine its temperatures
 */
record SineSpan(LocalDate day, DailySine sine) implements TemperatureSpan {

    /** At 9 the wave passes its mean, rising. */
    private static final double RISING = 9 / 24.0;

    @Override
    public LocalDateTime from() {
        return day.atStartOfDay();
    }

    @Override
    public LocalDateTime to() {
        return day.plusDays(1).atStartOfDay();
    }

    @Override
    public double mean() {
        return sine.mean();
    }

    @Override
    public double degreeDays(TemperatureLimits limits, LocalDateTime start, LocalDateTime end) {
        return sinceMidnight(limits, share(end)) - sinceMidnight(limits, share(start));
    }

    private double sinceMidnight(TemperatureLimits limits, double share) {
        if (share <= RISING) {
            return sine.degreeDays(limits, 1 - RISING, 1 - RISING + share);
        }
        return sine.degreeDays(limits, 1 - RISING, 1) + sine.degreeDays(limits, 0, share - RISING);
    }

    @Override
    public SineSpan warmedBy(double celsius) {
        return new SineSpan(day, new DailySine(sine.lowest() + celsius, sine.highest() + celsius));
    }
}
