package jarwise.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.base.Refused;
import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.guard.ServerLock;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Events;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.wire.pest.ShippedPests;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the event log promises, on both databases and with no `if` on which it is. */
class EventLogContractTest {

    private static final String EVERY_KIND =
            "ä ß ñ œ ♀ 芽 𝔘 🪲 e\u0301 \u202Eright\u202C 'a' \"b\" \\ % _ ; -- \t\n end";

    @Nested
    class OnSqlite extends Contract {
        OnSqlite() {
            super(DatabaseUnderTest.SQLITE);
        }
    }

    @Nested
    @Tag("slow")
    class OnPostgresql extends Contract {
        OnPostgresql() {
            super(DatabaseUnderTest.POSTGRESQL);
        }
    }

    abstract static class Contract {

        private final DatabaseUnderTest kind;
        @TempDir Path folder;
        private String address;
        private Database database;
        private EventStore events;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            address = kind.freshAddress(folder);
            database = Database.open(address);
            events = new EventStore(database);
            for (String slug : List.of("lane", "other")) {
                new SiteStore(database).save(new Nursery(slug, slug, ZoneOffset.UTC, "en"));
            }
            PestStore pests = new PestStore(database);
            ShippedPests.read().forEach(pests::save);
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void keepsAnEventSentTwiceOnce() {
            assertThat(events.append("lane", List.of(press(1), press(2)))).isEqualTo(2);
            assertThat(events.append("lane", List.of(press(2), press(3)))).isEqualTo(1);
            assertThat(events.append("lane", List.of(press(4), press(4)))).isEqualTo(1);

            assertThat(events.after(0, 100))
                    .containsExactly(press(1), press(2), press(3), press(4));
        }

        @Test
        void aBatchIsAllOrNothing() {
            SampleEvent bad =
                    Events.step("tablet", 2, Step.CUT, Map.of(Facts.SAMPLING_UNITS, "no number"));

            assertThatThrownBy(() -> events.append("lane", List.of(press(1), bad, press(3))))
                    .isInstanceOf(InvalidInput.class);
            assertThat(events.count()).isZero();
            assertThat(new SampleStore(database).count("lane")).isZero();
            assertThat(events.append("lane", List.of(press(1)))).isEqualTo(1);
        }

        @Test
        void aBatchForANurseryThatIsNotThereLeavesNothing() {
            assertThatThrownBy(() -> events.append("nowhere", List.of(press(1))));
            assertThat(events.count()).isZero();
        }

        @Test
        void givesEveryKindOfCharacterBack() {
            SampleEvent event =
                    new SampleEvent(
                            new EventId("täblet ♀", 1),
                            new SampleCode("J 1 ♀ 🪲 'x'"),
                            Events.AT,
                            "SC-ñ",
                            Optional.of("batch 🪲"),
                            new Deed.StepTaken(
                                    Step.CUT,
                                    Map.of(Facts.CONDITION, EVERY_KIND, "other:Spalte ß", "\u0000"),
                                    Optional.empty(),
                                    Optional.of(EVERY_KIND)));
            events.append("lane", List.of(event));

            assertThat(events.after(0, 1)).containsExactly(event);
            assertThat(sample(event.sample()).wash().condition()).contains(EVERY_KIND);
            assertThat(events.firstBrokenLink()).isEmpty();
        }

        @Test
        void keepsMicroseconds() {
            SampleEvent event =
                    new SampleEvent(
                            new EventId("tablet", 1),
                            Events.JAR,
                            Instant.parse("2026-05-07T05:40:00.000001Z"),
                            "SC-1",
                            Optional.empty(),
                            new Deed.CellDone("A1", false));
            events.append("lane", List.of(event));

            assertThat(events.after(0, 1).get(0).at()).isEqualTo(event.at());
        }

        @Test
        void keepsAllDigits() {
            double odd = 10.1 / 3;
            SampleEvent cut =
                    Events.step(
                            "tablet",
                            1,
                            Step.CUT,
                            Map.of(Facts.SAMPLING_UNITS, String.valueOf(odd)));
            long many = 9_007_199_254_740_993L;
            SampleEvent counted =
                    Events.event(
                            "tablet",
                            2,
                            new Deed.Counted("FRANOC", "adult", many, Optional.empty()));
            events.append("lane", List.of(cut, counted));

            assertThat(sample(Events.JAR).samplingUnits()).isEqualTo(odd);
            assertThat(new SampleStore(database).countsOf("lane", Events.JAR)).containsValue(many);
        }

        @Test
        void keepsClientsApart() {
            events.append("lane", List.of(press(1)));

            assertThat(events.ofSample("other", Events.JAR)).isEmpty();
            assertThat(new SampleStore(database).count("other")).isZero();
            assertThatThrownBy(() -> events.append("other", List.of(press(1))))
                    .isInstanceOf(InvalidInput.class);
        }

