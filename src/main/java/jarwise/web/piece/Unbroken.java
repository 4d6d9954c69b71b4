package jarwise.web.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A piece of a sentence, and whether a line may end inside it. Codes such as P1-B5 are told apart
 * by their last character, which should not stand alone on the next line.
 *
 * @param text what stands there
 * @param code whether it is a code, which no line breaks
 */
public record Unbroken(String text, boolean code) {

    /** A longer word is wider than half a phone and has to break somewhere. */
    private static final int LONGEST_CODE = 16;

    private static final Pattern WORDS_AND_SPACES = Pattern.compile("(?<= )|(?= )");

    /** {@return the pieces of a sentence in order; together they are the sentence} */
    public static List<Unbroken> of(String sentence) {
        List<Unbroken> pieces = new ArrayList<>();
        StringBuilder plain = new StringBuilder();
        for (String word : WORDS_AND_SPACES.split(sentence, -1)) {
            if (isCode(word)) {
                pieces.add(new Unbroken(plain.toString(), false));
                pieces.add(new Unbroken(word, true));
                plain.setLength(0);
            } else {
                plain.append(word);
            }
        }
        pieces.add(new Unbroken(plain.toString(), false));
        return pieces;
    }

    private static boolean isCode(String word) {
        return word.length() <= LONGEST_CODE
                && word.indexOf('-') > 0
                && word.chars().anyMatch(Character::isDigit);
    }
}
