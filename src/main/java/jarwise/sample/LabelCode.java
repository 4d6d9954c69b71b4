package jarwise.sample;

import jarwise.base.InvalidInput;
import java.util.Locale;
import java.util.function.IntUnaryOperator;

/**
 * A code that Jarwise prints on a label, "7K4-M9QS": six symbols of Crockford's base 32 (no I, L, O
 * and U, which are misread) and a check character.
 *
 * <p>The check is MOD 37-2 of ISO/IEC 7064, with the standard's values for digits and letters. Its
 * check character can be any of 37, but a code is given out only when it is one of the 32 symbols,
 * so a label never holds a letter that is misread. Every single wrong symbol and every swap of two
 * neighbours, the check character among them, is found ({@code docs/decisions}, "A label's check
 * character").
 *
 * @param symbols seven symbols without the hyphen, the last one the check character
 */
public record LabelCode(String symbols) {

    /** Symbols of a code, the check character counted. */
    public static final int LENGTH = 7;

    /** Crockford's symbols for 0 to 31. */
    public static final String ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final CheckCharacters CHECK = CheckCharacters.pure(37, 2);
    private static final String STANDARD = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";

    public LabelCode {
        if (symbols.length() != LENGTH) {
            throw new InvalidInput(
                    "The code '%s' has %d symbols; a label has %d, such as 7K4-M9QS."
                            .formatted(symbols, symbols.length(), LENGTH));
        }
        symbols.chars().filter(c -> ALPHABET.indexOf(c) < 0).findFirst().ifPresent(LabelCode::no);
        if (checkOf(symbols.substring(0, LENGTH - 1)) != symbols.charAt(LENGTH - 1)) {
            throw new InvalidInput(
                    ("There is no label with the code '%s'. Maybe one symbol is wrong or two"
                                    + " neighbours are swapped; please read the label again.")
                            .formatted(hyphenated(symbols)));
        }
    }

    /**
     * Reads a code as it was typed or scanned: small letters, spaces and hyphens do not matter, I
     * and L are read as 1 and O as 0.
     *
     * @param text what was typed
     * @return the code
     * @throws InvalidInput when it cannot be a label's code, saying which mistake it is
     */
    public static LabelCode parse(String text) {
        return new LabelCode(
                text.replaceAll("[\\s\\p{Pd}]", "")
                        .toUpperCase(Locale.ROOT)
                        .replace('I', '1')
                        .replace('L', '1')
                        .replace('O', '0'));
    }

    /**
     * Draws a code; the caller sees to it that it was not given out before.
     *
     * @param below draws a whole number from 0 up to its argument less one, such as {@code
     *     random::nextInt}
     * @return a code whose check character is one of the symbols
     */
    public static LabelCode next(IntUnaryOperator below) {
        while (true) {
            StringBuilder code = new StringBuilder();
            while (code.length() < LENGTH - 1) {
                code.append(ALPHABET.charAt(below.applyAsInt(ALPHABET.length())));
            }
            char check = checkOf(code);
            if (ALPHABET.indexOf(check) >= 0) {
                return new LabelCode(code.append(check).toString());
            }
        }
    }

    /** {@return the code of the sample whose label it is, as printed} */
    public SampleCode sampleCode() {
        return new SampleCode(toString());
    }

    /** {@return the code as printed, "7K4-M9QS"} */
    @Override
    public String toString() {
        return hyphenated(symbols);
    }

    static char checkOf(CharSequence data) {
        return STANDARD.charAt(CHECK.check(data.chars().map(STANDARD::indexOf).toArray()));
    }

    private static String hyphenated(String symbols) {
        return symbols.substring(0, 3) + "-" + symbols.substring(3);
    }

    private static void no(int symbol) {
        String maybe = symbol == 'U' ? " Maybe it is a V." : "";
        throw new InvalidInput(
                "'%c' stands on no label; a code has digits and letters without I, L, O and U.%s"
                        .formatted(symbol, maybe));
    }
}
