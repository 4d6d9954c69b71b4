package jarwise.store.guard;

import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.WRITE;

import jarwise.base.Message;
import jarwise.base.Refused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * One server at a time on one set of data. The lock ends with the process or connection that holds
 * it, so that a crashed server leaves none behind.
 */
public final class ServerLock implements AutoCloseable {

    private static final String KEY = "(7008, hashtext(current_schema()))";

    private final Runnable release;

    private ServerLock(Runnable release) {
        this.release = release;
    }

    /**
     * Locks the data in a file, which must not be open for it.
     *
     * @throws Refused if a server has it
     */
    public static ServerLock ofFile(Path file) {
        try {
            FileChannel channel =
                    FileChannel.open(
                            file.resolveSibling(file.getFileName() + ".lock"), CREATE, WRITE);
            if (!locked(channel)) {
                channel.close();
                throw new Refused(Message.of("store.second-server"));
            }
            return new ServerLock(() -> close(channel));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Locks the data in a database on a server.
     *
     * @throws Refused if a server has it
     */
    public static ServerLock ofServer(Jdbi jdbi) {
        Handle holder = jdbi.open();
        boolean locked =
                holder.createQuery("select pg_try_advisory_lock" + KEY).mapTo(Boolean.class).one();
        if (!locked) {
            holder.close();
            throw new Refused(Message.of("store.second-server"));
        }
        return new ServerLock(
                () -> {
                    holder.execute("select pg_advisory_unlock" + KEY);
                    holder.close();
                });
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    private static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Does something while nobody else can serve these data, then lets go. */
    public void whileHeld(Runnable work) {
        try {
            work.run();
        } finally {
            close();
        }
    }

    @Override
    public void close() {
        release.run();
    }
}
