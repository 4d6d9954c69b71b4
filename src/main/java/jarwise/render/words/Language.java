package jarwise.render.words;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Languages of pages, letters and messages: one message file each. */
public enum Language {
    ENGLISH("en", "English"),
    SPANISH("es", "Español"),
    FRENCH("fr", "Français");

    private final String code;
    private final String ownName;

    Language(String code, String ownName) {
        this.code = code;
        this.ownName = ownName;
    }

    /** {@return the ISO 639-1 code} */
    public String code() {
        return code;
    }

    /** {@return the language's name in itself} */
    public String ownName() {
        return ownName;
    }

    /** {@return its locale, for dates and numbers} */
    public Locale locale() {
        return Locale.forLanguageTag(code);
    }

    /** {@return the language with this ISO 639-1 code} */
    public static Optional<Language> of(String code) {
        return Arrays.stream(values()).filter(language -> language.code.equals(code)).findAny();
    }
}
