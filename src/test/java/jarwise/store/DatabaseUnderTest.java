package jarwise.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;

/** Both databases that stores must work with: the real ones, each test with tables of its own. */
public enum DatabaseUnderTest {
    SQLITE {
        @Override
        public String freshAddress(Path folder) {
            try {
                return Files.createTempDirectory(folder, "data").toString();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    },
    POSTGRESQL {
        @Override
        public String freshAddress(Path folder) {
            String schema = "t" + ProcessHandle.current().pid() + "_" + NEXT.incrementAndGet();
            try (Connection connection = DriverManager.getConnection(Postgres.ADDRESS);
                    Statement statement = connection.createStatement()) {
                statement.execute("create schema " + schema);
            } catch (SQLException e) {
                throw new IllegalStateException("No schema for a test: " + e.getMessage(), e);
            }
            return Postgres.ADDRESS + "&currentSchema=" + schema;
        }
    };

    private static final AtomicInteger NEXT = new AtomicInteger();

    /** {@return the address of an empty database; {@code folder} is where a file may lie} */
    public abstract String freshAddress(Path folder);

    /** {@return an empty database with all tables} */
    public Database fresh(Path folder) {
        return Database.open(freshAddress(folder));
    }

    /**
     * One PostgreSQL server for all tests: the one at {@code JARWISE_TEST_POSTGRES} (an address
     * with {@code ?user=…}), or one that is started from the build's own libraries and ends with
     * it.
     */
    private static final class Postgres {

        static final String ADDRESS = address();

        private static String address() {
            String given = System.getenv("JARWISE_TEST_POSTGRES");
            if (given != null) {
                return given;
            }
            try {
                // Closed by the library's own shutdown hook.
                EmbeddedPostgres server = EmbeddedPostgres.builder().start();
                return server.getJdbcUrl("postgres", "postgres");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
