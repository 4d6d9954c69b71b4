package jarwise.usecase.map;

import jarwise.base.Message;
import jarwise.site.CropLot;
import jarwise.site.Occupancy;
import jarwise.store.Database;
import jarwise.store.SiteStore;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** Brings a crop lot onto a bench, and says when one left. */
public final class ChangeLots {

    private static final double MOST_PLANTS = 10_000_000;
    private static final double MOST_POINTS = 10_000;
    private static final int LONGEST_CODE = 40;

    private final Database database;
    private final SiteStore sites;

    public ChangeLots(Database database) {
        this.database = database;
        this.sites = new SiteStore(database);
    }

    /**
     * Puts a lot on a bench: a new delivery, or more of a lot that is known.
     *
     * @param fields {@code lot}, {@code bench}, {@code from}, {@code plants}, {@code points}; for a
     *     new lot also {@code crop}, {@code variety}, {@code supplier}, {@code delivered}, {@code
     *     edible}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void bring(String nursery, LocalDate today, Fields fields) {
        CropLot lot = lot(nursery, today, fields);
        String bench = fields.needed("bench");
        if (!bench.isEmpty()
                && sites.benches(nursery).stream().noneMatch(one -> one.code().equals(bench))) {
            fields.fault("bench", Message.of("settings.place.unknown", bench));
        }
        fields.needed("from");
        Optional<LocalDate> from = fields.pastDay("from", today);
        OptionalDouble plants = fields.number("plants", 0, MOST_PLANTS);
        OptionalDouble points = fields.number("points", 0, MOST_POINTS);
        from.ifPresent(day -> check(nursery, lot, bench, day, fields));
        fields.refuseIfAny();
        Occupancy stand =
                new Occupancy(
                        bench,
                        lot.code(),
                        from.orElseThrow(),
                        Optional.empty(),
                        plants,
                        points,
                        points.isPresent() ? from : Optional.empty());
        database.inOneTransaction(
                () -> {
                    sites.save(nursery, lot);
                    sites.save(nursery, stand);
                    return stand;
                });
    }

    /** The lot of this number as it is known, else a new one; faults are noted. */
    private CropLot lot(String nursery, LocalDate today, Fields fields) {
        String code = fields.needed("lot");
        if (code.length() > LONGEST_CODE) {
            fields.fault("lot", Message.of("form.too-long", String.valueOf(LONGEST_CODE)));
        }
        return sites.cropLots(nursery).stream()
                .filter(lot -> lot.code().equals(code))
                .findFirst()
                .orElseGet(() -> newLot(code, today, fields));
    }

    private static CropLot newLot(String code, LocalDate today, Fields fields) {
        String variety = fields.needed("variety");
        Optional<LocalDate> delivered = fields.pastDay("delivered", today);
        return new CropLot(
                code.isEmpty() ? "-" : code,
                fields.text("crop"),
                variety.isEmpty() ? "-" : variety,
                Optional.of(fields.text("supplier")).filter(text -> !text.isEmpty()),
                delivered.or(() -> fields.pastDay("from", today)),
                !fields.text("edible").isEmpty());
    }

    private void check(String nursery, CropLot lot, String bench, LocalDate from, Fields fields) {
        lot.deliveredOn()
                .filter(from::isBefore)
                .ifPresent(
                        came ->
                                fields.fault(
                                        "from",
                                        Message.of("map.lot.before", lot.code(), came.toString())));
        Stands stands = new Stands(sites.occupancies(nursery));
        if (stands.open(bench, lot.code()).isPresent()) {
            fields.fault("bench", Message.of("map.lot.there", lot.code(), bench));
        } else {
            stands.lastChange(bench, lot.code())
                    .filter(from::isBefore)
                    .ifPresent(
                            last ->
                                    fields.fault(
                                            "from",
                                            Message.of(
                                                    "map.move.target",
                                                    lot.code(),
                                                    bench,
                                                    last.toString())));
        }
    }

    /**
     * Says when a lot left a bench.
     *
     * @param fields {@code stand} as {@link Stands#key} writes it, {@code to}: the last day there
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void end(String nursery, LocalDate today, Fields fields) {
        Optional<Occupancy> stand = new Stands(sites.occupancies(nursery)).chosen(fields);
        fields.needed("to");
        Optional<LocalDate> to = fields.pastDay("to", today);
        if (stand.isPresent() && to.map(stand.get().from()::isAfter).orElse(false)) {
            fields.fault(
                    "to",
                    Message.of(
                            "map.move.before",
                            stand.get().cropLot(),
                            stand.get().bench(),
                            stand.get().from().toString()));
        }
        fields.refuseIfAny();
        sites.save(nursery, Stands.ended(stand.orElseThrow(), to.orElseThrow()));
    }
}
