package jarwise.wire.climate;

import jarwise.phenology.TemperatureUnit;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads temperatures, and notes those that cannot be.
 *
 * @param decimalComma whether 18,5 is a number
 * @param unit unit of the log, if it is known
 * @param faults where faults are noted
 */
record DegreeCells(boolean decimalComma, Optional<TemperatureUnit> unit, Faults faults) {

    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]{1,6}(?:\\.[0-9]{1,30})?");
    private static final double LOWEST_C = -60;
    private static final double HIGHEST_C = 100;

    /** Where nobody says the unit, more than this may well be Fahrenheit. */
    private static final double DOUBTFUL = 50;

    /** {@return the temperature in °C, or nothing if the cell is at fault} */
    Optional<Double> celsius(int row, String column, String text) {
        String number = text.replace('\u2212', '-');
        number = decimalComma ? number.replace(',', '.') : number;
        if (!NUMBER.matcher(number).matches()) {
            faults.add(Fault.in(row, column, text, FaultKind.TEMPERATURE_UNREADABLE));
            return Optional.empty();
        }
        double value = Double.parseDouble(number);
        TemperatureUnit scale = unit.orElse(TemperatureUnit.CELSIUS);
        double celsius = scale.toCelsius(value);
        if (celsius < LOWEST_C || celsius > HIGHEST_C) {
            faults.add(impossible(row, column, text, scale));
            return Optional.empty();
        }
        if (unit.isEmpty() && value > DOUBTFUL) {
            faults.add(Fault.in(row, column, text, FaultKind.TEMPERATURE_UNIT_DOUBTFUL));
            return Optional.empty();
        }
        return Optional.of(celsius);
    }

    private static Fault impossible(int row, String column, String text, TemperatureUnit scale) {
        boolean celsius = scale == TemperatureUnit.CELSIUS;
        return Fault.in(
                row,
                column,
                text,
                FaultKind.TEMPERATURE_IMPOSSIBLE,
                celsius ? "-60" : "-76",
                celsius ? "100" : "212",
                celsius ? "C" : "F");
    }
}
