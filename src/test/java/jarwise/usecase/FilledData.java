package jarwise.usecase;

import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.Row;
import jarwise.store.SiteStore;
import jarwise.tally.Events;
import jarwise.wire.pest.ShippedPests;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;

/** Data with at least one row in every table, and what stands in them. */
final class FilledData {

    private static final String ODD = "ä ♀ 🪲 'x' \"y\"\nsecond line";
    private static final Instant AT = Instant.parse("2026-05-07T05:40:00.000001Z");
    private static final LocalDate DAY = LocalDate.of(2026, 5, 7);

    private FilledData() {}

    static void fill(Database database) {
        new SiteStore(database)
                .save(
                        new Nursery(
                                "lane", ODD.lines().findFirst().orElse(""), ZoneOffset.UTC, "en"));
        PestStore pests = new PestStore(database);
        ShippedPests.read().forEach(pests::save);
        new EventStore(database).append("lane", Events.random(new Random(5)));
        database.write(
                handle -> {
                    site(handle);
                    settings(handle);
                    imports(handle);
                    work(handle);
                    floor(handle);
                    plannedRound(handle);
                    devices(handle);
                    return handle;
                });
    }

    private static Row row(String table) {
        return Row.of(table).with("nursery", "lane");
    }

    private static void floor(Handle handle) {
        placed("house_place").with("house", "P1").insert(handle);
        placed("bench_place").with("bench", "P1-B3").with("name", ODD).insert(handle);
        row("hot_spot")
                .with("code", "S001")
                .with("house", "P1")
                .with("bench", "P1-B3")
                .with("kind", "door")
                .with("x", 0.1 + 0.2)
                .with("y", 7.0)
                .with("note", ODD)
                .insert(handle);
    }

    private static Row placed(String table) {
        return row(table)
                .with("x", 1.1 / 3)
                .with("y", -4.0)
                .with("length", 8.7 / 7)
                .with("width", 1.8);
    }

    private static void plannedRound(Handle handle) {
        row("round_plan")
                .with("id", "2026-05-11-a")
                .with("day", DAY)
                .with("method", "wash")
                .with("question", "detect")
                .with("seed", Long.MIN_VALUE)
                .with("planned_by", "SC-1")
                .with("planned_at", "2026-05-07T05:40:00.000001Z")
                .insert(handle);
        row("round_number")
                .with("round", "2026-05-11-a")
                .with("name", "power")
                .with("value", ODD)
                .insert(handle);
        row("round_jar")
                .with("sample", "7K4-M9QX")
                .with("round", "2026-05-11-a")
                .with("walk", 1)
                .with("house", "P1")
                .with("bench", "P1-B3")
                .with("purpose", "random")
                .with("role", "crop")
                .with("spot_along", 1.1 / 3)
                .with("spot_across", 0.5)
                .with("growing_points", 10)
                .insert(handle);
    }

    private static void site(Handle handle) {
        row("house")
                .with("code", "P1")
                .with("name", ODD)
                .with("area_m2", 10.1 / 3)
                .with("position", 0)
                .insert(handle);
        row("bench")
                .with("code", "P1-B3")
                .with("house", "P1")
                .with("bay", "B")
                .with("position", 1)
                .insert(handle);
        row("crop_lot")
                .with("code", "L-117")
                .with("crop", "Gerbera")
                .with("variety", "Rubia Tarn")
                .with("edible", false)
                .insert(handle);
        row("occupancy")
                .with("bench", "P1-B3")
                .with("crop_lot", "L-117")
                .with("from_day", DAY)
                .with("plants", 480.0)
                .insert(handle);
        row("reader")
                .with("code", "SC-1")
                .with("role", "scout")
                .with("language", "es")
                .with("active", true)
                .insert(handle);
    }

    private static void settings(Handle handle) {
        row("setting")
                .with("name", "authority")
                .with("value", ODD)
                .with("holds_from", DAY)
                .with("set_by", "HG-1")
                .with("reason", "")
                .with("recorded_at", AT)
                .insert(handle);
        row("action_threshold")
                .with("pest", "FRANOC")
                .with("stage_group", "larva")
                .with("density", 0.1 + 0.2)
                .with("set_on", DAY)
                .with("set_by", "HG-1")
                .with("reason", "own")
                .with("source", "own")
                .with("recorded_at", AT)
                .insert(handle);
        row("protocol_version")
                .with("holds_from", DAY)
                .with("freeze_hours", 24.0)
                .with("read_within_hours", 72.0)
                .with("growing_points_per_jar", 10)
                .with("shake_seconds_least", 40)
                .with("shake_seconds_most", 60)
                .with("filter_cells", 40)
                .with("note", ODD)
                .with("recorded_at", AT)
                .insert(handle);
        detection(handle);
    }