        @ParameterizedTest(name = "seed {0}")
        @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
        void whatPagesReadIsTheFoldOfTheEvents(long seed) {
            Random random = new Random(seed);
            List<SampleEvent> some = Events.random(random);
            int cut = random.nextInt(some.size());
            events.append("lane", some.subList(cut, some.size()));
            events.append("lane", some);

            SampleFold fold = events.fold("lane", Events.JAR).orElseThrow();
            assertThat(sample(Events.JAR)).isEqualTo(fold.sample());
            assertThat(new SampleStore(database).countsOf("lane", Events.JAR))
                    .isEqualTo(fold.tally().individuals());
            assertThat(events.staleSamples("lane")).isEmpty();
            assertThat(events.firstBrokenLink()).isEmpty();
        }

        @Test
        void noReaderSeesEvent2BeforeEvent1() throws Exception {
            int each = 40;
            ExecutorService writers = Executors.newFixedThreadPool(3);
            try {
                List<Future<?>> running = new ArrayList<>();
                for (String device : List.of("a", "b", "c")) {
                    running.add(writers.submit(() -> write(device, each)));
                }
                List<SampleEvent> seen = new ArrayList<>();
                while (seen.size() < 3 * each) {
                    // Whoever remembers "I have everything up to here" must not miss a slow one.
                    seen.addAll(events.after(seen.size(), 100));
                    failIfAWriterFailed(running);
                }
                assertThat(seen).isEqualTo(events.after(0, 1_000)).doesNotHaveDuplicates();
            } finally {
                writers.shutdownNow();
            }
        }

        private void write(String device, int number) {
            for (int i = 1; i <= number; i++) {
                Deed deed = new Deed.Counted("FRANOC", "adult", 1, Optional.of("A1"));
                SampleEvent event = Events.event(device, i, deed);
                events.append("lane", List.of(event));
            }
        }

        private static void failIfAWriterFailed(List<Future<?>> running) throws Exception {
            for (Future<?> writer : running) {
                if (writer.isDone()) {
                    writer.get();
                }
            }
        }

        @Test
        void aSecondServerIsRefusedUntilTheFirstEnds() {
            ServerLock first = database.lockForServer();
            try (Database second = Database.open(address)) {
                assertThatThrownBy(second::lockForServer)
                        .isInstanceOf(Refused.class)
                        .hasMessageContaining("store.second-server");
                assertThat(new EventStore(second).append("lane", List.of(press(1))))
                        .as("a command that runs once works beside the server")
                        .isEqualTo(1);
                first.close();
                second.lockForServer().close();
            }
        }

        @Test
        void aMigrationThatFailsLeavesTheOldVersionWorking() {
            events.append("lane", List.of(press(1)));

            assertThatThrownBy(
                    () -> database.schema().migrate("classpath:sql", "classpath:sql-broken"));

            try (Database again = Database.open(address)) {
                assertThat(again.schema().version()).isEqualTo(Schema.NEWEST);
                assertThat(new EventStore(again).append("lane", List.of(press(2)))).isEqualTo(1);
                assertThatThrownBy(
                        () -> again.read(handle -> handle.execute("select * from half_made")));
            }
        }

        @Test
        void aPestThatWasCountedGetsNoNewStage() {
            PestStore pests = new PestStore(database);
            events.append("lane", List.of(press(1)));
            var thrips = pests.pests().find("FRANOC").orElseThrow();
            var mite = pests.pests().find("TETRUR").orElseThrow();
            pests.save(thrips);

            assertThatThrownBy(() -> pests.save(withStagesOf(thrips, mite)))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("FRANOC was counted before");
            pests.save(withStagesOf(mite, thrips));
        }

        private jarwise.sample.CollectedSample sample(SampleCode code) {
            return new SampleStore(database).find("lane", code).orElseThrow();
        }
    }

    @Test
    void theNewestMigrationIsTheOneTheProgramKnows() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/sql"))) {
            List<Integer> versions =
                    files.map(file -> file.getFileName().toString())
                            .map(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                            .sorted()
                            .collect(Collectors.toList());
            assertThat(versions.get(versions.size() - 1)).hasToString(Schema.NEWEST);
        }
    }

    private static jarwise.pest.Pest withStagesOf(jarwise.pest.Pest pest, jarwise.pest.Pest other) {
        return new jarwise.pest.Pest(
                pest.code(),
                pest.eppoCode(),
                pest.scientificName(),
                pest.commonName(),
                pest.naturalEnemy(),
                other.lifeStages());
    }

    private static SampleEvent press(long sequence) {
        return Events.event(
                "tablet", sequence, new Deed.Counted("FRANOC", "adult", 1, Optional.of("A1")));
    }
}
