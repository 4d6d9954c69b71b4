package jarwise.cli.plan;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Two constants of a regression, typed as {@code 2.6,1.5}.
 *
 * @param first intercept or factor
 * @param second slope or exponent
 */
record TwoNumbers(double first, double second) {

    /** Reads two finite numbers. */
    static final class Read implements ITypeConverter<TwoNumbers> {

        @Override
        public TwoNumbers convert(String text) {
            String[] parts = text.split(",", -1);
            if (parts.length == 2) {
                try {
                    double first = Double.parseDouble(parts[0]);
                    double second = Double.parseDouble(parts[1]);
                    if (Double.isFinite(first) && Double.isFinite(second)) {
                        return new TwoNumbers(first, second);
                    }
                } catch (NumberFormatException e) {
                    throw refused(text);
                }
            }
            throw refused(text);
        }

        private static TypeConversionException refused(String text) {
            return new TypeConversionException(
                    "it is \"%s\"; two numbers with a comma between are allowed. Maybe 2.6,1.5"
                            .formatted(text));
        }
    }
}
