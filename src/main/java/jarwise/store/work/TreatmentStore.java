package jarwise.store.work;

import jarwise.base.InvalidInput;
import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.treatment.Release;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The ledger of applications and releases. Nothing in it is changed; errors are withdrawn. */
public final class TreatmentStore {

    private final Database database;

    public TreatmentStore(Database database) {
        this.database = database;
    }

    /**
     * Writes an application into the ledger.
     *
     * @throws InvalidInput if its name is taken
     */
    public void add(String nursery, Application application, Instant recordedAt) {
        database.write(
                handle -> {
                    if (find(handle, nursery, application.id()).isPresent()) {
                        throw new InvalidInput(
                                "There is already an application %s. Maybe it was saved before."
                                        .formatted(application.id()));
                    }
                    insert(handle, nursery, application, recordedAt);
                    return application;
                });
    }

    /** Withdraws an application written in error; it stays on record and counts no more. */
    public void withdraw(String nursery, String id, Instant at, String by, String reason) {
        int withdrawn =
                database.write(
                        handle ->
                                handle.createUpdate(
                                                "update application set withdrawn_at = :at,"
                                                        + " withdrawn_by = :by,"
                                                        + " withdrawn_reason = :reason"
                                                        + " where nursery = :nursery and id = :id"
                                                        + " and withdrawn_at is null")
                                        .bind("at", Row.plain(at))
                                        .bind("by", by)
                                        .bind("reason", reason)
                                        .bind("nursery", nursery)
                                        .bind("id", id)
                                        .execute());
        if (withdrawn == 0) {
            throw new InvalidInput(
                    "There is no application %s to withdraw. Maybe it was withdrawn before."
                            .formatted(id));
        }
    }

    /** {@return applications that count, started from {@code from} and before {@code to}} */
    public List<Application> applications(String nursery, Instant from, Instant to) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from application where nursery = :nursery"
                                                + " and withdrawn_at is null"
                                                + " and started_at >= :from and started_at < :to"
                                                + " order by started_at, id")
                                .bind("nursery", nursery)
                                .bind("from", Row.plain(from))
                                .bind("to", Row.plain(to))
                                .map((row, context) -> read(handle, nursery, new Columns(row)))
                                .list());
    }

    /** Writes a release; written twice it stands once. */
    public void add(String nursery, Release release) {
        database.write(
                handle -> {
                    Row.of("beneficial_release")
                            .with("nursery", nursery)
                            .with("released_on", release.releasedOn())
                            .with("organism", release.organism())
                            .with("place", release.place())
                            .with("amount", release.amount())
                            .put(handle, "nursery", "released_on", "organism", "place");
                    return release;
                });
    }

    /** {@return all releases, oldest first} */
    public List<Release> releases(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from beneficial_release where nursery = :nursery"
                                                + " order by released_on, organism, place")
                                .bind("nursery", nursery)
                                .map((row, context) -> release(new Columns(row)))
                                .list());
    }

    private static Release release(Columns row) throws SQLException {
        return new Release(
                row.day("released_on"),
                row.text("organism"),
                row.text("place"),
                row.text("amount"));
    }

    private static void insert(
            Handle handle, String nursery, Application application, Instant recordedAt) {
        Row.of("application")
                .with("nursery", nursery)
                .with("id", application.id())
                .with("house", application.house())
                .with("started_at", application.started())
                .with("ended_at", application.ended())
                .with("amount", application.amount())
                .with("applicator", application.applicator())
                .with("note", application.note())
                .with("recorded_at", recordedAt)
                .insert(handle);
        for (String bench : application.benches()) {
            Row.of("application_bench")
                    .with("nursery", nursery)
                    .with("application", application.id())
                    .with("bench", bench)
                    .insert(handle);
        }
        List<ProductUse> products = application.products();
        for (int i = 0; i < products.size(); i++) {
            insert(handle, nursery, application.id(), products.get(i), i);
        }
    }

    private static void insert(
            Handle handle, String nursery, String application, ProductUse use, int position) {
        Row.of("application_product")
                .with("nursery", nursery)
                .with("application", application)
                .with("product", use.product())
                .with("registration_number", use.registrationNumber())
                .with("mode_of_action_groups", String.join(",", use.modeOfActionGroups()))
                .with("reentry_hours", use.reentryHours())
                .with("label_most_uses", use.labelMostUses())
                .with("label_least_days", use.labelLeastDays())
                .with("position", position)
                .insert(handle);
    }

    private static Optional<String> find(Handle handle, String nursery, String id) {
        return handle.createQuery(
                        "select id from application where nursery = :nursery and id = :id")
                .bind("nursery", nursery)
                .bind("id", id)
                .mapTo(String.class)
                .findOne();
    }

    private static Application read(Handle handle, String nursery, Columns row)
            throws SQLException {
        String id = row.text("id");
        return new Application(
                id,
                row.text("house"),
                new HashSet<>(benches(handle, nursery, id)),
                row.instant("started_at"),
                row.optionalInstant("ended_at"),
                products(handle, nursery, id),
                row.text("amount"),
                row.text("applicator"),
                row.text("note"));
    }

    private static List<String> benches(Handle handle, String nursery, String id) {
        return handle.createQuery(
                        "select bench from application_bench where nursery = :nursery"
                                + " and application = :id order by bench")
                .bind("nursery", nursery)
                .bind("id", id)
                .mapTo(String.class)
                .list();
    }

    private static List<ProductUse> products(Handle handle, String nursery, String id) {
        return handle.createQuery(
                        "select * from application_product where nursery = :nursery"
                                + " and application = :id order by position")
                .bind("nursery", nursery)
                .bind("id", id)
                .map((row, context) -> product(new Columns(row)))
                .list();
    }

    private static ProductUse product(Columns row) throws SQLException {
        String groups = row.text("mode_of_action_groups");
        return new ProductUse(
                row.text("product"),
                row.optional("registration_number"),
                groups.isEmpty() ? List.of() : List.of(groups.split(",")),
                row.optionalNumber("reentry_hours"),
                row.optionalWhole("label_most_uses"),
                row.optionalWhole("label_least_days"));
    }
}
