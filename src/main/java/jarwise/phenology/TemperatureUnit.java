package jarwise.phenology;

/** Unit in which a logger delivered a temperature. */
public enum TemperatureUnit {
    CELSIUS,
    FAHRENHEIT;

    /** {@return {@code value} of this unit in degrees Celsius} */
    public double toCelsius(double value) {
        return this == CELSIUS ? value : (value - 32) / 1.8;
    }
}
