package jarwise.usecase.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page's numbers are those of the engine's commands. */
@Tag("slow")
class PlanNumbersTest {

    private static final String P1 = "P1-B1/L-2";

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

    static Stream<Row> detect() {
        return ReferenceTable.read("round-plan/detect.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("detect")
    void asManyJarsFindItAsTheTableSays(Row row) {
        PlannedRound planned =
                site.plan("density", row.text("density"), "k", row.text("k"), "efficiency", "0.6");

        assertThat(planned.answer().orElseThrow().jars()).isEqualTo((int) row.number("jars"));
    }

    static Stream<Row> estimate() {
        return ReferenceTable.read("round-plan/estimate.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("estimate")
    void asManyJarsGiveThePrecisionAsTheTableSays(Row row) {
        PlannedRound planned =
                site.plan(
                        "question", "estimate",
                        "density", String.valueOf(row.number("mean") / 10),
                        "precision", row.text("precision"),
                        "k", row.text("k"));

        assertThat(planned.answer().orElseThrow().jars()).isEqualTo((int) row.number("jars"));
    }

    @Test
    void detectsAsTheCommandDoes() {
        PlanAnswer.Detect answer =
                (PlanAnswer.Detect)
                        site.plan(
                                        "density", "0.13",
                                        "k", "0.7",
                                        "efficiency", "18/31",
                                        "sensitivity", "61/67",
                                        "points", "12",
                                        "confidence", "90")
                                .answer()
                                .orElseThrow();

        JsonNode json =
                command(
                        "plan detect --density 0.13 --k 0.7 --units 12 --efficiency 18/31"
                                + " --sensitivity 61/67 --confidence 0.9");
        assertThat(answer.needed()).hasValue(json.get("sampleSize").asLong());
        assertThat(answer.chance()).isEqualTo(json.get("probability").asDouble());
    }

    @Test
    void estimatesAsTheCommandDoes() {
        PlanAnswer.Estimate answer =
                (PlanAnswer.Estimate)
                        site.plan(
                                        "question", "estimate",
                                        "density", "0.5",
                                        "k", "0.8",
                                        "precision", "30",
                                        "points", "10",
                                        "efficiency", "0.5")
                                .answer()
                                .orElseThrow();

        JsonNode json = command("plan estimate --density 0.25 --k 0.8 --units 10 --precision 0.3");
        assertThat(answer.needed()).hasValue(json.get("sampleSize").asLong());
        double exact = json.get("samplesExact").asDouble();
        assertThat(answer.row().precision())
                .isCloseTo(0.3 * Math.sqrt(exact / answer.jars()), within(1e-12));
    }

    @Test
    void decidesAsTheCommandDoes() {
        PlanAnswer.Decide answer =
                (PlanAnswer.Decide)
                        site.plan(
                                        "question", "decide",
                                        "low", "0.1",
                                        "high", "0.4",
                                        "k", "0.8",
                                        "risk", "10",
                                        "most", "30")
                                .answer()
                                .orElseThrow();

        JsonNode low =
                command(
                                "plan decide --low 0.1 --high 0.4 --k 0.8 --alpha 0.1 --beta 0.1"
                                        + " --units 10 --max-samples 30 --densities 0.1")
                        .get("curve")
                        .get(0);
        assertThat(answer.at(0.1).below()).isEqualTo(low.get("probabilityBelow").asDouble());
        assertThat(answer.at(0.1).averageJars())
                .isEqualTo(low.get("averageSampleNumber").asDouble());
    }

    @Test
    void sharesJarsOutAsTheCommandDoes() {
        PlannedRound planned =
                site.plan(
                        "question", "estimate",
                        "jars", "11",
                        "stand", "H2-A1/L-1,H2-A2/L-1," + P1);

        assertThat(planned.places().stream().filter(jar -> isOn(jar, "H2-A1")).count())
                .as("300, 100 and 600 plants, two at least: 3.3, 1.1 and 6.6 of 11")
                .isEqualTo(3);
        assertThat(planned.places().stream().filter(jar -> isOn(jar, "H2-A2")).count())
                .isEqualTo(2);
        assertThat(planned.places().stream().filter(jar -> isOn(jar, "P1-B1")).count())
                .isEqualTo(6);
    }

    private static boolean isOn(JarPlace jar, String bench) {
        return jar.stand().filter(stand -> stand.bench().code().equals(bench)).isPresent();
    }

    private static JsonNode command(String line) {
        CommandRun run = CommandRun.of((line + " --json").split(" "));
        return run.json();
    }
}
