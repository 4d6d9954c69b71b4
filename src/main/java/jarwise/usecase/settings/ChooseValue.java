package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.site.Setting;
import jarwise.store.SettingsStore;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Chooses a named value from a day on, with a reason. The one before is kept.
 *
 * @param settings where choices are kept
 */
public record ChooseValue(SettingsStore settings) {

    /**
     * Chooses.
     *
     * @param fields {@code name}, {@code value}, {@code from}, {@code reason}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, String person, Fields fields, Instant now) {
        Optional<NamedChoice> choice = NamedChoice.of(fields.needed("name"));
        if (choice.isEmpty()) {
            fields.fault("name", Message.of("settings.choice.unknown"));
        }
        String value = choice.map(known -> known.read(fields)).orElse("");
        Optional<LocalDate> from = fields.day("from");
        if (fields.text("from").isEmpty()) {
            fields.fault("from", Message.of("form.needed"));
        }
        String reason = fields.needed("reason");
        fields.refuseIfAny();
        settings.add(
                nursery,
                new Setting(choice.orElseThrow().code(), value, from.orElseThrow(), person, reason),
                now);
    }
}
