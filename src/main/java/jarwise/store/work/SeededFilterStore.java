package jarwise.store.work;

import jarwise.sample.SampleCode;
import jarwise.sample.SeededFilter;
import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import jarwise.wire.PlacedJson;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Filters of which is known what lies on them. */
public final class SeededFilterStore {

    private final Database database;

    public SeededFilterStore(Database database) {
        this.database = database;
    }

    /** Adds a filter; one with the same code is a fault: what lies on it never changes. */
    public void put(String nursery, SeededFilter filter, Instant recordedAt) {
        database.write(
                handle -> {
                    Row.of("seeded_filter")
                            .with("nursery", nursery)
                            .with("code", filter.code().text())
                            .with("name", filter.name())
                            .with("placed", PlacedJson.write(filter.placed()))
                            .with("made_on", filter.madeOn())
                            .with("made_by", filter.madeBy())
                            .with("retired_on", filter.retiredOn())
                            .with("recorded_at", recordedAt)
                            .insert(handle);
                    return filter;
                });
    }

    /** {@return the filter with this code, retired or not} */
    public Optional<SeededFilter> find(String nursery, SampleCode code) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from seeded_filter where nursery = :nursery"
                                                + " and code = :code")
                                .bind("nursery", nursery)
                                .bind("code", code.text())
                                .map((row, context) -> read(new Columns(row)))
                                .findOne());
    }

    /** {@return every filter ever made, the newest first, then by code} */
    public List<SeededFilter> all(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from seeded_filter where nursery = :nursery"
                                                + " order by made_on desc, code")
                                .bind("nursery", nursery)
                                .map((row, context) -> read(new Columns(row)))
                                .list());
    }

    /**
     * Retires a filter: from a day on it is no longer read. Its readings stay.
     *
     * @return whether it was in use until now
     */
    public boolean retire(String nursery, SampleCode code, LocalDate day) {
        int retired =
                database.write(
                        handle ->
                                handle.createUpdate(
                                                "update seeded_filter set retired_on = :day"
                                                        + " where nursery = :nursery"
                                                        + " and code = :code"
                                                        + " and retired_on is null")
                                        .bind("day", day.toString())
                                        .bind("nursery", nursery)
                                        .bind("code", code.text())
                                        .execute());
        return retired > 0;
    }

    private static SeededFilter read(Columns row) throws SQLException {
        return new SeededFilter(
                new SampleCode(row.text("code")),
                row.text("name"),
                PlacedJson.read(row.text("placed")),
                row.day("made_on"),
                row.text("made_by"),
                row.optionalDay("retired_on"));
    }
}
