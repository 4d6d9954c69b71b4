package jarwise.usecase.map;

import jarwise.base.Message;
import jarwise.site.Bench;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.BenchPlace;
import jarwise.site.floor.FloorPlan.PlacedBench;
import jarwise.site.floor.FloorPlan.PlacedHouse;
import jarwise.site.floor.LengthUnit;
import jarwise.site.floor.Rectangle;
import jarwise.store.Database;
import jarwise.store.SiteStore;
import jarwise.store.work.FloorStore;
import jarwise.usecase.form.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a house and its benches where they really stand: name, bay, place, size, quarter turns. */
public final class AdjustHouse {

    private static final int LONGEST_NAME = 60;

    /** Places are shown with two decimals; what that rounds away is no fault. */
    private static final double SLACK_METRES = 0.02;

    private final Database database;
    private final SiteStore sites;
    private final FloorStore floors;

    public AdjustHouse(Database database) {
        this.database = database;
        this.sites = new SiteStore(database);
        this.floors = new FloorStore(database);
    }

    /** A bench as it was typed; its place is empty where a number in it was wrong. */
    private record Typed(String ending, Bench bench, String name, Optional<Rectangle> place) {}

    /**
     * Saves a house and all its benches.
     *
     * @param fields {@code house}; {@code x}, {@code y}, {@code length}, {@code width} of the house
     *     in the nursery; for each bench the same with its place in the walk behind a hyphen, and
     *     {@code name-0}, {@code bay-0}, {@code turn-0}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, LengthUnit unit, Fields fields) {
        FloorPlan plan =
                FloorPlan.of(sites.houses(nursery), sites.benches(nursery), floors.drawn(nursery));
        Optional<PlacedHouse> house = plan.house(fields.needed("house"));
        if (house.isEmpty()) {
            fields.fault("house", Message.of("settings.place.unknown", fields.text("house")));
            fields.refuseIfAny();
        }
        LengthFields lengths = new LengthFields(fields, unit);
        Optional<Rectangle> floor = lengths.rectangle("");
        List<Typed> typed = new ArrayList<>();
        List<PlacedBench> benches = house.orElseThrow().benches();
        for (int i = 0; i < benches.size(); i++) {
            typed.add(typed(benches.get(i).bench(), "-" + i, lengths));
        }
        floor.ifPresent(there -> checkInside(typed, there, lengths));
        checkApart(typed, fields);
        fields.refuseIfAny();
        save(nursery, house.orElseThrow().house().code(), floor.orElseThrow(), typed);
    }

    /**
     * Takes a bench off the plan that was drawn by mistake: nothing may be on record of it.
     *
     * @param fields {@code bench}
     * @throws jarwise.usecase.form.FormRefused where anything is on record of the bench
     */
    public void takeOff(String nursery, Fields fields) {
        String bench = fields.needed("bench");
        fields.refuseIfAny();
        if (!floors.removeUnused(nursery, bench)) {
            fields.fault("bench", Message.of("map.draw.used", bench));
        }
    }

    private static Typed typed(Bench bench, String ending, LengthFields lengths) {
        Fields fields = lengths.fields();
        String name = fields.text("name" + ending);
        if (name.length() > LONGEST_NAME) {
            fields.fault(
                    "name" + ending, Message.of("form.too-long", String.valueOf(LONGEST_NAME)));
        }
        Optional<Rectangle> place = lengths.rectangle(ending);
        boolean turned = !fields.text("turn" + ending).isEmpty();
        return new Typed(
                ending,
                new Bench(
                        bench.code(), bench.house(), fields.text("bay" + ending), bench.position()),
                name,
                turned ? place.map(Rectangle::turned) : place);
    }

    private static void checkInside(List<Typed> benches, Rectangle floor, LengthFields lengths) {
        for (Typed bench : benches) {
            bench.place()
                    .filter(place -> !shrunk(place).fitsIn(floor))
                    .ifPresent(
                            place -> lengths.outside("x" + bench.ending(), bench.bench().code()));
        }
    }

    private static void checkApart(List<Typed> benches, Fields fields) {
        for (int i = 0; i < benches.size(); i++) {
            for (int j = 0; j < i; j++) {
                Optional<Rectangle> one = benches.get(i).place();
                Optional<Rectangle> other = benches.get(j).place();
                if (one.isPresent()
                        && other.isPresent()
                        && shrunk(one.get()).overlaps(shrunk(other.get()))) {
                    fields.fault(
                            "x" + benches.get(i).ending(),
                            Message.of(
                                    "map.draw.overlap",
                                    benches.get(i).bench().code(),
                                    benches.get(j).bench().code()));
                }
            }
        }
    }

    private static Rectangle shrunk(Rectangle place) {
        double byLength = Math.min(SLACK_METRES, place.length() / 4);
        double byWidth = Math.min(SLACK_METRES, place.width() / 4);
        return new Rectangle(
                place.x() + byLength,
                place.y() + byWidth,
                place.length() - 2 * byLength,
                place.width() - 2 * byWidth);
    }

    private void save(String nursery, String house, Rectangle floor, List<Typed> benches) {
        database.inOneTransaction(
                () -> {
                    floors.putHouse(nursery, house, floor);
                    benches.forEach(
                            typed -> {
                                sites.save(nursery, typed.bench());
                                floors.putBench(
                                        nursery,
                                        typed.bench().code(),
                                        new BenchPlace(typed.name(), typed.place().orElseThrow()));
                            });
                    return floor;
                });
    }
}
