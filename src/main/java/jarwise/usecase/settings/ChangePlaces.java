package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Occupancy;
import jarwise.store.SiteStore;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Adds houses, benches and crop lots, and says what stands where from when to when.
 *
 * @param sites the site
 */
public record ChangePlaces(SiteStore sites) {

    private static final double MOST_AREA_M2 = 10_000_000;
    private static final double MOST_PLANTS = 10_000_000;
    private static final double MOST_POINTS = 10_000;

    /** Adds a house: {@code code}, {@code name}, {@code area}. */
    public void house(String nursery, Fields fields) {
        String code = code(fields, "code");
        List<House> houses = sites.houses(nursery);
        if (houses.stream().anyMatch(house -> house.code().equals(code))) {
            fields.fault("code", Message.of("settings.place.there", code));
        }
        OptionalDouble area = fields.number("area", 0, MOST_AREA_M2);
        fields.refuseIfAny();
        sites.save(nursery, new House(code, fields.text("name"), area), houses.size());
    }

    /** Adds a bench: {@code code}, {@code house}, {@code bay}. */
    public void bench(String nursery, Fields fields) {
        String code = code(fields, "code");
        List<Bench> benches = sites.benches(nursery);
        if (benches.stream().anyMatch(bench -> bench.code().equals(code))) {
            fields.fault("code", Message.of("settings.place.there", code));
        }
        String house = fields.needed("house");
        if (sites.houses(nursery).stream().noneMatch(known -> known.code().equals(house))) {
            fields.fault("house", Message.of("settings.place.unknown", house));
        }
        fields.refuseIfAny();
        sites.save(nursery, new Bench(code, house, fields.text("bay"), benches.size()));
    }

    /** Adds a crop lot: {@code code}, {@code crop}, {@code variety}, {@code supplier}, … */
    public void cropLot(String nursery, Fields fields) {
        String code = code(fields, "code");
        if (lots(nursery).contains(code)) {
            fields.fault("code", Message.of("settings.place.there", code));
        }
        String variety = fields.needed("variety");
        Optional<LocalDate> delivered = fields.day("delivered");
        fields.refuseIfAny();
        sites.save(
                nursery,
                new CropLot(
                        code,
                        fields.text("crop"),
                        variety,
                        Optional.of(fields.text("supplier")).filter(text -> !text.isEmpty()),
                        delivered,
                        !fields.text("edible").isEmpty()));
    }

    /** Says that a lot stands on a bench: {@code bench}, {@code lot}, {@code from}, … */
    public void place(String nursery, Fields fields) {
        String bench = fields.needed("bench");
        if (sites.benches(nursery).stream().noneMatch(known -> known.code().equals(bench))) {
            fields.fault("bench", Message.of("settings.place.unknown", bench));
        }
        String lot = fields.needed("lot");
        if (!lots(nursery).contains(lot)) {
            fields.fault("lot", Message.of("settings.place.unknown", lot));
        }
        fields.needed("from");
        Optional<LocalDate> from = fields.day("from");
        OptionalDouble plants = fields.number("plants", 0, MOST_PLANTS);
        OptionalDouble points = fields.number("points", 0, MOST_POINTS);
        fields.refuseIfAny();
        Optional<LocalDate> estimated = points.isPresent() ? from : Optional.empty();
        sites.save(
                nursery,
                new Occupancy(
                        bench,
                        lot,
                        from.orElseThrow(),
                        Optional.empty(),
                        plants,
                        points,
                        estimated));
    }

    /** Says when a lot left a bench: {@code bench}, {@code lot}, {@code from}, {@code to}. */
    public void endPlace(String nursery, Fields fields) {
        fields.needed("to");
        Optional<LocalDate> to = fields.day("to");
        Optional<Occupancy> stand =
                sites.occupancies(nursery).stream()
                        .filter(known -> known.bench().equals(fields.text("bench")))
                        .filter(known -> known.cropLot().equals(fields.text("lot")))
                        .filter(known -> known.from().toString().equals(fields.text("from")))
                        .findAny();
        if (stand.isEmpty()) {
            fields.fault("to", Message.of("settings.place.gone"));
        } else if (to.map(day -> day.isBefore(stand.get().from())).orElse(false)) {
            fields.fault("to", Message.of("settings.place.order"));
        }
        fields.refuseIfAny();
        Occupancy known = stand.orElseThrow();
        sites.save(
                nursery,
                new Occupancy(
                        known.bench(),
                        known.cropLot(),
                        known.from(),
                        to,
                        known.plants(),
                        known.growingPointsPerPlant(),
                        known.estimatedOn()));
    }

    private List<String> lots(String nursery) {
        return sites.cropLots(nursery).stream().map(CropLot::code).toList();
    }

    private static String code(Fields fields, String name) {
        String code = fields.needed(name);
        if (code.length() > 40) {
            fields.fault(name, Message.of("form.too-long", "40"));
        }
        return code;
    }
}
