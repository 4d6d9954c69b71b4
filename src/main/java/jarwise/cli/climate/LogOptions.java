package jarwise.cli.climate;

import jarwise.phenology.TemperatureUnit;
import jarwise.usecase.climate.LogRequest;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** The options of every command that reads a temperature log; mixed into each. */
final class LogOptions {

    @Parameters(
            paramLabel = "LOG",
            description = "CSV (UTF-8) or .xlsx with date, min and max, or time and temperature")
    Path log = Path.of("");

    @Option(
            names = "--unit",
            paramLabel = "C|F",
            converter = Unit.class,
            description = "unit of the log, if its header does not say it")
    @Nullable TemperatureUnit unit;

    @Option(
            names = "--worksheet",
            paramLabel = "NAME",
            description = "worksheet of an .xlsx file; the first one by default")
    @Nullable String worksheet;

    LogRequest request() {
        return new LogRequest(log, Optional.ofNullable(worksheet), Optional.ofNullable(unit));
    }

    /** C or F. */
    static final class Unit implements ITypeConverter<TemperatureUnit> {

        @Override
        public TemperatureUnit convert(String text) {
            return switch (text.toUpperCase(Locale.ROOT)) {
                case "C", "CELSIUS" -> TemperatureUnit.CELSIUS;
                case "F", "FAHRENHEIT" -> TemperatureUnit.FAHRENHEIT;
                default ->
                        throw new TypeConversionException(
                                "it is \"%s\"; C or F is allowed. Maybe C".formatted(text));
            };
        }
    }

    /** A temperature of an option. */
    static final class Degrees implements ITypeConverter<Double> {

        private static final double FARTHEST = 300;

        @Override
        public Double convert(String text) {
            double value;
            try {
                value = Double.parseDouble(text);
            } catch (NumberFormatException e) {
                value = Double.NaN;
            }
            if (Math.abs(value) <= FARTHEST) {
                return value;
            }
            throw new TypeConversionException(
                    "it is \"%s\"; a temperature in the log's unit is allowed. Maybe 9.5"
                            .formatted(text));
        }
    }
}
