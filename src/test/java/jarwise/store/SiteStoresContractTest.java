package jarwise.store;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.decision.ActionThreshold;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import jarwise.sample.DetectionValue;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.Reader;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Nursery;
import jarwise.site.Occupancy;
import jarwise.site.Setting;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the stores of places, people, pests and choices promise, on both databases. */
class SiteStoresContractTest {

    private static final String ODD = "ä ♀ 🪲 'x' \"y\" %_";
    private static final LocalDate DAY = LocalDate.of(2026, 4, 14);
    private static final Instant NOON = Instant.parse("2026-04-14T12:00:00.000001Z");
    private static final Nursery LANE =
            new Nursery("lane", ODD, ZoneId.of("America/Toronto"), "fr");
    private static final Nursery OTHER = new Nursery("other", "zz", ZoneId.of("UTC"), "en");

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
        private SiteStore sites;
        private PestStore pests;
        private SettingsStore settings;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            sites = new SiteStore(database);
            pests = new PestStore(database);
            settings = new SettingsStore(database);
            sites.save(LANE);
            sites.save(OTHER);
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void keepsNurseriesAndChangesTheOneWithThatShortName() {
            assertThat(sites.nurseries()).containsExactlyInAnyOrder(LANE, OTHER);

            Nursery renamed = new Nursery("lane", "New name", ZoneId.of("UTC"), "es");
            sites.save(renamed);

            assertThat(sites.nurseries()).containsExactly(renamed, OTHER);
        }

        @Test
        void givesHousesAndBenchesInTheOrderOfTheWalk() {
            House cold = new House("H2", ODD, OptionalDouble.empty());
            House warm = new House("P1", "propagation", OptionalDouble.of(10.1 / 3));
            sites.save("lane", cold, 1);
            sites.save("lane", warm, 0);
            Bench last = new Bench("P1-B3", "P1", "B", 2);
            Bench first = new Bench("P1-B4", "P1", "", 1);
            sites.save("lane", last);
            sites.save("lane", first);

            assertThat(sites.houses("lane")).containsExactly(warm, cold);
            assertThat(sites.benches("lane")).containsExactly(first, last);
            assertThat(sites.houses("other")).isEmpty();
            assertThat(sites.benches("other")).isEmpty();

            Bench moved = new Bench("P1-B3", "H2", "C", 0);
            sites.save("lane", moved);
            assertThat(sites.benches("lane")).containsExactly(moved, first);
        }

        @Test
        void keepsTwoLotsOnOneBenchAndWhatIsKnownOfThem() {
            sites.save("lane", new House("P1", "", OptionalDouble.empty()), 0);
            sites.save("lane", new Bench("P1-B3", "P1", "B", 0));
            CropLot known =
                    new CropLot(
                            "L-1", "Gerbera", ODD, Optional.of("SUP-1"), Optional.of(DAY), true);
            CropLot bare =
                    new CropLot("L-2", "", "Rubia", Optional.empty(), Optional.empty(), false);
            sites.save("lane", bare);
            sites.save("lane", known);
            Occupancy past = occupancy("L-1", DAY, Optional.of(DAY.plusDays(9)), 480.5);
            Occupancy now =
                    new Occupancy(
                            "P1-B3",
                            "L-2",
                            DAY,
                            Optional.empty(),
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            Optional.empty());
            sites.save("lane", now);
            sites.save("lane", past);

            assertThat(sites.cropLots("lane")).containsExactly(known, bare);
            assertThat(sites.occupancies("lane")).containsExactly(past, now);
            assertThat(sites.cropLots("other")).isEmpty();
            assertThat(sites.occupancies("other")).isEmpty();

            Occupancy longer = occupancy("L-1", DAY, Optional.empty(), 470);
            sites.save("lane", longer);
            assertThat(sites.occupancies("lane")).containsExactly(longer, now);
        }

        @Test
        void givesPestsInTheOrderInWhichTheyWereAddedWithTheirStagesInTheirs() {
            Pest named = pest("ZZ-OWN", Optional.empty(), ODD, "egg", "adult");
            Pest coded = pest("FRANOC", Optional.of("FRANOC"), "thrips", "larva1", "larva2");
            pests.save(named);
            pests.save(coded);

            assertThat(pests.pests().all()).containsExactly(named, coded);

            Pest renamed = pest("ZZ-OWN", Optional.empty(), "another name", "egg", "adult");
            pests.save(renamed);
            assertThat(pests.pests().all())
                    .as("a new name changes no place in the list")
                    .containsExactly(renamed, coded);
        }

