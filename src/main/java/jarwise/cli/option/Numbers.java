package jarwise.cli.option;

import jarwise.stats.count.GivenK;
import jarwise.stats.estimate.DetectionShare;
import java.util.OptionalDouble;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Numbers of options, each checked when it is read and told with what is allowed. */
public final class Numbers {

    private Numbers() {}

    private static OptionalDouble number(String text) {
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** A number above 0. */
    public static final class Positive implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            double value = number(text).orElse(Double.NaN);
            if (value > 0 && value < Double.POSITIVE_INFINITY) {
                return value;
            }
            throw new TypeConversionException(
                    "it is \"%s\"; a number above 0 is allowed. Maybe 0.5".formatted(text));
        }
    }

    /** A whole number, 1 to 1,000,000,000. */
    public static final class Whole implements ITypeConverter<Long> {

        @Override
        public Long convert(String text) {
            if (text.matches("[0-9]{1,10}")) {
                long value = Long.parseLong(text);
                if (value >= 1 && value <= 1_000_000_000) {
                    return value;
                }
            }
            throw new TypeConversionException(
                    "it is \"%s\"; a whole number from 1 to 1000000000 is allowed. Maybe 100"
                            .formatted(text));
        }
    }

    /** Dispersion: a number above 0, or Inf for Poisson. */
    public static final class Dispersion implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            if (text.equalsIgnoreCase("Inf") || text.equalsIgnoreCase("Infinity")) {
                return Double.POSITIVE_INFINITY;
            }
            double value = number(text).orElse(Double.NaN);
            if (GivenK.isAllowed(value)) {
                return value;
            }
            throw new TypeConversionException(
                    ("it is \"%s\"; a number above 0, or Inf, is allowed. Maybe leave it out where"
                                    + " k can be estimated, or 0.5")
                            .formatted(text));
        }
    }

    /** A share above 0 and below 1. */
    public static final class Fraction implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            return insideZeroAndOne(text, "0.8");
        }
    }

    /** Level of an interval, above 0 and below 1. */
    public static final class Level implements ITypeConverter<Double> {

        @Override
        public Double convert(String text) {
            return insideZeroAndOne(text, "0.95");
        }
    }

    private static double insideZeroAndOne(String text, String example) {
        double value = number(text).orElse(Double.NaN);
        if (value > 0 && value < 1) {
            return value;
        }
        String guess = value > 1 && value < 100 ? String.valueOf(value / 100) : example;
        String nearest =
                value == 1 && text.startsWith("0.")
                        ? ", and beyond %s none can be told from 1".formatted(Math.nextDown(1.0))
                        : "";
        throw new TypeConversionException(
                "it is \"%s\"; a number above 0 and below 1 is allowed%s. Maybe %s"
                        .formatted(text, nearest, guess));
    }

    /** A share taken as known, or found out of known. */
    public static final class Share implements ITypeConverter<DetectionShare> {

        @Override
        public DetectionShare convert(String text) {
            int slash = text.indexOf('/');
            if (slash < 0) {
                double value = number(text).orElse(Double.NaN);
                if (value > 0 && value <= 1) {
                    return DetectionShare.known(value);
                }
            } else if (text.matches("[0-9]{1,9}/[0-9]{1,9}")) {
                long found = Long.parseLong(text.substring(0, slash));
                long known = Long.parseLong(text.substring(slash + 1));
                if (known > 0 && found <= known) {
                    return DetectionShare.measured(found, known);
                }
            }
            throw new TypeConversionException(
                    ("it is \"%s\"; a number above 0 and at most 1, or FOUND/KNOWN with whole"
                                    + " numbers, is allowed. Maybe 0.6, or 18/24")
                            .formatted(text));
        }
    }
}
