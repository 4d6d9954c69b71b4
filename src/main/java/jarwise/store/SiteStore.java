package jarwise.store;

import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Nursery;
import jarwise.site.Occupancy;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;

/** Nurseries and what stands in them. */
public final class SiteStore {

    private final Database database;

    public SiteStore(Database database) {
        this.database = database;
    }

    /** {@return every nursery, by name} */
    public List<Nursery> nurseries() {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select slug, name, zone, language from nursery"
                                                + " order by name")
                                .map(
                                        (row, context) ->
                                                new Nursery(
                                                        row.getString(1),
                                                        row.getString(2),
                                                        ZoneId.of(row.getString(3)),
                                                        row.getString(4)))
                                .list());
    }

    /** Adds a nursery, or changes the name, zone and language of the one with this slug. */
    public void save(Nursery nursery) {
        update(
                "insert into nursery (slug, name, zone, language) values (:slug, :name, :zone,"
                    + " :language) on conflict (slug) do update set name = excluded.name, zone ="
                    + " excluded.zone, language = excluded.language",
                sql ->
                        sql.bind("slug", nursery.slug())
                                .bind("name", nursery.name())
                                .bind("zone", nursery.zone().getId())
                                .bind("language", nursery.language()));
    }

    /** {@return houses in the order of the walk} */
    public List<House> houses(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select code, name, area_m2 from house where"
                                                + " nursery = :nursery order by position, code")
                                .bind("nursery", nursery)
                                .map(
                                        (row, context) ->
                                                new House(
                                                        row.getString(1),
                                                        row.getString(2),
                                                        new Columns(row).optionalNumber("area_m2")))
                                .list());
    }

    /** Adds a house, or changes the one with this code. */
    public void save(String nursery, House house, int position) {
        update(
                "insert into house (nursery, code, name, area_m2, position) values (:nursery,"
                    + " :code, :name, :area, :position) on conflict (nursery, code) do update set"
                    + " name = excluded.name, area_m2 = excluded.area_m2, position ="
                    + " excluded.position",
                sql ->
                        sql.bind("nursery", nursery)
                                .bind("code", house.code())
                                .bind("name", house.name())
                                .bind("area", boxed(house.areaM2()))
                                .bind("position", position));
    }

    /** {@return benches in the order of the walk} */
    public List<Bench> benches(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select code, house, bay, position from bench where"
                                                + " nursery = :nursery order by position, code")
                                .bind("nursery", nursery)
                                .map(
                                        (row, context) ->
                                                new Bench(
                                                        row.getString(1),
                                                        row.getString(2),
                                                        row.getString(3),
                                                        row.getInt(4)))
                                .list());
    }

    /** Adds a bench, or changes the one with this code. */
    public void save(String nursery, Bench bench) {
        update(
                "insert into bench (nursery, code, house, bay, position) values (:nursery, :code,"
                    + " :house, :bay, :position) on conflict (nursery, code) do update set house ="
                    + " excluded.house, bay = excluded.bay, position = excluded.position",
                sql ->
                        sql.bind("nursery", nursery)
                                .bind("code", bench.code())
                                .bind("house", bench.house())
                                .bind("bay", bench.bay())
                                .bind("position", bench.position()));
    }

    /** {@return crop lots, by code} */
    public List<CropLot> cropLots(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select code, crop, variety, supplier, delivered_on,"
                                                + " edible from crop_lot where nursery ="
                                                + " :nursery order by code")
                                .bind("nursery", nursery)
                                .map(
                                        (row, context) ->
                                                new CropLot(
                                                        row.getString(1),
                                                        row.getString(2),
                                                        row.getString(3),
                                                        new Columns(row).optional("supplier"),
                                                        new Columns(row)
                                                                .optionalDay("delivered_on"),
                                                        row.getInt("edible") == 1))
                                .list());
    }

    /** Adds a crop lot, or changes the one with this code. */
    public void save(String nursery, CropLot lot) {
        update(
                "insert into crop_lot (nursery, code, crop, variety, supplier, delivered_on,"
                    + " edible) values (:nursery, :code, :crop, :variety, :supplier, :delivered,"
                    + " :edible) on conflict (nursery, code) do update set crop = excluded.crop,"
                    + " variety = excluded.variety, supplier = excluded.supplier, delivered_on ="
                    + " excluded.delivered_on, edible = excluded.edible",
                sql ->
                        sql.bind("nursery", nursery)
                                .bind("code", lot.code())
                                .bind("crop", lot.crop())
                                .bind("variety", lot.variety())
                                .bind("supplier", lot.supplier().orElse(null))
                                .bind(
                                        "delivered",
                                        lot.deliveredOn().map(LocalDate::toString).orElse(null))
                                .bind("edible", lot.edible() ? 1 : 0));
    }

    /** {@return what stood where and when, by bench and first day} */
    public List<Occupancy> occupancies(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from occupancy where nursery = :nursery"
                                                + " order by bench, from_day, crop_lot")
                                .bind("nursery", nursery)
                                .map(
                                        (row, context) ->
                                                new Occupancy(
                                                        row.getString("bench"),
                                                        row.getString("crop_lot"),
                                                        LocalDate.parse(row.getString("from_day")),
                                                        new Columns(row).optionalDay("to_day"),
                                                        new Columns(row).optionalNumber("plants"),
                                                        new Columns(row)
                                                                .optionalNumber(
                                                                        "growing_points_per_plant"),
                                                        new Columns(row)
                                                                .optionalDay("estimated_on")))
                                .list());
    }

    /** Adds an occupancy, or changes the one of this bench, lot and first day. */
    public void save(String nursery, Occupancy occupancy) {
        update(
                "insert into occupancy (nursery, bench, crop_lot, from_day, to_day, plants,"
                    + " growing_points_per_plant, estimated_on) values (:nursery, :bench, :lot,"
                    + " :from, :to, :plants, :points, :estimated) on conflict (nursery, bench,"
                    + " crop_lot, from_day) do update set to_day = excluded.to_day, plants ="
                    + " excluded.plants, growing_points_per_plant ="
                    + " excluded.growing_points_per_plant, estimated_on = excluded.estimated_on",
                sql ->
                        sql.bind("nursery", nursery)
                                .bind("bench", occupancy.bench())
                                .bind("lot", occupancy.cropLot())
                                .bind("from", occupancy.from().toString())
                                .bind("to", text(occupancy.to()))
                                .bind("plants", boxed(occupancy.plants()))
                                .bind("points", boxed(occupancy.growingPointsPerPlant()))
                                .bind("estimated", text(occupancy.estimatedOn())));
    }

    private void update(String text, java.util.function.Function<Update, Update> binds) {
        database.writing(handle -> binds.apply(handle.createUpdate(text)).execute());
    }

    private static @Nullable Double boxed(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }

    private static @Nullable String text(Optional<LocalDate> day) {
        return day.map(LocalDate::toString).orElse(null);
    }
}
