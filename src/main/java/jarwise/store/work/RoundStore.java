package jarwise.store.work;

import jarwise.plan.Round;
import jarwise.sample.Purpose;
import jarwise.sample.SamplingMethod;
import jarwise.site.PlantMove;
import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Rounds that are planned, and plants that were moved. */
public final class RoundStore {

    private final Database database;

    public RoundStore(Database database) {
        this.database = database;
    }

    /** Plans a round; an earlier plan for the same day and method gives way. */
    public void put(String nursery, Round round) {
        database.write(
                handle -> {
                    handle.createUpdate(
                                    "delete from planned_jars where nursery = :nursery"
                                            + " and day = :day and method = :method")
                            .bind("nursery", nursery)
                            .bind("day", Row.plain(round.day()))
                            .bind("method", Row.plain(round.method()))
                            .execute();
                    for (int i = 0; i < round.stops().size(); i++) {
                        Round.Stop stop = round.stops().get(i);
                        Row.of("planned_jars")
                                .with("nursery", nursery)
                                .with("day", round.day())
                                .with("bench", stop.bench())
                                .with("method", round.method())
                                .with("samples", stop.samples())
                                .with("purpose", stop.purpose())
                                .with("position", i)
                                .insert(handle);
                    }
                    return round;
                });
    }

    /**
     * Plans more samples for the day and method of a round. What is planned already stays; a bench
     * that is planned already gets more, one that is not comes at the end of the walk.
     */
    public void addTo(String nursery, Round more) {
        database.write(
                handle -> {
                    int next = nextPosition(handle, nursery, more);
                    for (Round.Stop stop : more.stops()) {
                        handle.createUpdate(
                                        "insert into planned_jars (nursery, day, bench, method,"
                                                + " samples, purpose, position) values (:nursery,"
                                                + " :day, :bench, :method, :samples, :purpose,"
                                                + " :position) on conflict (nursery, day, bench,"
                                                + " method) do update set samples ="
                                                + " planned_jars.samples + excluded.samples,"
                                                + " purpose = case when excluded.purpose = 'random'"
                                                + " then 'random' else planned_jars.purpose end")
                                .bind("nursery", nursery)
                                .bind("day", Row.plain(more.day()))
                                .bind("bench", stop.bench())
                                .bind("method", Row.plain(more.method()))
                                .bind("samples", stop.samples())
                                .bind("purpose", Row.plain(stop.purpose()))
                                .bind("position", next++)
                                .execute();
                    }
                    return more;
                });
    }

    private static int nextPosition(Handle handle, String nursery, Round round) {
        return handle.createQuery(
                        "select coalesce(max(position), -1) + 1 from planned_jars where nursery ="
                                + " :nursery and day = :day and method = :method")
                .bind("nursery", nursery)
                .bind("day", Row.plain(round.day()))
                .bind("method", Row.plain(round.method()))
                .mapTo(Integer.class)
                .one();
    }

    /** Takes samples off what is planned; a bench for which none is left is not walked. */
    public void takeFrom(String nursery, Round less) {
        database.write(
                handle -> {
                    for (Round.Stop stop : less.stops()) {
                        handle.createUpdate(
                                        "update planned_jars set samples = samples - :samples"
                                                + " where nursery = :nursery and day = :day"
                                                + " and bench = :bench and method = :method")
                                .bind("samples", stop.samples())
                                .bind("nursery", nursery)
                                .bind("day", Row.plain(less.day()))
                                .bind("bench", stop.bench())
                                .bind("method", Row.plain(less.method()))
                                .execute();
                    }
                    return handle.createUpdate(
                                    "delete from planned_jars where nursery = :nursery"
                                            + " and samples <= 0")
                            .bind("nursery", nursery)
                            .execute();
                });
    }

    /** {@return rounds planned from the day {@code from} to the day {@code to}, in order} */
    public List<Round> rounds(String nursery, LocalDate from, LocalDate to) {
        Map<Key, List<Round.Stop>> stops = new LinkedHashMap<>();
        database.read(
                        handle ->
                                handle.createQuery(
                                                "select * from planned_jars where nursery ="
                                                        + " :nursery and day >= :from and day <="
                                                        + " :to order by day, method, position")
                                        .bind("nursery", nursery)
                                        .bind("from", Row.plain(from))
                                        .bind("to", Row.plain(to))
                                        .map((row, context) -> planned(new Columns(row)))
                                        .list())
                .forEach(
                        planned ->
                                stops.computeIfAbsent(planned.key, key -> new ArrayList<>())
                                        .add(planned.stop));
        return stops.entrySet().stream()
                .map(
                        entry ->
                                new Round(
                                        entry.getKey().day,
                                        entry.getKey().method,
                                        entry.getValue()))
                .toList();
    }

    /** Notes that plants were moved; noted twice it stands once. */
    public void add(String nursery, PlantMove move) {
        database.write(
                handle -> {
                    Row.of("plant_move")
                            .with("nursery", nursery)
                            .with("moved_on", move.movedOn())
                            .with("from_bench", move.fromBench())
                            .with("to_bench", move.toBench())
                            .with("crop_lot", move.cropLot())
                            .with("plants", move.plants())
                            .put(
                                    handle,
                                    "nursery",
                                    "moved_on",
                                    "from_bench",
                                    "to_bench",
                                    "crop_lot");
                    return move;
                });
    }

    /** {@return all moves, oldest first} */
    public List<PlantMove> moves(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from plant_move where nursery = :nursery"
                                                + " order by moved_on, from_bench, to_bench")
                                .bind("nursery", nursery)
                                .map((row, context) -> move(new Columns(row)))
                                .list());
    }

    private static Planned planned(Columns row) throws SQLException {
        return new Planned(
                new Key(row.day("day"), row.word(SamplingMethod.class, "method")),
                new Round.Stop(
                        row.text("bench"),
                        row.whole("samples"),
                        row.word(Purpose.class, "purpose")));
    }

    private static PlantMove move(Columns row) throws SQLException {
        return new PlantMove(
                row.day("moved_on"),
                row.text("from_bench"),
                row.text("to_bench"),
                row.text("crop_lot"),
                row.whole("plants"));
    }

    private record Key(LocalDate day, SamplingMethod method) {}

    private record Planned(Key key, Round.Stop stop) {}
}
