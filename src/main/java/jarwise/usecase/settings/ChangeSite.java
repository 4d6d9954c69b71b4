package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.site.Nursery;
import jarwise.store.SiteStore;
import jarwise.usecase.form.Fields;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * Changes the name, time zone or language of a site; its short name in addresses stays.
 *
 * @param sites nurseries
 */
public record ChangeSite(SiteStore sites) {

    /**
     * Changes.
     *
     * @param fields {@code name}, {@code zone}, {@code language}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, Fields fields) {
        String name = fields.needed("name");
        Optional<ZoneId> zone = zone(fields);
        String language = fields.text("language");
        if (!List.of("en", "es", "fr").contains(language)) {
            fields.fault("language", Message.of("form.word", language, "en, es, fr"));
        }
        fields.refuseIfAny();
        sites.save(new Nursery(nursery, name, zone.orElseThrow(), language));
    }

    private static Optional<ZoneId> zone(Fields fields) {
        String text = fields.needed("zone");
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(ZoneId.of(text));
        } catch (DateTimeException e) {
            fields.fault("zone", Message.of("site.zone.unknown", text));
            return Optional.empty();
        }
    }
}
