package jarwise.bench;

import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.store.CountQuery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.tally.StageKey;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Time for pages, and for what they ask, in the data of {@link TenYears}. */
public final class BigNursery {

    private static final int FULL_SIZE = 500_000;
    private static final int ROUNDS = 7;
    private static final String SLUG = TenYears.SLUG;

    private final Database database;
    private final int samples;
    private final LocalDate lastDay;

    private BigNursery(Database database, int samples) {
        this.database = database;
        this.samples = samples;
        this.lastDay = new TenYears(database, samples).lastDay();
    }

    /**
     * Starts with a folder or address of data, filled if they are empty, and, if wanted, the number
     * of samples; without it 500,000 with 8 million events.
     */
    public static void main(String[] arguments) {
        int samples = arguments.length > 1 ? Integer.parseInt(arguments[1]) : FULL_SIZE;
        try (Database database = Database.open(arguments[0])) {
            BigNursery nursery = new BigNursery(database, samples);
            long start = System.nanoTime();
            if (new SiteStore(database).nurseries().isEmpty()) {
                new TenYears(database, samples).fill();
            }
            System.out.printf(
                    "%,d samples, %,d events made in %,d s%n",
                    samples,
                    new EventStore(database).count(),
                    (System.nanoTime() - start) / 1_000_000_000);
            nursery.time();
        }
        PageTimes.print(arguments[0], samples);
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
        return List.of(new SampleEvent(id, code, at, "SC-1", Optional.empty(), TenYears.press()));
    }

    private static CountQuery counts(LocalDate from, LocalDate to, String house) {
        return new CountQuery(
                SLUG,
                SamplingMethod.WASH,
                List.of(new StageKey("FRANOC", "larva1"), new StageKey("FRANOC", "larva2")),
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