        @Test
        void keepsPeopleOfEachNurseryApart() {
            ReaderStore people = new ReaderStore(database);
            people.save("lane", new Reader("SC-2", ODD, "fr", true));
            people.save("lane", new Reader("SC-1", "scout", "es", true));
            people.save("other", new Reader("SC-1", "grower", "en", true));
            people.save("lane", new Reader("SC-1", "scout", "en", false));

            assertThat(people.readers("lane"))
                    .containsExactly(
                            new Reader("SC-1", "scout", "en", false),
                            new Reader("SC-2", ODD, "fr", true));
            assertThat(people.readers("other"))
                    .containsExactly(new Reader("SC-1", "grower", "en", true));
        }

        @Test
        void keepsOldThresholdsBehindTheOneThatTakesOver() {
            pests.save(pest("FRANOC", Optional.of("FRANOC"), "thrips", "larva1", "adult"));
            ActionThreshold old = threshold(0.3, DAY);
            ActionThreshold typedFirst = threshold(10.1 / 3, DAY.plusDays(1));
            ActionThreshold typedLast = threshold(0.2, DAY.plusDays(1));
            settings.add("lane", typedLast, NOON.plusNanos(1_000));
            settings.add("lane", typedFirst, NOON);
            settings.add("lane", old, NOON.plusSeconds(9));

            assertThat(settings.thresholds("lane")).containsExactly(typedLast, typedFirst, old);
            assertThat(settings.thresholds("other")).isEmpty();
        }

        @Test
        void answersWithTheProtocolOfTheDay() {
            ProtocolVersion longer = new ProtocolVersion(DAY, 47.5, 96, 12, 45, 55, 60, ODD);
            settings.add("lane", longer, NOON);

            assertThat(settings.protocols("lane")).containsExactly(longer);
            assertThat(settings.protocolOn("lane", DAY)).isEqualTo(longer);
            assertThat(settings.protocolOn("lane", DAY.minusDays(1)))
                    .isEqualTo(ProtocolVersion.standard(DAY.minusDays(1)));
            assertThat(settings.protocols("other")).isEmpty();
        }

        @Test
        void letsAnAdoptedShareEndAndKeepsIt() {
            pests.save(pest("FRANOC", Optional.of("FRANOC"), "thrips", "larva1", "adult"));
            DetectionValue measured = share("soap", OptionalDouble.of(18), Optional.empty());
            DetectionValue taken = share("water", OptionalDouble.empty(), Optional.empty());
            settings.add("lane", measured, NOON);
            settings.add("lane", taken, NOON.plusSeconds(1));

            settings.withdraw("lane", measured, DAY.plusDays(7));
            settings.withdraw("other", taken, DAY.plusDays(7));

            assertThat(settings.detection("lane"))
                    .containsExactly(
                            taken,
                            share("soap", OptionalDouble.of(18), Optional.of(DAY.plusDays(7))));
        }

        @Test
        void keepsEverySettingEverMade() {
            Setting early = new Setting("round_day", ODD, DAY, "HG-1", "");
            Setting late = new Setting("round_day", "tue", DAY.plusDays(1), "HG-1", "new crew");
            settings.add("lane", late, NOON);
            settings.add("lane", early, NOON.plusSeconds(1));

            assertThat(settings.settings("lane")).containsExactly(late, early);
            assertThat(settings.settings("other")).isEmpty();
        }
    }

    private static Occupancy occupancy(
            String lot, LocalDate from, Optional<LocalDate> to, double plants) {
        return new Occupancy(
                "P1-B3",
                lot,
                from,
                to,
                OptionalDouble.of(plants),
                OptionalDouble.of(10.1 / 3),
                Optional.of(from.minusDays(1)));
    }

    private static Pest pest(
            String code, Optional<String> eppo, String name, String first, String second) {
        return new Pest(
                code,
                eppo,
                name,
                name,
                eppo.isEmpty(),
                List.of(
                        new LifeStage(first, "young", StageMark.EGG, 0),
                        new LifeStage(second, "old", StageMark.ADULT, 1)));
    }

    private static ActionThreshold threshold(double density, LocalDate setOn) {
        return new ActionThreshold("FRANOC", "larva", density, setOn, "HG-1", "why", ODD);
    }

    /** A share measured with 24 known, or taken as 0.7. */
    private static DetectionValue share(
            String fluid, OptionalDouble found, Optional<LocalDate> withdrawnOn) {
        return new DetectionValue(
                DetectionValue.Kind.EXTRACTION,
                fluid,
                "FRANOC",
                "larva",
                found,
                found.isPresent() ? OptionalDouble.of(24) : OptionalDouble.empty(),
                found.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(0.7),
                DAY,
                withdrawnOn,
                ODD);
    }
}
