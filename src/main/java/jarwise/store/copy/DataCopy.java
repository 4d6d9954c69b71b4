package jarwise.store.copy;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.store.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/**
 * A copy of all data in one file, whichever database they are in. It is checked after writing, and
 * appears under its name only when it is whole.
 */
public final class DataCopy {

    private DataCopy() {}

    /**
     * Writes a copy beside a running server.
     *
     * @param target a file that is not there yet
     * @throws Refused if it is there, can't be written, or is not whole when read back
     */
    public static void write(Database database, Path target) {
        if (Files.exists(target)) {
            throw new Refused(Message.of("copy.exists", target.toString()));
        }
        Path draft = besideOf(target, ".unfinished.db");
        try {
            Files.createDirectories(draft.toAbsolutePath().getParent());
            Files.deleteIfExists(draft);
            if (database.file().isPresent()) {
                database.read(handle -> handle.execute("vacuum into ?", draft.toString()));
            } else {
                try (Database file = Database.open(draft.toString())) {
                    TableCopy.copy(database, file, file);
                }
            }
            refuseIfDamaged(draft, target);
            Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw failed(e);
        } finally {
            remove(draft);
        }
    }

    /**
     * Puts a copy in the place of the data in a file. The old file is moved aside, never lost.
     *
     * @param copy the copy, which is read and left as it is
     * @param file where the data belong; a server must not be running on them
     * @param aside where the old file goes, if there is one
     */
    public static void restore(Path copy, Path file, Path aside) {
        refuseIfMissing(copy);
        Path draft = besideOf(file, ".restoring.db");
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.copy(copy, draft, StandardCopyOption.REPLACE_EXISTING);
            refuseIfDamaged(draft, copy);
            if (Files.exists(file)) {
                Files.move(file, aside);
                moveLog(file, aside, "-wal");
                moveLog(file, aside, "-shm");
            }
            Files.move(draft, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw failed(e);
        } finally {
            remove(draft);
        }
    }

    /**
     * Puts a copy into a database on a server.
     *
     * @throws Refused if the copy is damaged or the database has any row
     */
    public static void restore(Path copy, Database database) {
        refuseIfMissing(copy);
        try {
            Path draft = Files.createTempFile("jarwise", ".restoring.db");
            try {
                Files.copy(copy, draft, StandardCopyOption.REPLACE_EXISTING);
                refuseIfDamaged(draft, copy);
                try (Database file = Database.open(draft.toString())) {
                    if (!TableCopy.isEmpty(database, file)) {
                        throw new Refused(Message.of("copy.not-empty"));
                    }
                    TableCopy.copy(file, database, file);
                }
            } finally {
                remove(draft);
            }
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private static void refuseIfMissing(Path copy) {
        if (!Files.isRegularFile(copy)) {
            throw new Refused(Message.of("copy.missing", copy.toString()));
        }
    }

    /** Opens the draft, not the copy: opening may bring its tables up to date. */
    private static void refuseIfDamaged(Path draft, Path named) {
        List<Message> faults;
        try (Database opened = Database.open(draft.toString())) {
            faults = new DataCheck(opened).faults();
        } catch (InvalidInput e) {
            throw damaged(named, e);
        }
        if (!faults.isEmpty()) {
            throw damaged(named, new Refused(faults.get(0)));
        }
    }

    private static Refused damaged(Path named, InvalidInput why) {
        Refused damaged = new Refused(Message.of("copy.damaged", named.toString()));
        damaged.initCause(why);
        return damaged;
    }

    private static Refused failed(IOException why) {
        Refused failed = new Refused(Message.of("copy.failed", String.valueOf(why.getMessage())));
        failed.initCause(why);
        return failed;
    }

    private static Path besideOf(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }

    private static void moveLog(Path file, Path aside, String ending) throws IOException {
        Path log = besideOf(file, ending);
        if (Files.exists(log)) {
            Files.move(log, besideOf(aside, ending));
        }
    }

    private static void remove(Path draft) {
        try {
            for (String ending : List.of("", "-wal", "-shm")) {
                Files.deleteIfExists(besideOf(draft, ending));
            }
        } catch (IOException e) {
            // What is left of a draft is named so, and the next copy replaces it.
        }
    }
}
