package jarwise.cli.laboratory;

import jarwise.base.Guess;
import jarwise.stats.removal.RemovalMethod;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A removal method as it is typed: carle-strub. */
final class MethodName implements ITypeConverter<RemovalMethod> {

    private static final List<String> NAMES = List.of("ml", "zippin", "carle-strub", "two-pass");

    @Override
    public RemovalMethod convert(String text) {
        String name = text.toLowerCase(Locale.ROOT);
        if (NAMES.contains(name)) {
            return RemovalMethod.valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_'));
        }
        throw new TypeConversionException(
                "it is \"%s\"; ml, zippin, carle-strub and two-pass are allowed. Maybe %s"
                        .formatted(text, Guess.among(NAMES, text)));
    }
}
