package jarwise.store;

import jarwise.sample.Reader;
import java.util.List;

/** People of a site, by role code. */
public final class ReaderStore {

    private final Database database;

    public ReaderStore(Database database) {
        this.database = database;
    }

    /** {@return everyone, by code} */
    public List<Reader> readers(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select code, role, language, active from reader"
                                                + " where nursery = :nursery order by code")
                                .bind("nursery", nursery)
                                .map(
                                        (row, context) ->
                                                new Reader(
                                                        row.getString(1),
                                                        row.getString(2),
                                                        row.getString(3),
                                                        row.getInt(4) == 1))
                                .list());
    }

    /** Adds a person, or changes the one with this code. */
    public void save(String nursery, Reader reader) {
        database.writing(
                handle ->
                        handle.createUpdate(
                                        "insert into reader (nursery, code, role, language,"
                                                + " active) values (:nursery, :code, :role,"
                                                + " :language, :active) on conflict (nursery,"
                                                + " code) do update set role = excluded.role,"
                                                + " language = excluded.language, active ="
                                                + " excluded.active")
                                .bind("nursery", nursery)
                                .bind("code", reader.code())
                                .bind("role", reader.role())
                                .bind("language", reader.language())
                                .bind("active", reader.active() ? 1 : 0)
                                .execute());
    }
}
