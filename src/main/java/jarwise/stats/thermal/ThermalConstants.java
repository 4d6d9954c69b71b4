package jarwise.stats.thermal;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.OptionalDouble;

/**
 * The two constants of the linear model of development, 1/d = (T − T0)/K.
 *
 * @param lowerDevelopmentalTemperature T0 in °C, below which nothing develops
 * @param degreeDays K in °C·d, heat that the stage needs; above 0
 */
public record ThermalConstants(double lowerDevelopmentalTemperature, double degreeDays) {

    /**
     * Checks.
     *
     * @throws InvalidInput if T0 is not finite or K not above 0
     */
    public ThermalConstants {
        Require.positive("the degree-days of a stage", degreeDays);
        if (!Double.isFinite(lowerDevelopmentalTemperature)) {
            throw new InvalidInput(
                    "The lower developmental temperature is %s; a number is needed."
                            .formatted(lowerDevelopmentalTemperature));
        }
    }

    /**
     * How long does the stage take in constant temperature?
     *
     * <p>d = K/(T − T0).
     *
     * <p>Assumes the linear model: near T0 it says too long, in great heat too short.
     *
     * <p>Source: checked by reference/thermal/durations.csv.
     *
     * @param celsius constant temperature T in °C
     * @return days; empty at or below T0, where it never ends
     */
    public OptionalDouble days(double celsius) {
        double degrees = celsius - lowerDevelopmentalTemperature;
        return degrees > 0 ? OptionalDouble.of(degreeDays / degrees) : OptionalDouble.empty();
    }

    /**
     * {@return the constants of a part of this development that takes a share of its heat}
     *
     * @param share above 0 and at most 1
     */
    public ThermalConstants part(double share) {
        return new ThermalConstants(
                lowerDevelopmentalTemperature,
                Require.share("the share of a stage", share) * degreeDays);
    }

    /** {@return the limits within which this development is driven} */
    public TemperatureLimits limits() {
        return TemperatureLimits.above(lowerDevelopmentalTemperature);
    }
}
