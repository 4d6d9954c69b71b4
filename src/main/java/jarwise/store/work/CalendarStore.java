package jarwise.store.work;

import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import jarwise.wire.calendar.CalendarEntry;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What calendars were told, so that the next telling can say what changed, and who may ask. */
public final class CalendarStore {

    private final Database database;

    public CalendarStore(Database database) {
        this.database = database;
    }

    /** {@return every entry that calendars were told, by what it is about} */
    public Map<String, CalendarEntry> entries(String nursery) {
        Map<String, CalendarEntry> entries = new TreeMap<>();
        database.read(
                        handle ->
                                handle.createQuery(
                                                "select * from calendar_entry where nursery ="
                                                        + " :nursery order by about")
                                        .bind("nursery", nursery)
                                        .map(
                                                (row, context) ->
                                                        Map.entry(
                                                                row.getString("about"),
                                                                entry(new Columns(row))))
                                        .list())
                .forEach(one -> entries.put(one.getKey(), one.getValue()));
        return entries;
    }

    /** Keeps an entry in the place of its earlier version. */
    public void put(String nursery, String about, CalendarEntry entry) {
        database.write(
                handle -> {
                    Row.of("calendar_entry")
                            .with("nursery", nursery)
                            .with("about", about)
                            .with("uid", entry.uid())
                            .with("sequence", entry.version().sequence())
                            .with("changed_at", entry.version().changedAt())
                            .with("cancelled", entry.version().cancelled())
                            .with("starts_at", entry.times().start())
                            .with("ends_at", entry.times().end())
                            .with("summary", entry.text().summary())
                            .with("description", entry.text().description())
                            .with("place", entry.text().place())
                            .with("category", entry.text().category())
                            .put(handle, "nursery", "about");
                    return entry;
                });
    }

    /** Forgets entries that ended before {@code end}. */
    public void forget(String nursery, Instant end) {
        database.write(
                handle ->
                        handle.createUpdate(
                                        "delete from calendar_entry where nursery = :nursery"
                                                + " and ends_at < :end")
                                .bind("nursery", nursery)
                                .bind("end", Row.plain(end))
                                .execute());
    }

    /** Opens the calendar under a secret; an earlier secret is void. */
    public void open(String nursery, String token, Instant at) {
        database.write(
                handle -> {
                    close(nursery, at);
                    Row.of("calendar_feed")
                            .with("nursery", nursery)
                            .with("token", token)
                            .with("opened_at", at)
                            .insert(handle);
                    return token;
                });
    }

    /** Makes the secret of the calendar void. */
    public void close(String nursery, Instant at) {
        database.write(
                handle ->
                        handle.createUpdate(
                                        "update calendar_feed set closed_at = :at"
                                                + " where nursery = :nursery and closed_at is null")
                                .bind("at", Row.plain(at))
                                .bind("nursery", nursery)
                                .execute());
    }

    /** {@return the secret under which the calendar is open; empty while it is not} */
    public Optional<String> token(String nursery) {
        List<String> open =
                database.read(
                        handle ->
                                handle.createQuery(
                                                "select token from calendar_feed where nursery ="
                                                        + " :nursery and closed_at is null")
                                        .bind("nursery", nursery)
                                        .mapTo(String.class)
                                        .list());
        return open.stream().findFirst();
    }

    private static CalendarEntry entry(Columns row) throws SQLException {
        return new CalendarEntry(
                row.text("uid"),
                new CalendarEntry.Times(row.instant("starts_at"), row.instant("ends_at")),
                new CalendarEntry.Text(
                        row.text("summary"),
                        row.text("description"),
                        row.text("place"),
                        row.text("category")),
                new CalendarEntry.Version(
                        row.whole("sequence"), row.instant("changed_at"), row.flag("cancelled")));
    }
}
