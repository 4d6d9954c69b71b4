package jarwise.stats.thermal;

import jarwise.base.InvalidInput;

/**
 * Temperatures between which development gets faster. Above the upper one it goes on as fast as
 * there (horizontal cutoff).
 *
 * @param lower lower developmental temperature in °C
 * @param upper temperature in °C above which it gets no faster; infinite if there is none
 */
public record TemperatureLimits(double lower, double upper) {

    /**
     * Checks.
     *
     * @throws InvalidInput if the lower one is not a finite number, or the upper one not above it
     */
    public TemperatureLimits {
        if (!Double.isFinite(lower)) {
            throw new InvalidInput(
                    "The lower limit is %s; a temperature is needed. Maybe 9.5".formatted(lower));
        }
        if (!(upper > lower)) {
            throw new InvalidInput(
                    "The upper limit is %s; it must be above the lower limit, %s. Maybe swapped."
                            .formatted(upper, lower));
        }
    }

    /** {@return limits without an upper one} */
    public static TemperatureLimits above(double lower) {
        return new TemperatureLimits(lower, Double.POSITIVE_INFINITY);
    }

    /**
     * How far a temperature drives development: max(0, min(T, upper) − lower).
     *
     * @param celsius temperature T in °C
     * @return degrees above the lower limit, 0 or more
     */
    public double degreesAbove(double celsius) {
        return Math.max(0, Math.min(celsius, upper) - lower);
    }
}
