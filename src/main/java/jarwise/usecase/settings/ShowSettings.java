package jarwise.usecase.settings;

import jarwise.decision.ActionThreshold;
import jarwise.pest.Pests;
import jarwise.sample.DetectionValue;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.Reader;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Occupancy;
import jarwise.site.Setting;
import jarwise.store.Database;
import jarwise.store.PestStore;
import jarwise.store.ReaderStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import java.time.LocalDate;
import java.util.List;

/** Looks up everything a site has chosen. */
public final class ShowSettings {

    private final SettingsStore settings;
    private final SiteStore sites;
    private final PestStore pests;
    private final ReaderStore readers;

    public ShowSettings(Database database) {
        this.settings = new SettingsStore(database);
        this.sites = new SiteStore(database);
        this.pests = new PestStore(database);
        this.readers = new ReaderStore(database);
    }

    /**
     * Everything chosen; of dated choices those that take over later first.
     *
     * @param lines action thresholds
     * @param settings named choices
     * @param protocols how samples are kept
     * @param protocolNow the protocol that holds today
     * @param shares adopted extraction and sensitivity
     * @param pests what can be counted
     * @param readers people
     * @param places houses, benches, lots and what stands where
     */
    public record Chosen(
            List<ActionThreshold> lines,
            List<Setting> settings,
            List<ProtocolVersion> protocols,
            ProtocolVersion protocolNow,
            List<DetectionValue> shares,
            Pests pests,
            List<Reader> readers,
            Places places) {}

    /** Houses, benches, lots and what stands where. */
    public record Places(
            List<House> houses,
            List<Bench> benches,
            List<CropLot> cropLots,
            List<Occupancy> occupancies) {}

    /** {@return everything a site has chosen, as it stands on a day} */
    public Chosen run(String nursery, LocalDate today) {
        return new Chosen(
                settings.thresholds(nursery),
                settings.settings(nursery),
                settings.protocols(nursery),
                settings.protocolOn(nursery, today),
                settings.detection(nursery),
                pests.pests(),
                readers.readers(nursery),
                new Places(
                        sites.houses(nursery),
                        sites.benches(nursery),
                        sites.cropLots(nursery),
                        sites.occupancies(nursery)));
    }
}
