package jarwise.store.guard;

import jarwise.base.Message;
import jarwise.base.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * A look at a data file before anything may write to it. Opening for writing would already change a
 * file that belongs to another program, or spoil what can still be saved of a damaged one.
 */
public final class DataFile {

    /** Length of the header of every database file; SQLite takes a file of one byte for empty. */
    private static final int HEADER_BYTES = 100;

    private DataFile() {}

    /**
     * Reads the list of tables and the first row of each: enough to tell a foreign file, one that
     * was cut off, and one with a damaged beginning. The whole file is read only by verify.
     *
     * @throws Refused if the file is there and is no whole data file of this program
     */
    public static void refuseUnlessOurs(Path file) throws IOException {
        if (!Files.isRegularFile(file) || Files.size(file) == 0) {
            return;
        }
        if (Files.size(file) < HEADER_BYTES) {
            throw notOurs(file, null);
        }
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        config.setBusyTimeout(5000);
        try (Connection connection = config.createConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            refuseUnlessOurs(statement, file);
        } catch (SQLException e) {
            if (isDamage(e)) {
                throw notOurs(file, e);
            }
            // Busy, locked away, on a write-protected disk: opening it will say which.
        }
    }

    private static void refuseUnlessOurs(Statement statement, Path file) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (ResultSet rows =
                statement.executeQuery("select name from sqlite_master where type = 'table'")) {
            while (rows.next()) {
                tables.add(rows.getString(1));
            }
        }
        if (!tables.isEmpty() && !tables.contains("schema_history")) {
            throw notOurs(file, null);
        }
        for (String table : tables) {
            statement.executeQuery("select * from \"" + table + "\" limit 1").close();
        }
        if (!tables.isEmpty() && hasUnreadableVersion(statement)) {
            throw notOurs(file, null);
        }
    }

    private static boolean hasUnreadableVersion(Statement statement) throws SQLException {
        try (ResultSet rows =
                statement.executeQuery("select version from schema_history where success = true")) {
            while (rows.next()) {
                String version = rows.getString(1);
                if (version == null || !version.matches("\\d{1,6}")) {
                    return true;
                }
            }
            return false;
        }
    }

    private static boolean isDamage(SQLException fault) {
        return fault instanceof SQLiteException sqlite
                && switch (sqlite.getResultCode()) {
                    case SQLITE_NOTADB, SQLITE_CORRUPT, SQLITE_ERROR -> true;
                    default -> primary(sqlite) == SQLiteErrorCode.SQLITE_CORRUPT;
                };
    }

    private static SQLiteErrorCode primary(SQLiteException fault) {
        return SQLiteErrorCode.getErrorCode(fault.getResultCode().code & 0xff);
    }

    private static Refused notOurs(Path file, @Nullable SQLException why) {
        Refused refused = new Refused(Message.of("store.damaged-file", file.toString()));
        if (why != null) {
            refused.initCause(why);
        }
        return refused;
    }
}
