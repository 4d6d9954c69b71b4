package jarwise.store;

import jarwise.base.InvalidInput;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Brings the tables up to date. The migration library is loaded only when the version differs: it
 * would cost a third of the time to the first page.
 */
final class Schema {

    /** Version of the newest file in {@code sql/}; a test holds the two together. */
    static final String NEWEST = "5";

    private final DataSource source;
    private final Jdbi jdbi;
    private final Dialect dialect;

    Schema(DataSource source, Jdbi jdbi, Dialect dialect) {
        this.source = source;
        this.jdbi = jdbi;
        this.dialect = dialect;
    }

    void bringUpToDate() {
        String version = version();
        if (version.equals(NEWEST)) {
            return;
        }
        if (!version.isEmpty() && Integer.parseInt(version) > Integer.parseInt(NEWEST)) {
            throw new InvalidInput(
                    ("These data were written by a newer Jarwise (tables %s, this program knows"
                                    + " %s). Maybe an old copy of the program was started.")
                            .formatted(version, NEWEST));
        }
        migrate("classpath:sql");
    }

    /** Each file is one transaction with its note of the version: all of it happens, or none. */
    void migrate(String... folders) {
        Flyway.configure(Schema.class.getClassLoader())
                .dataSource(source)
                .locations(folders)
                .table("schema_history")
                .load()
                .migrate();
    }

    /** The version of the tables; empty when there are none yet. */
    String version() {
        return jdbi.withHandle(handle -> hasHistory(handle) ? version(handle) : "");
    }

    private boolean hasHistory(Handle handle) {
        return handle.createQuery(dialect.hasHistory()).mapTo(Integer.class).one() > 0;
    }

    private static String version(Handle handle) {
        return handle.createQuery(
                        "select version from schema_history where success = true"
                                + " order by installed_rank desc limit 1")
                .mapTo(String.class)
                .findOne()
                .orElse("");
    }
}
