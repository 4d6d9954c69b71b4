package jarwise.store.work;

import jarwise.site.Device;
import jarwise.store.Columns;
import jarwise.store.Database;
import jarwise.store.Row;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Devices that were let in. Of their secrets only a hash is kept. */
public final class DeviceStore {

    private final Database database;

    public DeviceStore(Database database) {
        this.database = database;
    }

    /** Adds a device. */
    public void add(String nursery, Device device, String secretHash) {
        database.write(
                handle -> {
                    Row.of("device")
                            .with("nursery", nursery)
                            .with("id", device.id())
                            .with("name", device.name())
                            .with("person", device.person())
                            .with("plain", device.plain())
                            .with("secret_hash", secretHash)
                            .with("let_in_at", device.letInAt())
                            .with("last_seen_at", device.lastSeen())
                            .insert(handle);
                    return device;
                });
    }

    /** {@return the device with this secret, shut out or not} */
    public Optional<Device> find(String nursery, String secretHash) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from device where nursery = :nursery"
                                                + " and secret_hash = :hash")
                                .bind("nursery", nursery)
                                .bind("hash", secretHash)
                                .map((row, context) -> read(new Columns(row)))
                                .findOne());
    }

    /** {@return all devices ever let in, those let in last first} */
    public List<Device> devices(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from device where nursery = :nursery"
                                                + " order by let_in_at desc, id")
                                .bind("nursery", nursery)
                                .map((row, context) -> read(new Columns(row)))
                                .list());
    }

    /** Notes that a device asked for a page. */
    public void seen(String nursery, String id, Instant at) {
        database.write(
                handle ->
                        handle.createUpdate(
                                        "update device set last_seen_at = :at"
                                                + " where nursery = :nursery and id = :id")
                                .bind("at", Row.plain(at))
                                .bind("nursery", nursery)
                                .bind("id", id)
                                .execute());
    }

    /**
     * Shuts a device out; it stays on record.
     *
     * @return whether it was let in until now
     */
    public boolean revoke(String nursery, String id, Instant at) {
        int revoked =
                database.write(
                        handle ->
                                handle.createUpdate(
                                                "update device set revoked_at = :at"
                                                        + " where nursery = :nursery and id = :id"
                                                        + " and revoked_at is null")
                                        .bind("at", Row.plain(at))
                                        .bind("nursery", nursery)
                                        .bind("id", id)
                                        .execute());
        return revoked > 0;
    }

    private static Device read(Columns row) throws SQLException {
        return new Device(
                row.text("id"),
                row.text("name"),
                row.text("person"),
                row.flag("plain"),
                row.instant("let_in_at"),
                row.instant("last_seen_at"),
                row.optionalInstant("revoked_at"));
    }
}
