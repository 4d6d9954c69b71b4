package jarwise.usecase;

import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.copy.DataCopy;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/**
 * Copies all data into one file, beside a running server, and checks the copy.
 *
 * @param clock names the copy where nobody does
 */
public record BackUp(InstantSource clock) {

    /** Seconds in UTC, without characters that a file name can't have. */
    static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").withZone(ZoneOffset.UTC);

    /**
     * A copy that was written and read back whole.
     *
     * @param file where it is
     * @param events how many events were in the data when it was begun
     */
    public record Done(Path file, long events) {}

    /**
     * Writes the copy.
     *
     * @param address of the data: a folder, a file, or a PostgreSQL database
     * @param folder where the copy goes when it has no name
     * @param target the copy; empty for a name with date and time
     */
    public Done run(String address, Path folder, Optional<Path> target) {
        String name = "jarwise-" + STAMP.format(clock.instant()) + ".db";
        Path file = target.orElse(folder.resolve(name)).toAbsolutePath();
        try (Database database = Database.openExisting(address)) {
            long events = new EventStore(database).count();
            DataCopy.write(database, file);
            return new Done(file, events);
        }
    }
}
