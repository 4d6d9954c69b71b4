package jarwise.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundWarningsTest {

    private static final String P1 = "P1-B1/L-2";
    private static final String H2 = "H2-A1/L-1";

    @TempDir Path folder;
    private Database database;
    private PlanSite site;

    @BeforeEach
    void open() {
        database = DatabaseUnderTest.SQLITE.fresh(folder);
        site = new PlanSite(database).with("working-days", "MO,TU,WE,TH,FR");
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void nothingStandsInTheWayOfAMonday() {
        PlannedRound planned = site.plan("stand", P1, "start", "07:30");

        assertThat(planned.warnings()).isEmpty();
        assertThat(planned.mayBeRegistered()).isTrue();
    }

    /** Washed on Friday morning, read from Saturday morning to Monday morning, before work. */
    @Test
    void aFridayWashIsReadableOnlyWhenNobodyWorks() {
        PlannedRound planned =
                site.plan("stand", P1, "day", "2026-05-08", "start", "05:00", "jars", "6");

        assertThat(planned.warnings())
                .singleElement()
                .isInstanceOfSatisfying(
                        RoundWarning.NobodyReads.class,
                        late -> {
                            assertThat(late.minutesThere()).isZero();
                            assertThat(late.instead()).contains(PlanSite.MONDAY);
                        });
        assertThat(planned.mayBeRegistered()).as("a soft limit").isTrue();
    }

    @Test
    void aRunningIntervalBlocksUntilANamedPersonAnswersForIt() {
        site.sprayed("P1-B1", Instant.parse("2026-05-10T20:00:00Z"), 24);

        PlannedRound blocked = site.plan("stand", P1 + "," + H2);
        PlannedRound onlyBy = site.plan("stand", P1, "exception_by", "HG-1");
        PlannedRound excepted =
                site.plan("stand", P1, "exception_by", "HG-1", "exception_reason", "label, gloves");

        assertThat(blocked.mayBeRegistered()).isFalse();
        assertThat(noEntry(blocked).stands()).extracting(StandThere::key).containsExactly(P1);
        assertThat(onlyBy.mayBeRegistered()).as("a reason is needed too").isFalse();
        assertThat(excepted.mayBeRegistered()).isTrue();
        assertThat(noEntry(excepted).excepted()).isTrue();
        assertThat(site.plan("stand", H2).warnings()).as("another bench").isEmpty();
        assertThat(site.plan("stand", P1, "start", "20:30").mayBeRegistered())
                .as("after the interval")
                .isTrue();
    }

    private static RoundWarning.NoEntry noEntry(PlannedRound planned) {
        return planned.warnings().stream()
                .filter(RoundWarning.NoEntry.class::isInstance)
                .map(RoundWarning.NoEntry.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void plantsThatTheSiteHasMarkedAreNotCut() {
        site.with("not-to-cut", "L-2, H2-A2");

        assertThat(site.plan("stand", P1).mayBeRegistered()).isFalse();
        assertThat(site.plan("stand", H2).mayBeRegistered()).isTrue();
    }

    @Test
    void aNearEmptyCheckIsSaidBeforeTheSpray() {
        PlannedRound thin = compared("0.05", "8", H2, "H2-A2/L-1");
        PlannedRound enough = compared("0.5", "8", H2, "H2-A2/L-1");

        assertThat(thin.warnings()).hasAtLeastOneElementOfType(RoundWarning.ThinCheck.class);
        assertThat(enough.warnings()).isEmpty();
    }

    @Test
    void twoVarietiesOnTwoBenchesCanNotBeToldApart() {
        assertThat(compared("0.5", "8", P1, H2).warnings())
                .hasAtLeastOneElementOfType(RoundWarning.VarietyIsBench.class);
    }

    private PlannedRound compared(String density, String each, String treated, String check) {
        return site.plan(
                "question", "compare",
                "density", density,
                "each", each,
                "stand", treated,
                "check", check);
    }

    @Test
    void moreFiltersThanPlacesInTheFreezerAreSaid() {
        site.with("freezer-places", "5");

        assertThat(site.plan("stand", P1, "jars", "6").warnings())
                .containsExactly(new RoundWarning.FreezerFull(5, 0, 6));
        assertThat(site.plan("stand", P1, "jars", "5").warnings()).isEmpty();
    }

    @Test
    void benchesOfUnknownSizeCountTheSame() {
        PlannedRound planned = site.plan("stand", P1 + ",P1-B2/L-3", "jars", "8");

        assertThat(planned.warnings()).hasAtLeastOneElementOfType(RoundWarning.SizesUnknown.class);
        assertThat(planned.places())
                .filteredOn(jar -> jar.stand().orElseThrow().key().equals(P1))
                .hasSize(4);
    }

    @Test
    void aDayThatIsOverIsRefused() {
        PlannedRound planned = site.plan("stand", P1, "day", LocalDate.of(2026, 5, 6).toString());

        assertThat(planned.faults()).containsKey("day");
        assertThat(planned.mayBeRegistered()).isFalse();
    }

    @Test
    void whatCanNotBeReadIsSaidBesideItsField() {
        for (List<String> wrong :
                List.of(
                        List.of("density", "0"),
                        List.of("density", "many"),
                        List.of("confidence", "100"),
                        List.of("points", "0"),
                        List.of("k", "-1"),
                        List.of("efficiency", "20/10"),
                        List.of("start", "soon"))) {
            PlannedRound planned = site.plan(wrong.get(0), wrong.get(1), "stand", P1);
            assertThat(planned.faults()).as(wrong.toString()).containsOnlyKeys(wrong.get(0));
            assertThat(planned.answer()).isEmpty();
        }
    }
}
