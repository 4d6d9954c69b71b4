package jarwise.cli.laboratory;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A count typed as an option or parameter. */
final class WholeNumber implements ITypeConverter<Long> {

    private static final long LARGEST = 1_000_000_000L;

    @Override
    public Long convert(String text) {
        if (text.matches("[0-9]{1,10}(\\.0+)?") && Long.parseLong(whole(text)) <= LARGEST) {
            return Long.valueOf(whole(text));
        }
        throw new TypeConversionException(
                "it is \"%s\"; a whole number from 0 to 1,000,000,000 is allowed. Maybe 12"
                        .formatted(text));
    }

    private static String whole(String text) {
        return text.replaceAll("\\..*", "");
    }
}
