package jarwise.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.store.guard.DataFile;
import jarwise.store.guard.ServerLock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/**
 * The database of one set of data: a file of our own, or a PostgreSQL server that many share. The
 * file is set up to survive a power cut: write-ahead log, and each commit is flushed to the disk.
 */
public final class Database implements AutoCloseable {

    private static final String FILE = "jarwise.db";

    private final HikariDataSource pool;
    private final Jdbi jdbi;
    private final Dialect dialect;
    private final Optional<Path> file;

    // One for each database, not for the program: tests open several in one thread.
    @SuppressWarnings("ThreadLocalUsage")
    private final ThreadLocal<@Nullable Handle> running = new ThreadLocal<>();

    private Database(HikariDataSource pool, Dialect dialect, Optional<Path> file) {
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
        this.dialect = dialect;
        this.file = file;
    }

    /**
     * Opens a database and brings its tables up to date.
     *
     * @param address a folder or a {@code .db} file, made if it is not there; or the address of a
     *     PostgreSQL database, {@code postgresql://…} or {@code jdbc:postgresql://…}
     * @throws InvalidInput if it cannot be opened, with what to try
     */
    public static Database open(String address) {
        Database database = connect(address);
        try {
            database.schema().bringUpToDate();
            return database;
        } catch (RuntimeException e) {
            database.close();
            throw cannotOpen(address, e);
        }
    }

    /**
     * Opens data that must be there already: a copy or a check of data that a mistyped address has
     * just made would say that all is well.
     *
     * @throws Refused if there are none
     */
    public static Database openExisting(String address) {
        Optional<Path> file = fileAt(address);
        if (file.isPresent() && !Files.exists(file.get())) {
            throw new Refused(Message.of("store.no-data", file.get().toString()));
        }
        return open(address);
    }

    private static Database connect(String address) {
        try {
            return address.contains("postgresql://") ? postgres(address) : sqlite(address);
        } catch (IOException | RuntimeException e) {
            throw cannotOpen(address, e);
        }
    }

    private static InvalidInput cannotOpen(String address, Exception cause) {
        RuntimeException told = cause instanceof JdbiException e ? StoreFaults.told(e) : null;
        if (told instanceof Refused refused) {
            return refused;
        }
        if (cause instanceof InvalidInput known) {
            return known;
        }
        Throwable root = cause;
        while (root.getCause() != null) {
            root = root.getCause();
        }
        InvalidInput fault =
                new InvalidInput(
                        ("The data at '%s' can't be opened: %s. Maybe the folder may not"
                                        + " be written, the file is damaged (then restore a copy),"
                                        + " or the database server is not running.")
                                .formatted(withoutPassword(address), root.getMessage()));
        fault.initCause(cause);
        return fault;
    }

    private static String withoutPassword(String address) {
        return address.replaceAll("(password=)[^&]*", "$1…").replaceAll(":[^:@/]+@", ":…@");
    }

    /**
     * {@return the file that holds the data at an address; empty for a database server}
     *
     * @param address as in {@link #open}
     */
    public static Optional<Path> fileAt(String address) {
        if (address.contains("postgresql://")) {
            return Optional.empty();
        }
        Path place = Path.of(address).toAbsolutePath();
        return Optional.of(address.endsWith(".db") ? place : place.resolve(FILE));
    }

    private static Database sqlite(String address) throws IOException {
        Path file = fileAt(address).orElseThrow();
        Files.createDirectories(file.getParent());
        DataFile.refuseUnlessOurs(file);
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + file);
        config.addDataSourceProperty("journal_mode", "WAL");
        config.addDataSourceProperty("synchronous", "FULL");
        config.addDataSourceProperty("foreign_keys", "true");
        config.addDataSourceProperty("busy_timeout", "5000");
        config.addDataSourceProperty("transaction_mode", "IMMEDIATE");
        config.setMaximumPoolSize(4);
        config.setMinimumIdle(0);
        return new Database(new HikariDataSource(config), Dialect.SQLITE, Optional.of(file));
    }

    private static Database postgres(String address) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(address.startsWith("jdbc:") ? address : "jdbc:" + address);
        config.setMaximumPoolSize(8);
        config.setMinimumIdle(0);
        config.setConnectionTimeout(5000);
        return new Database(new HikariDataSource(config), Dialect.POSTGRESQL, Optional.empty());
    }

    /** {@return the file of the data, where they are a file of our own} */
    public Optional<Path> file() {
        return file;
    }

    /**
     * Does several things to the data, all or nothing: what stores do inside belongs together.
     *
     * @param work what to do; a fault in it takes back everything
     */
    public <T> T inOneTransaction(Supplier<T> work) {
        return write(handle -> work.get());
    }

    /** Reads, inside the running transaction of this thread where there is one. */
    public <T> T read(Function<Handle, T> work) {
        Handle joined = running.get();
        if (joined != null) {
            return work.apply(joined);
        }
        try {
            return jdbi.withHandle(work::apply);
        } catch (JdbiException e) {
            throw StoreFaults.told(e);
        }
    }

    /** Writes in one transaction, the running one of this thread where there is one. */
    public <T> T write(Function<Handle, T> work) {
        Handle joined = running.get();
        if (joined != null) {
            return work.apply(joined);
        }
        try {
            return jdbi.inTransaction(
                    handle -> {
                        running.set(handle);
                        try {
                            return work.apply(handle);
                        } finally {
                            running.remove();
                        }
                    });
        } catch (JdbiException e) {
            throw StoreFaults.told(e);
        }
    }

    /**
     * Keeps a second server away from these data until it is closed. Commands that run once, such
     * as a backup, work beside a server and need no lock.
     *
     * @throws Refused if another server has them
     */
    public ServerLock lockForServer() {
        return file.isPresent() ? ServerLock.ofFile(file.get()) : ServerLock.ofServer(jdbi);
    }

    /** The same for writes that give nothing back. */
    void writing(Consumer<Handle> work) {
        write(
                handle -> {
                    work.accept(handle);
                    return true;
                });
    }

    Jdbi jdbi() {
        return jdbi;
    }

    Schema schema() {
        return new Schema(pool, jdbi, dialect);
    }

    Dialect dialect() {
        return dialect;
    }

    @Override
    public void close() {
        pool.close();
    }
}
