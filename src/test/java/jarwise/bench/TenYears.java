package jarwise.bench;

import jarwise.decision.ActionThreshold;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Nursery;
import jarwise.site.Occupancy;
import jarwise.store.Database;
import jarwise.store.PestStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.wire.DeedJson;
import jarwise.wire.pest.ShippedPests;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Data as ten years of a nursery of 30 houses leave them: one round a week, four benches a house,
 * eight jars a bench, 16 events and 12 counts a jar. Rows are written straight into the tables, so
 * the chain of events is not whole; what is timed does not look at it.
 *
 * @param database empty data
 * @param samples how many jars in all
 */
record TenYears(Database database, int samples) {

    static final String SLUG = "big";
    static final int EVENTS_A_SAMPLE = 16;

    private static final LocalDate FIRST_DAY = LocalDate.of(2017, 1, 2);
    private static final int HOUSES = 30;
    private static final int BENCHES_A_HOUSE = 4;
    private static final int JARS_A_BENCH = 8;
    private static final int JARS_A_ROUND = HOUSES * BENCHES_A_HOUSE * JARS_A_BENCH;

    /** {@return the day of the last round, whose jars are in the freezer} */
    LocalDate lastDay() {
        return FIRST_DAY.plusWeeks((samples - 1) / JARS_A_ROUND);
    }

    /** Fills the data. */
    void fill() {
        PestStore pests = new PestStore(database);
        ShippedPests.read().forEach(pests::save);
        fillPlaces();
        database.write(handle -> handle.createUpdate(samplesSql()).bind("n", samples).execute());
        database.write(handle -> handle.execute(countsSql()));
        database.write(
                handle ->
                        handle.createUpdate(eventsSql())
                                .bind("n", (long) samples * EVENTS_A_SAMPLE)
                                .execute());
        database.write(handle -> handle.execute("analyze"));
    }

    private void fillPlaces() {
        SiteStore site = new SiteStore(database);
        site.save(new Nursery(SLUG, "Big", ZoneOffset.UTC, "en"));
        for (int house = 0; house < HOUSES; house++) {
            site.save(SLUG, new House("H" + house, "House", OptionalDouble.of(1000)), house);
            for (int bench = 0; bench < BENCHES_A_HOUSE; bench++) {
                fillBench(site, house, bench);
            }
        }
        SettingsStore settings = new SettingsStore(database);
        for (String stage : new String[] {"larva", "adult"}) {
            settings.add(
                    SLUG,
                    new ActionThreshold(
                            "FRANOC", stage, 0.1, FIRST_DAY, "HG-1", "invented", "invented"),
                    FIRST_DAY.atStartOfDay().toInstant(ZoneOffset.UTC));
        }
    }

    private static void fillBench(SiteStore site, int house, int bench) {
        String code = "H" + house + "-B" + bench;
        String lot = "L-" + code;
        site.save(SLUG, new Bench(code, "H" + house, "A", bench));
        site.save(
                SLUG,
                new CropLot(
                        lot,
                        "Gerbera",
                        "V" + bench,
                        Optional.empty(),
                        Optional.of(FIRST_DAY),
                        false));
        site.save(
                SLUG,
                new Occupancy(
                        code,
                        lot,
                        FIRST_DAY,
                        Optional.empty(),
                        OptionalDouble.of(400),
                        OptionalDouble.of(2),
                        Optional.of(FIRST_DAY)));
    }

    /** One jar in ten is targeted. */
    private String samplesSql() {
        String house = "(i / 32) % 30";
        String bench = "(i / 8) % 4";
        String week = "i / " + JARS_A_ROUND;
        int lastWeek = (samples - 1) / JARS_A_ROUND;
        return "insert into sample (nursery, code, method, purpose, role, state, collected_on,"
                + " house, bench, crop, variety, sampling_units, fluid, fill, cells_read,"
                + " cells_readable, cells_obscured, attributes, open_questions)"
                + " with recursive n (i) as (select 0 union all select i + 1 from n where i + 1 <"
                + " :n) select 'big', 'J-' || i, 'wash', case when i % 10 = 0 then 'targeted'"
                + " else 'random' end, 'crop', case when "
                + week
                + " = "
                + lastWeek
                + " then 'frozen' else 'read' end, "
                + day(week)
                + ", 'H' || "
                + house
                + ", 'H' || "
                + house
                + " || '-B' || "
                + bench
                + ", 'Gerbera', 'V' || "
                + bench
                + ", 10, 'soap', 'loose', 40, 40, 0, '{}', 0 from n";
    }

    private String day(String week) {
        return database.file().isPresent()
                ? "date('" + FIRST_DAY + "', '+' || (7 * (" + week + ")) || ' days')"
                : "to_char(date '" + FIRST_DAY + "' + (7 * (" + week + ")), 'YYYY-MM-DD')";
    }

    /** Larvae in about one jar of three, and nothing of most other stages. */
    private static String countsSql() {
        String chance = "(length(s.code) * 31 + cast(substr(s.code, 3) as integer) * 7919) % 97";
        return "insert into sample_count (nursery, sample, pest, life_stage, individuals)"
                + " select s.nursery, s.code, t.pest, t.code,"
                + " case when t.pest <> 'FRANOC' or "
                + chance
                + " > 32 then 0 else ("
                + chance
                + " + t.position * 3) % 5 end"
                + " from sample s cross join (select * from life_stage order by case pest when"
                + " 'FRANOC' then 0 else 1 end, pest, position limit 12) t"
                + " where s.state = 'read'";
    }

    private static String eventsSql() {
        return "insert into event (position, nursery, device, sequence, sample, at, person, batch,"
                + " deed, chain)"
                + " with recursive n (i) as (select 0 union all select i + 1 from n where i + 1 <"
                + " :n) select i + 1, 'big', 'tablet', i + 1, 'J-' || (i / "
                + EVENTS_A_SAMPLE
                + "), '2026-05-07T05:40:00.000000Z', 'SC-1', null, '"
                + DeedJson.write(press())
                + "', 'c0ffee' || i from n";
    }

    static Deed press() {
        return new Deed.Counted("FRANOC", "larva1", 1, Optional.of("A1"));
    }
}