    private static void detection(Handle handle) {
        row("detection")
                .with("kind", "reader")
                .with("subject", "SC-2")
                .with("pest", "FRANOC")
                .with("stage_group", "larva")
                .with("found", 18.0)
                .with("known", 24.0)
                .with("holds_from", DAY)
                .with("source", "seeded filters")
                .with("recorded_at", AT)
                .insert(handle);
    }

    private static void devices(Handle handle) {
        row("device")
                .with("id", "d1")
                .with("name", ODD)
                .with("person", "SC-1")
                .with("plain", true)
                .with("secret_hash", "h")
                .with("let_in_at", AT)
                .with("last_seen_at", AT)
                .insert(handle);
        row("photo")
                .with("sha256", "ab".repeat(32))
                .with("media_type", "image/png")
                .with("content", "AP8H")
                .with("taken_at", AT)
                .insert(handle);
        row("seeded_filter")
                .with("code", "7K4-M9QS")
                .with("name", ODD)
                .with("placed", "[]")
                .with("made_on", DAY)
                .with("made_by", "ES-1")
                .with("recorded_at", AT)
                .insert(handle);
        row("calendar_feed").with("token", "t").with("opened_at", AT).insert(handle);
        row("calendar_entry")
                .with("about", "reading 2026-05-07 P1-B3")
                .with("uid", "u")
                .with("sequence", 1)
                .with("changed_at", AT)
                .with("cancelled", false)
                .with("starts_at", AT)
                .with("ends_at", AT)
                .with("summary", ODD)
                .with("description", ODD)
                .with("place", "P1-B3")
                .with("category", "READING")
                .insert(handle);
    }

    private static void imports(Handle handle) {
        row("import_batch")
                .with("id", "b1")
                .with("imported_at", AT)
                .with("person", "SC-1")
                .with("file_name", ODD)
                .with("fingerprint", "f")
                .with("header", "h")
                .with("mapping", "{}")
                .with("rows_new", 1)
                .with("rows_same", 0)
                .with("rows_changed", 0)
                .insert(handle);
        row("import_row")
                .with("batch", "b1")
                .with("place", 1)
                .with("part", 1)
                .with("row_key", "k")
                .with("row_text", ODD)
                .with("sample", "J-1")
                .with("pest", "FRANOC")
                .with("life_stage", "adult")
                .with("device", "desk")
                .with("sequence", 9_007_199_254_740_993L)
                .insert(handle);
        row("column_mapping")
                .with("header", "h")
                .with("mapping", "{}")
                .with("used_at", AT)
                .insert(handle);
    }

    private static void work(Handle handle) {
        row("plant_move")
                .with("moved_on", DAY)
                .with("from_bench", "P1-B3")
                .with("to_bench", "H2-B4")
                .with("crop_lot", "L-117")
                .with("plants", 180)
                .insert(handle);
        row("planned_jars")
                .with("day", DAY)
                .with("bench", "P1-B3")
                .with("method", "wash")
                .with("samples", 8)
                .with("purpose", "random")
                .with("position", 0)
                .insert(handle);
        row("application")
                .with("id", "T1")
                .with("house", "P1")
                .with("started_at", AT)
                .with("amount", "1.2 L")
                .with("applicator", "AP-1")
                .with("note", ODD)
                .with("recorded_at", AT)
                .insert(handle);
        moreWork(handle);
    }

    private static void moreWork(Handle handle) {
        row("application_bench").with("application", "T1").with("bench", "P1-B3").insert(handle);
        row("application_product")
                .with("application", "T1")
                .with("product", "DEMO Stage-A")
                .with("mode_of_action_groups", "6")
                .with("reentry_hours", 12.0)
                .with("position", 0)
                .insert(handle);
        row("beneficial_release")
                .with("released_on", DAY)
                .with("organism", "N. cucumeris")
                .with("place", "H2")
                .with("amount", ODD)
                .insert(handle);
        row("temperature")
                .with("house", "P1")
                .with("sensor", "s1")
                .with("at", AT)
                .with("celsius", 20.1 / 3)
                .with("unit_delivered", "fahrenheit")
                .insert(handle);
    }

    /** {@return every row of every table, as text, tables and rows sorted} */
    static Map<String, List<String>> rows(Database database) {
        Map<String, List<String>> rows = new TreeMap<>();
        for (String table : tables(database)) {
            rows.put(
                    table,
                    database.read(
                            handle ->
                                    handle.createQuery("select * from " + table).mapToMap().stream()
                                            .map(row -> new TreeMap<>(row).toString())
                                            .sorted()
                                            .toList()));
        }
        return rows;
    }

    private static List<String> tables(Database database) {
        String sql =
                database.file().isPresent()
                        ? "select name from sqlite_master where type = 'table' and name not like"
                                + " 'sqlite%'"
                        : "select table_name from information_schema.tables where table_schema ="
                                + " current_schema()";
        return database.read(handle -> handle.createQuery(sql).mapTo(String.class).list()).stream()
                .filter(name -> !name.equals("schema_history"))
                .toList();
    }
}
