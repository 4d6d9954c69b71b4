package jarwise.store.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Nursery;
import jarwise.site.Occupancy;
import jarwise.site.floor.FloorPlan.BenchPlace;
import jarwise.site.floor.FloorPlan.Drawn;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.Rectangle;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.SiteStore;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the store of the plan promises, on both databases. */
class FloorStoreContractTest {

    private static final Rectangle ODD = new Rectangle(-1.1 / 3, 0.1 + 0.2, 8.7 / 7, 1e-3);
    private static final String TEXT = "‘north’ \"door\"; — 東 🌱";

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
        private FloorStore floors;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            floors = new FloorStore(database);
            SiteStore sites = new SiteStore(database);
            for (String slug : List.of("lane", "other")) {
                sites.save(new Nursery(slug, slug, ZoneOffset.UTC, "en"));
                sites.save(slug, new House("P1", "", OptionalDouble.empty()), 0);
                sites.save(slug, new Bench("P1-B3", "P1", "B", 0));
            }
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void keepsAllDigitsOfWhatWasDrawnAndTheNewestDrawing() {
            floors.putHouse("lane", "P1", new Rectangle(0, 0, 1, 1));
            floors.putHouse("lane", "P1", ODD);
            floors.putBench("lane", "P1-B3", new BenchPlace("", new Rectangle(0, 0, 1, 1)));
            floors.putBench("lane", "P1-B3", new BenchPlace(TEXT, ODD));

            Drawn drawn = floors.drawn("lane");

            assertThat(drawn.houses()).isEqualTo(Map.of("P1", ODD));
            assertThat(drawn.benches()).isEqualTo(Map.of("P1-B3", new BenchPlace(TEXT, ODD)));
            assertThat(floors.drawn("other")).isEqualTo(Drawn.NOTHING);
        }

        @Test
        void keepsChangesAndRemovesHotSpots() {
            HotSpot door = spot("1", Optional.empty(), HotSpot.Kind.DOOR);
            HotSpot arrivals = spot("2", Optional.of("P1-B3"), HotSpot.Kind.ARRIVALS);
            floors.put("lane", door);
            floors.put("lane", arrivals);
            floors.put("other", door);
            assertThat(floors.drawn("lane").hotSpots()).containsExactly(door, arrivals);

            HotSpot vent = spot("1", Optional.empty(), HotSpot.Kind.VENT);
            floors.put("lane", vent);
            floors.removeHotSpot("lane", "2");
            floors.removeHotSpot("lane", "never there");

            assertThat(floors.drawn("lane").hotSpots()).containsExactly(vent);
            assertThat(floors.drawn("other").hotSpots()).containsExactly(door);
        }

        @Test
        void takesAwayABenchOnlyWhileNothingIsOnRecordOfIt() {
            SiteStore sites = new SiteStore(database);
            sites.save("lane", new Bench("P1-B4", "P1", "B", 1));
            floors.putBench("lane", "P1-B3", new BenchPlace("", ODD));
            floors.putBench("lane", "P1-B4", new BenchPlace("", ODD));
            floors.put("lane", spot("2", Optional.of("P1-B3"), HotSpot.Kind.ARRIVALS));

            assertThat(floors.removeUnused("lane", "P1-B3")).isFalse();
            assertThat(floors.removeUnused("lane", "P1-B4")).isTrue();
            assertThat(floors.removeUnused("lane", "P1-B4")).isFalse();
            assertThat(sites.benches("lane")).extracting(Bench::code).containsExactly("P1-B3");
            floors.removeHotSpot("lane", "2");
            sites.save(
                    "lane", new CropLot("L", "", "X", Optional.empty(), Optional.empty(), false));
            sites.save("lane", stands());
            assertThat(floors.removeUnused("lane", "P1-B3")).isFalse();
            assertThat(floors.removeUnused("other", "P1-B3")).isTrue();
            assertThat(floors.drawn("lane").benches()).containsOnlyKeys("P1-B3");
        }

        private static Occupancy stands() {
            return new Occupancy(
                    "P1-B3",
                    "L",
                    LocalDate.of(2026, 5, 4),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty());
        }

        @Test
        void drawsNoBenchThatDoesNotExist() {
            assertThatThrownBy(() -> floors.putBench("lane", "P9", new BenchPlace("", ODD)))
                    .isInstanceOf(RuntimeException.class);
            assertThat(floors.drawn("lane")).isEqualTo(Drawn.NOTHING);
        }

        private static HotSpot spot(String code, Optional<String> bench, HotSpot.Kind kind) {
            return new HotSpot(code, "P1", bench, kind, new HotSpot.Point(0.1 / 3, 4), TEXT);
        }
    }
}
