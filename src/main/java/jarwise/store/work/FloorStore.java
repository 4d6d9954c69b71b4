package jarwise.store.work;

import jarwise.site.floor.FloorPlan.BenchPlace;
import jarwise.site.floor.FloorPlan.Drawn;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.Rectangle;
import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Where houses, benches and known trouble spots were drawn. */
public final class FloorStore {

    private static final List<String> RECORDS_OF_A_BENCH =
            List.of(
                    "occupancy where bench = :bench",
                    "sample where bench = :bench",
                    "planned_jars where bench = :bench",
                    "round_jar where bench = :bench",
                    "application_bench where bench = :bench",
                    "plant_move where (from_bench = :bench or to_bench = :bench)",
                    "hot_spot where bench = :bench");

    private final Database database;

    public FloorStore(Database database) {
        this.database = database;
    }

    /** {@return everything drawn at a site} */
    public Drawn drawn(String nursery) {
        return database.read(
                handle ->
                        new Drawn(
                                houses(handle, nursery),
                                benches(handle, nursery),
                                hotSpots(handle, nursery)));
    }

    /** Draws a house, anew if it was drawn before. */
    public void putHouse(String nursery, String house, Rectangle place) {
        database.write(
                handle -> {
                    placed(Row.of("house_place").with("nursery", nursery), place)
                            .with("house", house)
                            .put(handle, "nursery", "house");
                    return place;
                });
    }

    /** Draws a bench, anew if it was drawn before. */
    public void putBench(String nursery, String bench, BenchPlace drawn) {
        database.write(
                handle -> {
                    placed(Row.of("bench_place").with("nursery", nursery), drawn.place())
                            .with("bench", bench)
                            .with("name", drawn.name())
                            .put(handle, "nursery", "bench");
                    return drawn;
                });
    }

    /** Adds a hot spot, or changes the one with this code. */
    public void put(String nursery, HotSpot spot) {
        database.write(
                handle -> {
                    Row.of("hot_spot")
                            .with("nursery", nursery)
                            .with("code", spot.code())
                            .with("house", spot.house())
                            .with("bench", spot.bench())
                            .with("kind", spot.kind())
                            .with("x", spot.at().x())
                            .with("y", spot.at().y())
                            .with("note", spot.note())
                            .put(handle, "nursery", "code");
                    return spot;
                });
    }

    /** Takes a hot spot off the plan. */
    public void removeHotSpot(String nursery, String code) {
        database.write(
                handle ->
                        handle.createUpdate(
                                        "delete from hot_spot where nursery = :nursery"
                                                + " and code = :code")
                                .bind("nursery", nursery)
                                .bind("code", code)
                                .execute());
    }

    /**
     * Takes a bench away of which nothing is on record: no crop, sample, plan, treatment or move.
     *
     * @return whether it was taken away; false where anything is on record, or there is none
     */
    public boolean removeUnused(String nursery, String bench) {
        return database.write(
                handle -> {
                    for (String where : RECORDS_OF_A_BENCH) {
                        if (count(handle, where, nursery, bench) > 0) {
                            return false;
                        }
                    }
                    delete(handle, "bench_place where bench = :bench", nursery, bench);
                    return delete(handle, "bench where code = :bench", nursery, bench) > 0;
                });
    }

    private static int count(Handle handle, String where, String nursery, String bench) {
        return handle.createQuery("select count(*) from " + where + " and nursery = :nursery")
                .bind("bench", bench)
                .bind("nursery", nursery)
                .mapTo(Integer.class)
                .one();
    }

    private static int delete(Handle handle, String where, String nursery, String bench) {
        return handle.createUpdate("delete from " + where + " and nursery = :nursery")
                .bind("bench", bench)
                .bind("nursery", nursery)
                .execute();
    }

    private static Row placed(Row row, Rectangle place) {
        return row.with("x", place.x())
                .with("y", place.y())
                .with("length", place.length())
                .with("width", place.width());
    }

    private static Map<String, Rectangle> houses(Handle handle, String nursery) {
        return handle
                .createQuery("select * from house_place where nursery = :nursery")
                .bind("nursery", nursery)
                .map((row, context) -> Map.entry(row.getString("house"), place(new Columns(row))))
                .list()
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static Map<String, BenchPlace> benches(Handle handle, String nursery) {
        return handle
                .createQuery("select * from bench_place where nursery = :nursery")
                .bind("nursery", nursery)
                .map(
                        (row, context) ->
                                Map.entry(
                                        row.getString("bench"),
                                        new BenchPlace(
                                                row.getString("name"), place(new Columns(row)))))
                .list()
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    private static List<HotSpot> hotSpots(Handle handle, String nursery) {
        return handle.createQuery("select * from hot_spot where nursery = :nursery order by code")
                .bind("nursery", nursery)
                .map((row, context) -> hotSpot(new Columns(row)))
                .list();
    }

    private static HotSpot hotSpot(Columns row) throws SQLException {
        return new HotSpot(
                row.text("code"),
                row.text("house"),
                row.optional("bench"),
                row.word(HotSpot.Kind.class, "kind"),
                new HotSpot.Point(row.number("x"), row.number("y")),
                row.text("note"));
    }

    private static Rectangle place(Columns row) throws SQLException {
        return new Rectangle(
                row.number("x"), row.number("y"), row.number("length"), row.number("width"));
    }
}
