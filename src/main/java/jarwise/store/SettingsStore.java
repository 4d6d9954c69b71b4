package jarwise.store;

import jarwise.decision.ActionThreshold;
import jarwise.sample.DetectionValue;
import jarwise.sample.ProtocolVersion;
import jarwise.site.Setting;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jspecify.annotations.Nullable;

/**
 * Dated choices of a site. Rows are added, never changed: what holds on a day is the one with the
 * latest first day not after it, and of those the one recorded last.
 */
public final class SettingsStore {

    private final Database database;

    public SettingsStore(Database database) {
        this.database = database;
    }

    /** {@return all thresholds ever set, those that take over later first} */
    public List<ActionThreshold> thresholds(String nursery) {
        return list(
                "select * from action_threshold where nursery = :nursery order by set_on desc,"
                        + " recorded_at desc",
                nursery,
                (row, context) ->
                        new ActionThreshold(
                                row.getString("pest"),
                                row.getString("stage_group"),
                                row.getDouble("density"),
                                LocalDate.parse(row.getString("set_on")),
                                row.getString("set_by"),
                                row.getString("reason"),
                                row.getString("source")));
    }

    /** Adds a threshold. */
    public void add(String nursery, ActionThreshold threshold, Instant recordedAt) {
        database.writing(
                handle ->
                        handle.createUpdate(
                                        "insert into action_threshold (nursery, pest,"
                                                + " stage_group, density, set_on, set_by,"
                                                + " reason, source, recorded_at) values"
                                                + " (:nursery, :pest, :group, :density, :on,"
                                                + " :by, :reason, :source, :recorded)")
                                .bind("nursery", nursery)
                                .bind("pest", threshold.pest())
                                .bind("group", threshold.stageGroup())
                                .bind("density", threshold.density())
                                .bind("on", threshold.setOn().toString())
                                .bind("by", threshold.setBy())
                                .bind("reason", threshold.reason())
                                .bind("source", threshold.source())
                                .bind("recorded", Columns.written(recordedAt))
                                .execute());
    }

    /** {@return all protocol versions, those that take over later first} */
    public List<ProtocolVersion> protocols(String nursery) {
        return list(
                "select * from protocol_version where nursery = :nursery order by holds_from desc,"
                        + " recorded_at desc",
                nursery,
                (row, context) ->
                        new ProtocolVersion(
                                LocalDate.parse(row.getString("holds_from")),
                                row.getDouble("freeze_hours"),
                                row.getDouble("read_within_hours"),
                                row.getInt("growing_points_per_jar"),
                                row.getInt("shake_seconds_least"),
                                row.getInt("shake_seconds_most"),
                                row.getInt("filter_cells"),
                                row.getString("note")));
    }

    /** {@return the protocol that holds on a day; the usual one where the site has none} */
    public ProtocolVersion protocolOn(String nursery, LocalDate day) {
        return protocols(nursery).stream()
                .filter(version -> !version.holdsFrom().isAfter(day))
                .findFirst()
                .orElseGet(() -> ProtocolVersion.standard(day));
    }

    /** Adds a protocol version. */
    public void add(String nursery, ProtocolVersion version, Instant recordedAt) {
        database.writing(
                handle ->
                        handle.createUpdate(
                                        "insert into protocol_version (nursery, holds_from,"
                                                + " freeze_hours, read_within_hours,"
                                                + " growing_points_per_jar,"
                                                + " shake_seconds_least, shake_seconds_most,"
                                                + " filter_cells, note, recorded_at) values"
                                                + " (:nursery, :from, :freeze, :within,"
                                                + " :points, :least, :most, :cells, :note,"
                                                + " :recorded)")
                                .bind("nursery", nursery)
                                .bind("from", version.holdsFrom().toString())
                                .bind("freeze", version.freezeHours())
                                .bind("within", version.readWithinHours())
                                .bind("points", version.growingPointsPerJar())
                                .bind("least", version.shakeSecondsLeast())
                                .bind("most", version.shakeSecondsMost())
                                .bind("cells", version.filterCells())
                                .bind("note", version.note())
                                .bind("recorded", Columns.written(recordedAt))
                                .execute());
    }

