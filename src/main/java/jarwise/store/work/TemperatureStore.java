package jarwise.store.work;

import jarwise.phenology.TemperatureReading;
import jarwise.phenology.TemperatureUnit;
import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Readings of the temperature loggers. */
public final class TemperatureStore {

    private final Database database;

    public TemperatureStore(Database database) {
        this.database = database;
    }

    /**
     * Adds readings, all or none. One that is there already, by sensor and time, is left as it is.
     *
     * @return how many were new
     */
    public int add(String nursery, Collection<TemperatureReading> readings) {
        if (readings.isEmpty()) {
            return 0;
        }
        return database.write(
                handle -> {
                    PreparedBatch batch =
                            handle.prepareBatch(
                                    "insert into temperature (nursery, house, sensor, at, celsius,"
                                            + " unit_delivered) values (:nursery, :house, :sensor,"
                                            + " :at, :celsius, :unit) on conflict do nothing");
                    for (TemperatureReading reading : readings) {
                        batch.bind("nursery", nursery)
                                .bind("house", reading.house())
                                .bind("sensor", reading.sensor())
                                .bind("at", Row.plain(reading.at()))
                                .bind("celsius", reading.celsius())
                                .bind("unit", Row.plain(reading.deliveredIn()))
                                .add();
                    }
                    int added = 0;
                    for (int rows : batch.execute()) {
                        added += rows;
                    }
                    return added;
                });
    }

    /** {@return readings of a house from {@code from} and before {@code to}, oldest first} */
    public List<TemperatureReading> of(String nursery, String house, Instant from, Instant to) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from temperature where nursery = :nursery"
                                                + " and house = :house and at >= :from and at < :to"
                                                + " order by at, sensor")
                                .bind("nursery", nursery)
                                .bind("house", house)
                                .bind("from", Row.plain(from))
                                .bind("to", Row.plain(to))
                                .map((row, context) -> read(new Columns(row)))
                                .list());
    }

    private static TemperatureReading read(Columns row) throws SQLException {
        return new TemperatureReading(
                row.text("house"),
                row.text("sensor"),
                row.instant("at"),
                row.number("celsius"),
                row.word(TemperatureUnit.class, "unit_delivered"));
    }
}
