package jarwise.usecase.planning;

import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Nursery;
import jarwise.site.Occupancy;
import jarwise.site.Setting;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.TreatmentStore;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.usecase.findings.SiteCounts;
import jarwise.wire.pest.ShippedPests;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/** An invented nursery with two houses and nothing counted yet, in a real database. */
public final class PlanSite {

    public static final String SLUG = "lane";

    /** Thursday 7 May 2026, 08:00. */
    public static final ZonedDateTime NOW =
            ZonedDateTime.of(2026, 5, 7, 8, 0, 0, 0, ZoneOffset.UTC);

    public static final LocalDate MONDAY = LocalDate.of(2026, 5, 11);

    public final Database database;
    public final Nursery nursery = new Nursery(SLUG, "Lane", ZoneOffset.UTC, "en");
    public final SettingsStore settings;
    public final TreatmentStore treatments;
    private final SiteStore sites;

    /** Opens it in an empty database. */
    public PlanSite(Database database) {
        this.database = database;
        this.settings = new SettingsStore(database);
        this.treatments = new TreatmentStore(database);
        this.sites = new SiteStore(database);
        sites.save(nursery);
        ShippedPests.read().forEach(new PestStore(database)::save);
        sites.save(SLUG, new House("H2", "Potted plants", OptionalDouble.empty()), 0);
        sites.save(SLUG, new House("P1", "Propagation", OptionalDouble.empty()), 1);
        bench("H2-A1", "H2", 0, "L-1", "Pellam Pink", 300);
        bench("H2-A2", "H2", 1, "L-1", "Pellam Pink", 100);
        bench("P1-B1", "P1", 2, "L-2", "Rubia Tarn", 600);
        bench("P1-B2", "P1", 3, "L-3", "Cloudmarsh", 0);
    }

    private void bench(
            String code, String house, int position, String lot, String variety, int plants) {
        sites.save(SLUG, new Bench(code, house, code.substring(3, 4), position));
        sites.save(
                SLUG,
                new CropLot(lot, "Gerbera", variety, Optional.empty(), Optional.empty(), false));
        boolean known = plants > 0;
        sites.save(
                SLUG,
                new Occupancy(
                        code,
                        lot,
                        MONDAY.minusMonths(1),
                        Optional.empty(),
                        known ? OptionalDouble.of(plants) : OptionalDouble.empty(),
                        known ? OptionalDouble.of(2) : OptionalDouble.empty(),
                        Optional.empty()));
    }

    /** Chooses a named value. */
    public PlanSite with(String setting, String value) {
        settings.add(
                SLUG,
                new Setting(setting, value, MONDAY.minusMonths(1), "HG-1", "so"),
                Instant.parse("2026-04-01T00:00:00Z"));
        return this;
    }

    /** Sprays a bench; nobody may enter for so many hours after {@code end}. */
    public PlanSite sprayed(String bench, Instant end, double hours) {
        ProductUse use =
                new ProductUse(
                        "Invented-L",
                        Optional.empty(),
                        List.of("15"),
                        OptionalDouble.of(hours),
                        OptionalInt.empty(),
                        OptionalInt.empty());
        treatments.add(
                SLUG,
                new Application(
                        "T-" + bench,
                        bench.substring(0, 2),
                        Set.of(bench),
                        end.minusSeconds(600),
                        Optional.of(end),
                        List.of(use),
                        "1 L",
                        "AP-1",
                        ""),
                end);
        return this;
    }

    /** {@return the use case over this site} */
    public PlanRound planRound() {
        SampleStore samples = new SampleStore(database);
        SiteCounts counts =
                new SiteCounts(
                        samples, settings, new PestStore(database), new EventStore(database));
        return new PlanRound(counts, sites, treatments, samples);
    }

    /** {@return what is planned when this was typed: name, value, name, value …} */
    public PlannedRound plan(String... typed) {
        Map<String, String> fields = new TreeMap<>();
        fields.put("question", "detect");
        fields.put("sent", "1");
        fields.put("day", MONDAY.toString());
        for (int i = 0; i < typed.length; i += 2) {
            fields.put(typed[i], typed[i + 1]);
        }
        return planRound().run(nursery, fields, NOW, "SC-1");
    }
}
