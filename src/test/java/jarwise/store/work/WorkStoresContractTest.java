package jarwise.store.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.phenology.TemperatureReading;
import jarwise.phenology.TemperatureUnit;
import jarwise.plan.Round;
import jarwise.sample.Purpose;
import jarwise.sample.SamplingMethod;
import jarwise.site.PlantMove;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.Row;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.treatment.Release;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the stores of the work in the houses promise, on both databases. */
class WorkStoresContractTest {

    private static final Instant START = Instant.parse("2026-03-27T17:00:00.000001Z");
    private static final LocalDate DAY = LocalDate.of(2026, 4, 14);

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
        private Database database;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            for (String slug : List.of("lane", "other")) {
                database.write(
                        handle -> {
                            Row.of("nursery")
                                    .with("slug", slug)
                                    .with("name", slug)
                                    .with("zone", "UTC")
                                    .with("language", "en")
                                    .insert(handle);
                            return slug;
                        });
            }
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void keepsAnApplicationWithEverythingNoted() {
            TreatmentStore treatments = new TreatmentStore(database);
            treatments.add("lane", tankMix("T3"), START);

            assertThat(treatments.applications("lane", START, START.plusSeconds(1)))
                    .containsExactly(tankMix("T3"));
            assertThat(
                            treatments.applications(
                                    "lane", START.plusSeconds(1), START.plusSeconds(9_999)))
                    .isEmpty();
            assertThat(treatments.applications("other", START, START.plusSeconds(1))).isEmpty();
        }

        @Test
        void refusesASecondApplicationOfOneName() {
            TreatmentStore treatments = new TreatmentStore(database);
            treatments.add("lane", tankMix("T3"), START);

            assertThatThrownBy(() -> treatments.add("lane", tankMix("T3"), START))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("T3");
            treatments.add("other", tankMix("T3"), START);
        }

        @Test
        void countsAWithdrawnApplicationNoMoreAndKeepsItsRow() {
            TreatmentStore treatments = new TreatmentStore(database);
            treatments.add("lane", tankMix("T3"), START);
            treatments.withdraw("lane", "T3", START, "HG-1", "wrong bench");

            assertThat(treatments.applications("lane", START, START.plusSeconds(1))).isEmpty();
            assertThat(rowsOf("application")).isEqualTo(1);
            assertThatThrownBy(() -> treatments.withdraw("lane", "T3", START, "HG-1", "again"))
                    .isInstanceOf(InvalidInput.class);
        }

        @Test
        void keepsAReleaseWrittenTwiceOnce() {
            TreatmentStore treatments = new TreatmentStore(database);
            Release release = new Release(DAY, "Neoseiulus cucumeris", "H2", "1 sachet / m²");
            treatments.add("lane", release);
            treatments.add("lane", release);

            assertThat(treatments.releases("lane")).containsExactly(release);
        }

        @Test
        void keepsTemperaturesWithAllTheirDigitsOnce() {
            TemperatureStore temperatures = new TemperatureStore(database);
            TemperatureReading odd =
                    new TemperatureReading("H3", "s1", START, 20.1 / 3, TemperatureUnit.FAHRENHEIT);
            TemperatureReading later =
                    new TemperatureReading(
                            "H3", "s1", START.plusSeconds(3600), -0.0625, TemperatureUnit.CELSIUS);

            assertThat(temperatures.add("lane", List.of(odd, later))).isEqualTo(2);
            assertThat(temperatures.add("lane", List.of(odd, later))).isZero();
            assertThat(temperatures.of("lane", "H3", START, START.plusSeconds(3601)))
                    .containsExactly(odd, later);
            assertThat(temperatures.of("lane", "H3", START, START.plusSeconds(3600)))
                    .containsExactly(odd);
        }

        @Test
        void givesARoundBackInTheOrderOfTheWalk() {
            RoundStore rounds = new RoundStore(database);
            Round walk = round("P1-B4", "P1-B3", "H2-B4");
            rounds.put("lane", round("P1-B5"));
            rounds.put("lane", walk);

            assertThat(rounds.rounds("lane", DAY, DAY)).containsExactly(walk);
            assertThat(rounds.rounds("lane", DAY.plusDays(1), DAY.plusDays(9))).isEmpty();
        }

        @Test
        void remembersWherePlantsWereMoved() {
            RoundStore rounds = new RoundStore(database);
            PlantMove move = new PlantMove(DAY, "P1-B3", "H2-B4", "L-117", 180);
            rounds.add("lane", move);
            rounds.add("lane", move);

            assertThat(rounds.moves("lane")).containsExactly(move);
        }

        @Test
        void takesBackEverythingOfATransactionThatFails() {
            RoundStore rounds = new RoundStore(database);
            TreatmentStore treatments = new TreatmentStore(database);

            assertThatThrownBy(
                            () ->
                                    database.inOneTransaction(
                                            () -> {
                                                rounds.put("lane", round("P1-B3"));
                                                treatments.add("lane", tankMix("T3"), START);
                                                throw new InvalidInput("no");
                                            }))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessage("no");

            assertThat(rounds.rounds("lane", DAY, DAY)).isEmpty();
            assertThat(rowsOf("application")).isZero();
        }

        private long rowsOf(String table) {
            return database.read(
                    handle ->
                            handle.createQuery("select count(*) from " + table)
                                    .mapTo(Long.class)
                                    .one());
        }
    }

    private static Round round(String... benches) {
        return new Round(
                DAY,
                SamplingMethod.WASH,
                List.of(benches).stream()
                        .map(bench -> new Round.Stop(bench, 8, Purpose.RANDOM))
                        .toList());
    }

    private static Application tankMix(String id) {
        ProductUse first =
                new ProductUse(
                        "DEMO Stage-L",
                        Optional.of("000-0"),
                        List.of("15", "6"),
                        OptionalDouble.of(4),
                        OptionalInt.of(3),
                        OptionalInt.of(5));
        ProductUse second =
                new ProductUse(
                        "DEMO Stage-A",
                        Optional.empty(),
                        List.of(),
                        OptionalDouble.of(12),
                        OptionalInt.empty(),
                        OptionalInt.empty());
        return new Application(
                id,
                "P1",
                Set.of("P1-B4", "P1-B3"),
                START,
                Optional.of(START.plusSeconds(4200)),
                List.of(first, second),
                "1.2 L a bench",
                "AP-1",
                "naïve ♀ “quoted” 'single' 🪲\nsecond line");
    }
}
