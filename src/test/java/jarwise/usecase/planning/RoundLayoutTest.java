package jarwise.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundLayoutTest {

    private static final String ALL = "H2-A1/L-1,H2-A2/L-1,P1-B1/L-2";

    @TempDir Path folder;
    private Database database;
    private PlanSite site;

    @BeforeEach
    void open() {
        database = DatabaseUnderTest.SQLITE.fresh(folder);
        site = new PlanSite(database);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void everyBenchGetsAJarAndPropagationIsWalkedFirst() {
        List<JarPlace> jars = site.plan("stand", ALL, "jars", "2").places();

        assertThat(jars)
                .extracting(jar -> jar.stand().orElseThrow().bench().code())
                .containsExactly("P1-B1", "H2-A1", "H2-A2");
        assertThat(jars).allMatch(jar -> jar.purpose() == Purpose.RANDOM);
    }

    @Test
    void targetedJarsAndChecksStandBesideTheRandomOnes() {
        List<JarPlace> jars =
                site.plan(
                                "stand",
                                "H2-A1/L-1",
                                "jars",
                                "3",
                                "hot",
                                "P1-B1/L-2",
                                "blank",
                                "1",
                                "spike",
                                "1")
                        .places();

        assertThat(jars).hasSize(6);
        assertThat(jars.get(0).purpose()).isEqualTo(Purpose.TARGETED);
        assertThat(jars.get(0).spot()).isEmpty();
        assertThat(jars.subList(1, 4)).allMatch(jar -> jar.spot().isPresent());
        assertThat(jars.subList(4, 6))
                .extracting(JarPlace::role)
                .containsExactly(SampleRole.BLANK, SampleRole.SPIKE);
    }

    @Test
    void theSameSeedGivesTheSamePlacesAndAnotherOneOthers() {
        List<JarPlace> jars = site.plan("stand", ALL, "jars", "9", "seed", "5").places();

        assertThat(site.plan("stand", ALL, "jars", "9", "seed", "5").places()).isEqualTo(jars);
        assertThat(site.plan("stand", ALL, "jars", "9", "seed", "6").places()).isNotEqualTo(jars);
    }

    @Test
    void aSearchForTheEdgeTakesOneJarFromEachBenchAround() {
        PlannedRound planned = site.plan("question", "delimit", "find", "H2-A1", "rings", "1");

        assertThat(planned.places())
                .singleElement()
                .satisfies(
                        jar ->
                                assertThat(jar.stand().orElseThrow().bench().code())
                                        .isEqualTo("H2-A2"));
        assertThat(site.plan("question", "delimit").places()).as("no find chosen").isEmpty();
    }

    @Test
    void aComparisonCutsAsManyOnEachSide() {
        PlannedRound planned =
                site.plan(
                        "question",
                        "compare",
                        "stand",
                        "H2-A1/L-1",
                        "check",
                        "H2-A2/L-1",
                        "each",
                        "5",
                        "density",
                        "1");

        assertThat(planned.places()).hasSize(10);
        assertThat(planned.places())
                .filteredOn(jar -> jar.stand().orElseThrow().bench().code().equals("H2-A2"))
                .hasSize(5);
        assertThat(site.plan("question", "compare", "stand", "H2-A1/L-1").places())
                .as("no check chosen")
                .isEmpty();
    }
}