    /** {@return all shares ever adopted, those that take over later first} */
    public List<DetectionValue> detection(String nursery) {
        return list(
                "select * from detection where nursery = :nursery order by holds_from desc,"
                        + " recorded_at desc",
                nursery,
                (row, context) -> detection(row));
    }

    private static DetectionValue detection(ResultSet row) throws SQLException {
        return new DetectionValue(
                DetectionValue.Kind.valueOf(row.getString("kind").toUpperCase(Locale.ROOT)),
                row.getString("subject"),
                row.getString("pest"),
                row.getString("stage_group"),
                new Columns(row).optionalNumber("found"),
                new Columns(row).optionalNumber("known"),
                new Columns(row).optionalNumber("value"),
                LocalDate.parse(row.getString("holds_from")),
                new Columns(row).optionalDay("withdrawn_on"),
                row.getString("source"));
    }

    /** Adds an adopted share. */
    public void add(String nursery, DetectionValue share, Instant recordedAt) {
        database.writing(
                handle ->
                        handle.createUpdate(
                                        "insert into detection (nursery, kind, subject,"
                                                + " pest, stage_group, found, known, value,"
                                                + " holds_from, withdrawn_on, source,"
                                                + " recorded_at) values (:nursery, :kind,"
                                                + " :subject, :pest, :group, :found, :known,"
                                                + " :value, :from, :withdrawn, :source,"
                                                + " :recorded)")
                                .bind("nursery", nursery)
                                .bind("kind", SampleRow.word(share.kind()))
                                .bind("subject", share.subject())
                                .bind("pest", share.pest())
                                .bind("group", share.stageGroup())
                                .bind("found", boxed(share.found()))
                                .bind("known", boxed(share.known()))
                                .bind("value", boxed(share.value()))
                                .bind("from", share.holdsFrom().toString())
                                .bind(
                                        "withdrawn",
                                        share.withdrawnOn().map(LocalDate::toString).orElse(null))
                                .bind("source", share.source())
                                .bind("recorded", Columns.written(recordedAt))
                                .execute());
    }

    /** Lets an adopted share end: it no longer holds from {@code day} on, and stays on record. */
    public void withdraw(String nursery, DetectionValue share, LocalDate day) {
        database.writing(
                handle ->
                        handle.createUpdate(
                                        "update detection set withdrawn_on = :day where"
                                                + " nursery = :nursery and kind = :kind and"
                                                + " subject = :subject and pest = :pest and"
                                                + " stage_group = :group and holds_from ="
                                                + " :from and withdrawn_on is null")
                                .bind("day", day.toString())
                                .bind("nursery", nursery)
                                .bind("kind", SampleRow.word(share.kind()))
                                .bind("subject", share.subject())
                                .bind("pest", share.pest())
                                .bind("group", share.stageGroup())
                                .bind("from", share.holdsFrom().toString())
                                .execute());
    }

    /** {@return all other settings ever made, those that take over later first} */
    public List<Setting> settings(String nursery) {
        return list(
                "select * from setting where nursery = :nursery order by holds_from desc,"
                        + " recorded_at desc",
                nursery,
                (row, context) ->
                        new Setting(
                                row.getString("name"),
                                row.getString("value"),
                                LocalDate.parse(row.getString("holds_from")),
                                row.getString("set_by"),
                                row.getString("reason")));
    }

    /** Adds a setting. */
    public void add(String nursery, Setting setting, Instant recordedAt) {
        database.writing(
                handle ->
                        handle.createUpdate(
                                        "insert into setting (nursery, name, value,"
                                                + " holds_from, set_by, reason, recorded_at)"
                                                + " values (:nursery, :name, :value, :from,"
                                                + " :by, :reason, :recorded)")
                                .bind("nursery", nursery)
                                .bind("name", setting.name())
                                .bind("value", setting.value())
                                .bind("from", setting.holdsFrom().toString())
                                .bind("by", setting.setBy())
                                .bind("reason", setting.reason())
                                .bind("recorded", Columns.written(recordedAt))
                                .execute());
    }

    private <T> List<T> list(String sql, String nursery, RowMapper<T> mapper) {
        return database.read(
                handle -> handle.createQuery(sql).bind("nursery", nursery).map(mapper).list());
    }

    private static @Nullable Double boxed(OptionalDouble value) {
        return value.isPresent() ? (Double) value.getAsDouble() : null;
    }
}
