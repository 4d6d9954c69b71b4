package jarwise.bench;

import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.site.Nursery;
import jarwise.store.CountQuery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.wire.pest.ShippedPests;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Time for what pages ask, in data as many years of a big nursery leave them: 200 samples a day, 16
 * events and 12 counts each. Rows are written straight into the tables, so the chain of events is
 * not whole; what is timed does not look at it.
 */
public final class BigNursery {

    private static final int FULL_SIZE = 500_000;
    private static final int SAMPLES_A_DAY = 200;
    private static final int EVENTS_A_SAMPLE = 16;
    private static final int ROUNDS = 7;
    private static final String SLUG = "big";
    private static final LocalDate FIRST_DAY = LocalDate.of(2019, 1, 1);

    private final Database database;
    private final int samples;
    private final LocalDate lastDay;

    private BigNursery(Database database, int samples) {
        this.database = database;
        this.samples = samples;
        this.lastDay = FIRST_DAY.plusDays((samples - 1) / SAMPLES_A_DAY);
    }

    /**
     * Starts with a folder or address of empty data and, if wanted, the number of samples; without
     * it 500,000 with 8 million events.
     */
    public static void main(String[] arguments) {
        int samples = arguments.length > 1 ? Integer.parseInt(arguments[1]) : FULL_SIZE;
        try (Database database = Database.open(arguments[0])) {
            BigNursery nursery = new BigNursery(database, samples);
            long start = System.nanoTime();
            nursery.fill();
            System.out.printf(
                    "%,d samples, %,d events made in %,d s%n",
                    samples,
                    new EventStore(database).count(),
                    (System.nanoTime() - start) / 1_000_000_000);
            nursery.time();
        }
    }

    private void fill() {
        new SiteStore(database).save(new Nursery(SLUG, "Big", ZoneOffset.UTC, "en"));
        PestStore pests = new PestStore(database);
        ShippedPests.read().forEach(pests::save);
        database.write(handle -> handle.createUpdate(samplesSql()).bind("n", samples).execute());
        database.write(handle -> handle.execute(countsSql()));
        database.write(
                handle ->
                        handle.createUpdate(eventsSql())
                                .bind("n", (long) samples * EVENTS_A_SAMPLE)
                                .execute());
    }

    /** Samples of the last day are in the freezer; one in ten is targeted. */
    private String samplesSql() {
        return "insert into sample (nursery, code, method, purpose, role, state, collected_on,"
                + " house, bench, crop, variety, sampling_units, fluid, fill, cells_read,"
                + " cells_readable, cells_obscured, attributes, open_questions)"
                + " with recursive n (i) as (select 0 union all select i + 1 from n where i + 1 <"
                + " :n) select 'big', 'J-' || i, 'wash', case when i % 10 = 0 then 'targeted'"
                + " else 'random' end, 'crop', case when i / "
                + SAMPLES_A_DAY
                + " = "
                + (samples - 1) / SAMPLES_A_DAY
                + " then 'frozen' else 'read' end, date("
                + "julianday('"
                + FIRST_DAY
                + "') + i / "
                + SAMPLES_A_DAY
                + "), 'H' || (i % 10), 'H' || (i % 10) || '-B' || (i % 200), 'Gerbera',"
                + " 'V' || (i % 20), 10, 'soap', 'loose', 40, 40, 0, '{}', 0 from n";
    }

    private static String countsSql() {
        return "insert into sample_count (nursery, sample, pest, life_stage, individuals)"
                + " select s.nursery, s.code, t.pest, t.code, (s.rowid * 7 + t.position * 3) % 5"
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
                + jarwise.wire.DeedJson.write(press())
                + "', hex(randomblob(32)) from n";
    }

    private static Deed press() {
        return new Deed.Counted("FRANOC", "larva1", 1, Optional.of("A1"));
    }

    private void time() {
        SampleStore store = new SampleStore(database);
        LocalDate last = lastDay.minusDays(1);
        print("counts of a week", () -> store.counts(counts(last.minusDays(6), last, "")));
        print(
                "counts of a week, one house",
                () -> store.counts(counts(last.minusDays(6), last, "H3")));
        print(
                "counts of a season (120 days)",
                () -> store.counts(counts(last.minusDays(119), last, "")));
        print(
                "counts of a season, one house",
                () -> store.counts(counts(last.minusDays(119), last, "H3")));
        print("pests read in a week", () -> store.pestsRead(SLUG, last.minusDays(6), last));
        print("samples of a week", () -> store.between(SLUG, last.minusDays(6), last));
        print("samples waiting", () -> store.inStates(SLUG, Set.of(SampleState.FROZEN)));
        print("first page of samples", () -> store.list(SLUG, SampleFilter.ALL, 0, 50));
        print("page 100 of samples", () -> store.list(SLUG, SampleFilter.ALL, 5_000, 50));
        SampleFilter part = new SampleFilter("j-1234", Optional.empty(), Optional.empty());
        print("samples by part of the code", () -> store.list(SLUG, part, 0, 50));
        print("how many samples by part", () -> List.of(store.count(SLUG, part)));
        print("days with samples", () -> store.days(SLUG));
        print("last day", () -> List.of(store.lastDay(SLUG)));
        print("open questions", () -> store.withOpenQuestions(SLUG));
        EventStore events = new EventStore(database);
        SampleCode code = new SampleCode("J-" + samples / 2);
        print("history of one sample", () -> events.ofSample(SLUG, code));
        print("last position", () -> List.of(events.lastPosition()));
        long[] sequence = {0};
        print("one press saved", () -> List.of(events.append(SLUG, press(code, ++sequence[0]))));
    }

    private static List<SampleEvent> press(SampleCode code, long sequence) {
        Instant at = Instant.parse("2026-05-07T05:40:00Z");
        EventId id = new EventId("microscope", sequence);
        return List.of(new SampleEvent(id, code, at, "SC-1", Optional.empty(), press()));
    }

    private static CountQuery counts(LocalDate from, LocalDate to, String house) {
        return new CountQuery(
                SLUG,
                SamplingMethod.WASH,
                "FRANOC",
                List.of("larva1", "larva2"),
                from,
                to,
                Optional.of(Purpose.RANDOM),
                Optional.of(house).filter(code -> !code.isEmpty()),
                Optional.empty(),
                Optional.empty());
    }

    /** The first run is thrown away: it reads from the disk. */
    private static void print(String what, Supplier<List<?>> query) {
        int rows = query.get().size();
        double[] millis = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long start = System.nanoTime();
            rows = query.get().size();
            millis[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(millis);
        System.out.printf("%-34s %,9d rows %,10.1f ms%n", what, rows, millis[ROUNDS / 2]);
    }
}
