package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.sample.Reader;
import jarwise.store.ReaderStore;
import jarwise.usecase.form.Fields;
import java.util.List;

/**
 * Adds a person by role code, or changes the one with this code.
 *
 * @param readers people of the site
 */
public record SavePerson(ReaderStore readers) {

    /**
     * Saves.
     *
     * @param fields {@code code}, {@code role}, {@code language}, {@code active}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, Fields fields) {
        String code = fields.needed("code");
        if (!code.isEmpty() && !code.matches("[\\p{L}\\p{N}._-]{1,20}")) {
            fields.fault("code", Message.of("settings.person.code", code));
        }
        String role = fields.needed("role");
        String language = fields.text("language");
        if (!List.of("en", "es", "fr").contains(language)) {
            fields.fault("language", Message.of("form.word", language, "en, es, fr"));
        }
        fields.refuseIfAny();
        readers.save(nursery, new Reader(code, role, language, !fields.text("active").isEmpty()));
    }
}
