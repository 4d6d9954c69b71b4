package jarwise.usecase.map;

import jarwise.base.Message;
import jarwise.site.Bench;
import jarwise.site.House;
import jarwise.site.floor.BenchGrid;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.BenchPlace;
import jarwise.site.floor.LayoutRefused;
import jarwise.site.floor.LayoutSentence;
import jarwise.site.floor.LengthUnit;
import jarwise.site.floor.Rectangle;
import jarwise.store.Database;
import jarwise.store.SiteStore;
import jarwise.store.work.FloorStore;
import jarwise.usecase.form.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Draws a house with all its benches from its size and a few words. */
public final class DrawHouse {

    private static final int LONGEST_CODE = 30;
    private static final double BETWEEN_HOUSES = 6;

    private final Database database;
    private final SiteStore sites;
    private final FloorStore floors;

    public DrawHouse(Database database) {
        this.database = database;
        this.sites = new SiteStore(database);
        this.floors = new FloorStore(database);
    }

    /** One new bench at its place. */
    private record Drawn(Bench bench, Rectangle place) {}

    /**
     * Adds a house and its benches, P1-A1, P1-A2, …, below what is drawn already.
     *
     * @param fields {@code code}, {@code name}, {@code length}, {@code width}, {@code layout}; a
     *     house without benches that is known by this code is drawn and keeps its name
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, LengthUnit unit, Fields fields) {
        String code = fields.needed("code");
        if (code.length() > LONGEST_CODE) {
            fields.fault("code", Message.of("form.too-long", String.valueOf(LONGEST_CODE)));
        }
        List<Bench> benches = sites.benches(nursery);
        if (benches.stream().anyMatch(bench -> bench.house().equals(code))) {
            fields.fault("code", Message.of("settings.place.there", code));
        }
        LengthFields lengths = new LengthFields(fields, unit);
        OptionalDouble length = lengths.length("length");
        OptionalDouble width = lengths.length("width");
        Optional<BenchGrid> grid = grid(fields);
        fields.refuseIfAny();
        Rectangle floor =
                new Rectangle(0, below(nursery), length.orElseThrow(), width.orElseThrow());
        List<Drawn> drawn = drawn(code, benches.size(), grid.orElseThrow(), floor);
        checkCodes(drawn, benches, fields);
        fields.refuseIfAny();
        save(nursery, code, fields.text("name"), floor, drawn);
    }

    private static Optional<BenchGrid> grid(Fields fields) {
        try {
            return Optional.of(LayoutSentence.read(fields.text("layout")));
        } catch (LayoutRefused refused) {
            fields.fault("layout", refused.reason());
            return Optional.empty();
        }
    }

    private double below(String nursery) {
        FloorPlan plan =
                FloorPlan.of(sites.houses(nursery), sites.benches(nursery), floors.drawn(nursery));
        return plan.houses().stream()
                .mapToDouble(house -> house.place().bottom() + BETWEEN_HOUSES)
                .max()
                .orElse(0);
    }

    private static List<Drawn> drawn(String house, int before, BenchGrid grid, Rectangle floor) {
        List<List<Rectangle>> bays = grid.places(floor.length(), floor.width());
        List<Drawn> drawn = new ArrayList<>();
        for (int bay = 0; bay < bays.size(); bay++) {
            String letters = BenchGrid.letters(bay);
            for (int i = 0; i < bays.get(bay).size(); i++) {
                String code = house + "-" + letters + (i + 1);
                Bench bench = new Bench(code, house, letters, before + drawn.size());
                drawn.add(new Drawn(bench, bays.get(bay).get(i)));
            }
        }
        return drawn;
    }

    private static void checkCodes(List<Drawn> drawn, List<Bench> known, Fields fields) {
        List<String> codes = known.stream().map(Bench::code).toList();
        drawn.stream()
                .map(one -> one.bench().code())
                .filter(codes::contains)
                .findFirst()
                .ifPresent(code -> fields.fault("code", Message.of("settings.place.there", code)));
    }

    private void save(
            String nursery, String code, String name, Rectangle floor, List<Drawn> drawn) {
        List<House> houses = sites.houses(nursery);
        Optional<House> known =
                houses.stream().filter(house -> house.code().equals(code)).findFirst();
        House house =
                new House(
                        code,
                        name.isEmpty() ? known.map(House::name).orElse("") : name,
                        OptionalDouble.of(floor.length() * floor.width()));
        int position = known.map(houses::indexOf).orElse(houses.size());
        database.inOneTransaction(
                () -> {
                    sites.save(nursery, house, position);
                    floors.putHouse(nursery, code, floor);
                    drawn.forEach(
                            one -> {
                                sites.save(nursery, one.bench());
                                floors.putBench(
                                        nursery,
                                        one.bench().code(),
                                        new BenchPlace("", one.place()));
                            });
                    return house;
                });
    }
}
