package jarwise.render.words;

import jarwise.base.Message;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;

/**
 * Every sentence a person reads, in one language, from {@code words/<language>.properties}. Texts
 * are patterns of {@link MessageFormat}; numbers and dates are handed in already written, except
 * for choices between one and many. A key that is missing is a fault of ours: the build fails on
 * it.
 */
public final class Words {

    private static final String NO_BREAK = "\u00a0";
    private static final Map<Language, Words> ALL = new EnumMap<>(Language.class);

    static {
        for (Language language : Language.values()) {
            ALL.put(language, new Words(language));
        }
    }

    private final Language language;
    private final Properties texts = new Properties();

    private Words(Language language) {
        this.language = language;
        String file = "/words/" + language.code() + ".properties";
        try (Reader reader =
                new InputStreamReader(
                        Objects.requireNonNull(Words.class.getResourceAsStream(file)),
                        StandardCharsets.UTF_8)) {
            texts.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (language == Language.FRENCH) {
            texts.replaceAll((key, text) -> keepingMarks((String) text));
        }
    }

    /** In French a space stands before double marks, and no line may end in it. */
    private static String keepingMarks(String text) {
        return text.replaceAll(" (?=[:;!?»])", NO_BREAK).replace("« ", "«" + NO_BREAK);
    }

    /** {@return the words of one language} */
    public static Words of(Language language) {
        return Objects.requireNonNull(ALL.get(language));
    }

    /** {@return the language these words are in} */
    public Language language() {
        return language;
    }

    /** {@return every key of this language} */
    public Set<String> keys() {
        return texts.stringPropertyNames();
    }

    /** {@return whether there is a text under this key} */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /**
     * Says one text.
     *
     * @param key its name in the message file
     * @param arguments what goes into {0}, {1}, …
     * @return the sentence
     */
    public String say(String key, Object... arguments) {
        String pattern = texts.getProperty(key);
        if (pattern == null) {
            throw new IllegalStateException("No text for " + key + " in " + language.code());
        }
        return new MessageFormat(pattern, language.locale()).format(arguments);
    }

    /** {@return the sentence of a message} */
    public String say(Message message) {
        return say(message.key(), message.arguments().toArray());
    }
}
