package jarwise.wire.climate;

import jarwise.phenology.TemperatureUnit;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import jarwise.wire.table.Table;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Which columns of a log hold what. A name may carry its unit: "min F", "temperature_c", "max
 * (°C)".
 *
 * @param time place of the day or time
 * @param temperatures places of the lowest and the highest temperature, or of the one there is
 * @param unit unit that the names say, if they do
 */
record ClimateColumns(int time, List<Integer> temperatures, Optional<TemperatureUnit> unit) {

    private static final Set<String> DATE = Set.of("date", "day");
    private static final Set<String> MIN =
            Set.of("min", "minimum", "tmin", "lowest", "min temperature", "temperature min");
    private static final Set<String> MAX =
            Set.of("max", "maximum", "tmax", "highest", "max temperature", "temperature max");
    private static final Set<String> TIME =
            Set.of("time", "datetime", "date time", "timestamp", "date and time");
    private static final Set<String> TEMPERATURE =
            Set.of("temperature", "temp", "air temperature", "value");
    private static final Set<String> CELSIUS = Set.of("c", "°c", "degc", "celsius");
    private static final Set<String> FAHRENHEIT = Set.of("f", "°f", "degf", "fahrenheit");

    boolean isDaily() {
        return temperatures.size() == 2;
    }

    static ClimateColumns of(Table table) {
        int temperature = place(table, TEMPERATURE);
        int min = place(table, MIN);
        int max = place(table, MAX);
        if (temperature >= 0 && min >= 0 && max >= 0) {
            throw Faults.refusal(Fault.ofFile(FaultKind.LOG_COLUMNS_OF_BOTH_KINDS));
        }
        List<Integer> places =
                temperature >= 0
                        ? List.of(temperature)
                        : List.of(needed(table, min, "min"), needed(table, max, "max"));
        int time = place(table, temperature >= 0 ? TIME : DATE);
        needed(table, time, temperature >= 0 ? "time" : "date");
        return new ClimateColumns(time, places, unit(table, places));
    }

    private static int needed(Table table, int place, String name) {
        if (place >= 0) {
            return place;
        }
        String header = String.join(", ", table.header());
        throw Faults.refusal(new Fault(0, "", name, FaultKind.LOG_COLUMN_MISSING, List.of(header)));
    }

    /** {@return the first column with one of these names, with or without a unit; or −1} */
    private static int place(Table table, Set<String> names) {
        for (int i = 0; i < table.header().size(); i++) {
            if (names.contains(bare(table.header().get(i)))) {
                return i;
            }
        }
        return -1;
    }

    private static Optional<TemperatureUnit> unit(Table table, List<Integer> places) {
        Set<TemperatureUnit> units = new LinkedHashSet<>();
        for (int place : places) {
            unit(table.header().get(place)).ifPresent(units::add);
        }
        if (units.size() > 1) {
            throw Faults.refusal(
                    Fault.in(
                            table.headerRow(),
                            table.header().get(places.get(1)),
                            "C",
                            FaultKind.TEMPERATURE_UNIT_DISAGREES));
        }
        return units.stream().findAny();
    }

    private static Optional<TemperatureUnit> unit(String name) {
        List<String> words = words(name);
        String last = words.isEmpty() ? "" : words.get(words.size() - 1);
        if (CELSIUS.contains(last)) {
            return Optional.of(TemperatureUnit.CELSIUS);
        }
        return FAHRENHEIT.contains(last)
                ? Optional.of(TemperatureUnit.FAHRENHEIT)
                : Optional.empty();
    }

    private static String bare(String name) {
        List<String> words = new ArrayList<>(words(name));
        if (words.size() > 1 && unit(name).isPresent()) {
            words.remove(words.size() - 1);
            if (words.get(words.size() - 1).equals("deg")) {
                words.remove(words.size() - 1);
            }
        }
        return String.join(" ", words);
    }

    /** The words of a header, in small letters: "Max_Temperature (°C)" has three. */
    private static List<String> words(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replace('º', '°');
        return List.of(plain.replaceAll("[^\\p{L}°]+", " ").strip().split(" "));
    }
}
