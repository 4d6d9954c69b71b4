package jarwise.store.copy;

import jarwise.store.Database;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Carries every row of every table from one database into another, empty one. */
final class TableCopy {

    private static final int ROWS_AT_ONCE = 1_000;

    private TableCopy() {}

    /**
     * Copies everything, as it stood at one moment.
     *
     * @param file whichever of the two is a file of our own: it knows the tables in the order in
     *     which they were made, so that a row never comes before what it refers to
     */
    static void copy(Database from, Database to, Database file) {
        List<String> tables = tables(file);
        from.write(
                source -> {
                    if (from.file().isEmpty()) {
                        source.execute("set transaction isolation level repeatable read read only");
                    }
                    return to.write(
                            target -> {
                                tables.forEach(table -> copy(source, target, table));
                                return tables;
                            });
                });
    }

    /** {@return whether no table has a row} */
    static boolean isEmpty(Database database, Database file) {
        return tables(file).stream()
                .allMatch(
                        table ->
                                database.read(
                                        handle ->
                                                handle.createQuery(
                                                                "select 1 from "
                                                                        + table
                                                                        + " limit 1")
                                                        .mapTo(Integer.class)
                                                        .findOne()
                                                        .isEmpty()));
    }

    static List<String> tables(Database file) {
        return file.read(
                handle ->
                        handle.createQuery(
                                        "select name from sqlite_master where type = 'table' and"
                                                + " name not like 'sqlite%' and name <>"
                                                + " 'schema_history' order by rowid")
                                .mapTo(String.class)
                                .list());
    }

    private static void copy(Handle source, Handle target, String table) {
        source.createQuery("select * from " + table)
                .setFetchSize(ROWS_AT_ONCE)
                .scanResultSet(
                        (rows, context) -> {
                            carry(rows.get(), target, table);
                            return table;
                        });
    }

    private static void carry(ResultSet rows, Handle target, String table) throws SQLException {
        ResultSetMetaData columns = rows.getMetaData();
        StringBuilder names = new StringBuilder();
        StringBuilder places = new StringBuilder();
        for (int i = 1; i <= columns.getColumnCount(); i++) {
            names.append(i > 1 ? ", " : "").append(columns.getColumnName(i));
            places.append(i > 1 ? ", ?" : "?");
        }
        String insert = "insert into %s (%s) values (%s)".formatted(table, names, places);
        PreparedBatch batch = target.prepareBatch(insert);
        while (rows.next()) {
            for (int i = 0; i < columns.getColumnCount(); i++) {
                batch.bind(i, rows.getObject(i + 1));
            }
            batch.add();
            if (batch.size() == ROWS_AT_ONCE) {
                batch.execute();
            }
        }
        if (batch.size() > 0) {
            batch.execute();
        }
    }
}
