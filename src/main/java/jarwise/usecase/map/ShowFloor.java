package jarwise.usecase.map;

import jarwise.site.CropLot;
import jarwise.site.PlantMove;
import jarwise.site.Setting;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.LengthUnit;
import jarwise.store.Database;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.FloorStore;
import jarwise.store.work.RoundStore;
import jarwise.usecase.settings.NamedChoice;
import java.time.LocalDate;
import java.util.List;

/** Looks up what a nursery looks like and what stands in it, without any finding. */
public final class ShowFloor {

    private final SiteStore sites;
    private final FloorStore floors;
    private final RoundStore rounds;
    private final SettingsStore settings;

    public ShowFloor(Database database) {
        this.sites = new SiteStore(database);
        this.floors = new FloorStore(database);
        this.rounds = new RoundStore(database);
        this.settings = new SettingsStore(database);
    }

    /**
     * A nursery without findings.
     *
     * @param plan where everything lies
     * @param lots crop lots, by code
     * @param stands what stands and stood where
     * @param moves plants carried, oldest first
     */
    public record Floor(FloorPlan plan, List<CropLot> lots, Stands stands, List<PlantMove> moves) {
        public Floor {
            lots = List.copyOf(lots);
            moves = List.copyOf(moves);
        }
    }

    /** {@return houses, benches and lots of a site} */
    public Floor run(String nursery) {
        return new Floor(
                FloorPlan.of(sites.houses(nursery), sites.benches(nursery), floors.drawn(nursery)),
                sites.cropLots(nursery),
                new Stands(sites.occupancies(nursery)),
                rounds.moves(nursery));
    }

    /** {@return the unit in which a site writes lengths on a day} */
    public LengthUnit unit(String nursery, LocalDate day) {
        return settings.settings(nursery).stream()
                .filter(setting -> setting.name().equals(NamedChoice.LENGTH_UNIT.code()))
                .filter(setting -> !setting.holdsFrom().isAfter(day))
                .findFirst()
                .map(Setting::value)
                .map(LengthUnit::of)
                .orElse(LengthUnit.METRE);
    }
}
