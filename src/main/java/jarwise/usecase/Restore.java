package jarwise.usecase;

import jarwise.store.Database;
import jarwise.store.copy.DataCopy;
import jarwise.store.guard.ServerLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;

/**
 * Puts a copy in the place of the data. A damaged copy is refused; data that were there are moved
 * aside, not overwritten; a running server is not pulled from under its users.
 *
 * @param clock names what is moved aside
 */
public record Restore(InstantSource clock) {

    /**
     * Restores.
     *
     * @param copy a file that {@link BackUp} wrote, from either database
     * @param address where the data belong: a folder, a file, or an empty PostgreSQL database
     * @return where the data went that were there before; empty where there were none
     */
    public Optional<Path> run(Path copy, String address) {
        Optional<Path> file = Database.fileAt(address);
        return file.isPresent() ? intoFile(copy, file.get()) : intoServer(copy, address);
    }

    private static Optional<Path> intoServer(Path copy, String address) {
        try (Database database = Database.open(address)) {
            database.lockForServer().whileHeld(() -> DataCopy.restore(copy, database));
        }
        return Optional.empty();
    }

    private Optional<Path> intoFile(Path copy, Path file) {
        if (!Files.exists(file)) {
            DataCopy.restore(copy, file, file);
            return Optional.empty();
        }
        String stamp = BackUp.STAMP.format(clock.instant());
        Path aside = file.resolveSibling("jarwise-before-" + stamp + ".db");
        ServerLock.ofFile(file).whileHeld(() -> DataCopy.restore(copy, file, aside));
        return Optional.of(aside);
    }
}
