package jarwise.stats.thermal;

import jarwise.base.InvalidInput;

/**
 * A day's temperature drawn as one sine wave between its lowest and its highest value.
 *
 * @param lowest lowest temperature of the day in °C
 * @param highest highest temperature of the day in °C
 */
public record DailySine(double lowest, double highest) {

    private static final double DAY = 2 * Math.PI;

    /**
     * Checks.
     *
     * @throws InvalidInput if a temperature is not finite or the highest is below the lowest
     */
    public DailySine {
        if (!Double.isFinite(lowest) || !Double.isFinite(highest) || highest < lowest) {
            throw new InvalidInput(
                    ("A day's lowest temperature is %s and its highest %s; numbers are allowed, the"
                                    + " highest not below the lowest. Maybe they are swapped.")
                            .formatted(lowest, highest));
        }
    }

    /**
     * How much heat for development did a day bring?
     *
     * <p>With M = (highest + lowest)/2, A = (highest − lowest)/2 and θ = asin((L − M)/A): [(M −
     * L)(π/2 − θ) + A cos θ]/π where the wave crosses L, M − L if it stays above, 0 if it stays
     * below; minus the same above the upper limit (horizontal cutoff).
     *
     * <p>Assumes that the day's curve is a sine wave that ends where it began. In a house with
     * heating steps read hourly values instead.
     *
     * <p>Source: Baskerville and Emin (1969), Ecology 50:514–517 (from memory); checked by
     * reference/thermal/single-sine.csv.
     *
     * @param limits between which development gets faster, in °C
     * @return degree-days in °C·d, 0 or more
     */
    public double degreeDays(TemperatureLimits limits) {
        return degreeDays(limits, 0, 1);
    }

    /**
     * How much heat did a part of the day bring? As for the whole day, for a wave that passes its
     * mean, rising, at the beginning of the day.
     *
     * @param limits between which development gets faster, in °C
     * @param from beginning of the part, as a share of the day from 0 to 1
     * @param to its end, from {@code from} to 1
     * @return degree-days in °C·d, 0 or more
     */
    public double degreeDays(TemperatureLimits limits, double from, double to) {
        double above = above(limits.lower(), from * DAY, to * DAY);
        double beyond =
                Double.isInfinite(limits.upper()) ? 0 : above(limits.upper(), from * DAY, to * DAY);
        return (above - beyond) / DAY;
    }

    /** {@return mean of the day in °C} */
    public double mean() {
        return (lowest + highest) / 2;
    }

    /** Integral of the part of the wave that lies above a limit, over an arc of the day. */
    private double above(double limit, double from, double to) {
        double amplitude = (highest - lowest) / 2;
        if (lowest >= limit) {
            return arc(limit, from, to);
        }
        if (highest <= limit) {
            return 0;
        }
        double crossing = Math.asin((limit - mean()) / amplitude);
        double sum = 0;
        // The wave is above from θ to π − θ; a negative θ begins in the turn before.
        for (double turn = 0; turn <= DAY; turn += DAY) {
            double start = Math.max(from, turn + crossing);
            double end = Math.min(to, turn + Math.PI - crossing);
            sum += end > start ? arc(limit, start, end) : 0;
        }
        return sum;
    }

    private double arc(double limit, double from, double to) {
        double amplitude = (highest - lowest) / 2;
        return (mean() - limit) * (to - from) + amplitude * (Math.cos(from) - Math.cos(to));
    }
}
