package jarwise.usecase;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.site.Nursery;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import java.text.Normalizer;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Opens the sites of one set of data, or names the first one.
 *
 * @param sites nurseries
 * @param samples what was cut there
 */
public record OpenSite(SiteStore sites, SampleStore samples) {

    /**
     * What is on record of a site.
     *
     * @param samples how many samples
     * @param lastCut day on which the last one was cut
     */
    public record OnRecord(int samples, Optional<LocalDate> lastCut) {}

    /** {@return every nursery, by name} */
    public List<Nursery> nurseries() {
        return sites.nurseries();
    }

    /** {@return what is on record of a nursery} */
    public OnRecord onRecord(String nursery) {
        return new OnRecord(samples.count(nursery), samples.lastDay(nursery));
    }

    /**
     * Makes a nursery.
     *
     * @param name as people write it; its short name for addresses is made from it
     * @param zone time zone, such as America/Toronto
     * @param language en, es or fr
     * @throws Refused if the name has no letter, is taken, or there is no such time zone
     */
    public Nursery name(String name, String zone, String language) {
        String slug = slug(name);
        if (slug.isEmpty()) {
            throw new Refused(Message.of("site.name.empty"));
        }
        if (sites.nurseries().stream().anyMatch(known -> known.slug().equals(slug))) {
            throw new Refused(Message.of("site.name.taken", name));
        }
        Nursery nursery = new Nursery(slug, name.strip(), zone(zone), language);
        sites.save(nursery);
        return nursery;
    }

    private static ZoneId zone(String zone) {
        try {
            return ZoneId.of(zone.strip());
        } catch (DateTimeException e) {
            Refused refused = new Refused(Message.of("site.zone.unknown", zone));
            refused.initCause(e);
            throw refused;
        }
    }

    private static String slug(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        return plain.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
