package jarwise.usecase.map;

import jarwise.base.Message;
import jarwise.site.Bench;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.PlacedHouse;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.LengthUnit;
import jarwise.store.SiteStore;
import jarwise.store.work.FloorStore;
import jarwise.usecase.form.Fields;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Adds places known for trouble to the plan, and takes them off.
 *
 * @param sites houses and benches
 * @param floors the plan
 */
public record KeepHotSpots(SiteStore sites, FloorStore floors) {

    private static final int LONGEST_NOTE = 200;

    /**
     * Adds a hot spot.
     *
     * @param fields {@code house}, {@code kind}, {@code x}, {@code y}, {@code bench}, {@code note}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void add(String nursery, LengthUnit unit, Fields fields) {
        List<Bench> benches = sites.benches(nursery);
        FloorPlan plan = FloorPlan.of(sites.houses(nursery), benches, floors.drawn(nursery));
        Optional<PlacedHouse> house = plan.house(fields.needed("house"));
        if (house.isEmpty()) {
            fields.fault("house", Message.of("settings.place.unknown", fields.text("house")));
        }
        fields.needed("kind");
        Optional<HotSpot.Kind> kind = fields.word("kind", HotSpot.Kind.class);
        Optional<String> bench = Optional.of(fields.text("bench")).filter(code -> !code.isEmpty());
        bench.filter(code -> benches.stream().noneMatch(known -> known.code().equals(code)))
                .ifPresent(
                        code -> fields.fault("bench", Message.of("settings.place.unknown", code)));
        LengthFields lengths = new LengthFields(fields, unit);
        OptionalDouble x = lengths.distance("x");
        OptionalDouble y = lengths.distance("y");
        house.ifPresent(there -> checkInside(there, x, y, lengths));
        String note = fields.text("note");
        if (note.length() > LONGEST_NOTE) {
            fields.fault("note", Message.of("form.too-long", String.valueOf(LONGEST_NOTE)));
        }
        fields.refuseIfAny();
        floors.put(
                nursery,
                new HotSpot(
                        nextCode(plan.hotSpots()),
                        house.orElseThrow().house().code(),
                        bench,
                        kind.orElseThrow(),
                        new HotSpot.Point(x.orElseThrow(), y.orElseThrow()),
                        note));
    }

    private static void checkInside(
            PlacedHouse house, OptionalDouble x, OptionalDouble y, LengthFields lengths) {
        String code = house.house().code();
        if (x.isPresent() && x.getAsDouble() > house.place().length()) {
            lengths.outside("x", code);
        }
        if (y.isPresent() && y.getAsDouble() > house.place().width()) {
            lengths.outside("y", code);
        }
    }

    private static String nextCode(List<HotSpot> spots) {
        int last =
                spots.stream()
                        .map(HotSpot::code)
                        .filter(code -> code.matches("S[0-9]{1,8}"))
                        .mapToInt(code -> Integer.parseInt(code.substring(1)))
                        .max()
                        .orElse(0);
        return "S%03d".formatted(last + 1);
    }

    /** Takes the hot spot named in the field {@code spot} off the plan; its targeted jars stay. */
    public void remove(String nursery, Fields fields) {
        String code = fields.needed("spot");
        fields.refuseIfAny();
        floors.removeHotSpot(nursery, code);
    }
}
