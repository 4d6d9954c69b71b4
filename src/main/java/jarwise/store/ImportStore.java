package jarwise.store;

import jarwise.sample.SampleCode;
import jarwise.tally.ImportBatch;
import jarwise.tally.ImportBatch.Counted;
import jarwise.tally.ImportBatch.TakenBack;
import jarwise.tally.ImportRow;
import jarwise.tally.StageKey;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Imports of sheets, what their rows said, and how their columns were understood. */
public final class ImportStore {

    private final Database database;

    public ImportStore(Database database) {
        this.database = database;
    }

    /** Puts an import on record with its rows. */
    public void add(String nursery, ImportBatch batch, List<ImportRow> rows) {
        database.write(
                handle -> {
                    insert(handle, nursery, batch);
                    insertRows(handle, nursery, batch.id(), rows);
                    return true;
                });
    }

    /** {@return the imports of a nursery, the newest first} */
    public List<ImportBatch> batches(String nursery) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from import_batch where nursery = :nursery"
                                                + " order by imported_at desc, id desc")
                                .bind("nursery", nursery)
                                .map((row, context) -> batch(row))
                                .list());
    }

    /** {@return an import by its id} */
    public Optional<ImportBatch> find(String nursery, String id) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select * from import_batch where nursery = :nursery and"
                                                + " id = :id")
                                .bind("nursery", nursery)
                                .bind("id", id)
                                .map((row, context) -> batch(row))
                                .findOne());
    }

    /** Notes that an import was taken back. */
    public void takeBack(String nursery, String id, TakenBack takenBack) {
        database.write(
                handle ->
                        handle.createUpdate(
                                        "update import_batch set taken_back_at = :at,"
                                                + " taken_back_by = :person, taken_back_reason ="
                                                + " :reason where nursery = :nursery and id = :id")
                                .bind("at", Columns.written(takenBack.at()))
                                .bind("person", takenBack.person())
                                .bind("reason", takenBack.reason())
                                .bind("nursery", nursery)
                                .bind("id", id)
                                .execute());
    }

    /**
     * One row of an earlier import.
     *
     * @param batch its import
     * @param row what it said
     */
    public record EarlierRow(String batch, ImportRow row) {}

    /** {@return rows of the imports with this header that stand, the oldest import first} */
    public List<EarlierRow> rowsOf(String nursery, String header) {
        String sql =
                "select r.* from import_row r join import_batch b on b.id = r.batch"
                        + " where b.nursery = :nursery and b.header = :header"
                        + " and b.taken_back_at is null order by b.imported_at, r.place, r.part";
        return database.read(
                handle ->
                        handle.createQuery(sql)
                                .bind("nursery", nursery)
                                .bind("header", header)
                                .map((row, context) -> earlierRow(row))
                                .list());
    }

    /** {@return whether any import, taken back or not, has a row with this key} */
    public boolean knowsKey(String nursery, String key) {
        String sql = "select count(*) from import_row where nursery = :nursery and row_key = :key";
        return database.read(
                        handle ->
                                handle.createQuery(sql)
                                        .bind("nursery", nursery)
                                        .bind("key", key)
                                        .mapTo(Long.class)
                                        .one())
                > 0;
    }

    /** {@return how the columns of sheets with this header were understood last} */
    public Optional<String> choices(String nursery, String header) {
        return database.read(
                handle ->
                        handle.createQuery(
                                        "select mapping from column_mapping where nursery ="
                                                + " :nursery and header = :header")
                                .bind("nursery", nursery)
                                .bind("header", header)
                                .mapTo(String.class)
                                .findOne());
    }

    /** Remembers how the columns of sheets with this header were understood. */
    public void remember(String nursery, String header, String choices, Instant usedAt) {
        database.write(
                handle ->
                        handle.createUpdate(
                                        "insert into column_mapping (nursery, header, mapping,"
                                                + " used_at) values (:nursery, :header, :mapping,"
                                                + " :at) on conflict (nursery, header) do update"
                                                + " set mapping = excluded.mapping, used_at ="
                                                + " excluded.used_at")
                                .bind("nursery", nursery)
                                .bind("header", header)
                                .bind("mapping", choices)
                                .bind("at", Columns.written(usedAt))
                                .execute());
    }

    private static void insert(Handle handle, String nursery, ImportBatch batch) {
        handle.createUpdate(
                        "insert into import_batch (id, nursery, imported_at, person, file_name,"
                                + " fingerprint, header, mapping, rows_new, rows_same,"
                                + " rows_changed) values (:id, :nursery, :at, :person, :file,"
                                + " :fingerprint, :header, :mapping, :added, :same, :changed)")
                .bind("id", batch.id())
                .bind("nursery", nursery)
                .bind("at", Columns.written(batch.importedAt()))
                .bind("person", batch.person())
                .bind("file", batch.fileName())
                .bind("fingerprint", batch.fingerprint())
                .bind("header", batch.header())
                .bind("mapping", batch.choices())
                .bind("added", batch.counted().added())
                .bind("same", batch.counted().same())
                .bind("changed", batch.counted().changed())
                .execute();
    }

    private static void insertRows(
            Handle handle, String nursery, String batch, List<ImportRow> rows) {
        PreparedBatch prepared =
                handle.prepareBatch(
                        "insert into import_row (batch, place, part, nursery, row_key, row_text,"
                                + " sample, pest, life_stage, device, sequence) values (:batch,"
                                + " :place, :part, :nursery, :key, :text, :sample, :pest, :stage,"
                                + " '', 0)");
        for (ImportRow row : rows) {
            prepared.bind("batch", batch)
                    .bind("place", row.place())
                    .bind("part", row.part())
                    .bind("nursery", nursery)
                    .bind("key", row.key())
                    .bind("text", row.text())
                    .bind("sample", row.sample().text())
                    .bind("pest", row.stage().pest())
                    .bind("stage", row.stage().lifeStage())
                    .add();
        }
        if (prepared.size() > 0) {
            prepared.execute();
        }
    }

    private static ImportBatch batch(ResultSet row) throws SQLException {
        String takenBackAt = row.getString("taken_back_at");
        Optional<TakenBack> takenBack =
                takenBackAt == null
                        ? Optional.empty()
                        : Optional.of(
                                new TakenBack(
                                        Instant.parse(takenBackAt),
                                        row.getString("taken_back_by"),
                                        row.getString("taken_back_reason")));
        return new ImportBatch(
                row.getString("id"),
                Instant.parse(row.getString("imported_at")),
                row.getString("person"),
                row.getString("file_name"),
                row.getString("fingerprint"),
                row.getString("header"),
                row.getString("mapping"),
                new Counted(
                        row.getInt("rows_new"),
                        row.getInt("rows_same"),
                        row.getInt("rows_changed")),
                takenBack);
    }

    private static EarlierRow earlierRow(ResultSet row) throws SQLException {
        return new EarlierRow(
                row.getString("batch"),
                new ImportRow(
                        row.getInt("place"),
                        row.getInt("part"),
                        row.getString("row_key"),
                        row.getString("row_text"),
                        new SampleCode(row.getString("sample")),
                        new StageKey(row.getString("pest"), row.getString("life_stage"))));
    }
}
