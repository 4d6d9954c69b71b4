package jarwise.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import jarwise.cli.Commands;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanEstimateCommandTest {

    /** Every tenth row is enough here; the engine's own tests take all. */
    static Stream<Row> golden() {
        List<Row> rows = ReferenceTable.read("precision/fixed-precision.csv");
        return Stream.iterate(0, i -> i < rows.size(), i -> i + 10).map(rows::get);
    }

    private static CommandRun run(String options) {
        List<String> args = new ArrayList<>(List.of("plan", "estimate"));
        args.addAll(List.of(options.split(" ", -1)));
        return CommandRun.of(args.toArray(String[]::new));
    }

    private static JsonNode json(String options) {
        CommandRun run = run(options + " --json");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.json().get("warnings").isArray()).isTrue();
        return run.json();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("golden")
    void samplesForAPrecision(Row row) {
        String law =
                row.text("law").equals("taylor")
                        ? "--taylor " + row.text("first") + "," + row.text("second")
                        : "--k " + row.text("first");
        JsonNode answer =
                json(
                        "--density %s --precision %s %s"
                                .formatted(row.text("mean"), row.text("precision"), law));

        assertThat(answer.get("sampleSize").isIntegralNumber()).isTrue();
        assertThat(answer.get("sampleSize").asLong()).isEqualTo((long) row.number("samples"));
        assertThat(answer.get("samplesExact").asDouble())
                .isCloseTo(row.number("samples_exact"), within(1e-9 * row.number("samples_exact")));
        assertThat(answer.get("cumulativeCount").asDouble())
                .isCloseTo(
                        row.number("cumulative_count"),
                        within(1e-9 * row.number("cumulative_count")));
    }

    @Test
    void unitsMakeTheMeanOfASample() {
        assertThat(json("--density 0.2 --units 10 --precision 0.25 --k 0.5"))
                .isEqualTo(json("--density 2 --precision 0.25 --k 0.5"));
    }

    @Test
    void takesIwaosConstants() {
        // (1.5/2 + 0.3) / 0.0625
        assertThat(
                        json("--density 2 --precision 0.25 --iwao 0.5,1.3")
                                .get("samplesExact")
                                .asDouble())
                .isCloseTo(16.8, within(1e-12));
        // (0.5/2 + 0.3) / 0.0625
        assertThat(
                        json("--density 2 --precision 0.25 --iwao -0.5,1.3")
                                .get("samplesExact")
                                .asDouble())
                .isCloseTo(8.8, within(1e-12));
    }

    @Test
    void moreSamplesThanCanBeCountedAreNull() {
        JsonNode answer = json("--density 1e-12 --precision 1e-6 --k 0.5");

        assertThat(answer.get("sampleSize").isNull()).isTrue();
        assertThat(answer.get("samplesExact").isNull()).isTrue();
        assertThat(answer.get("cumulativeCount").isNull()).isTrue();
        assertThat(answer.get("warnings").get(0).asText()).contains("More than 1000000000000000");
    }

    @Test
    void tellsAPersonInOneSentence() {
        assertThat(run("--density 0.2 --units 10 --precision 0.25 --k 0.5").out())
                .contains("standard error  samples  counted")
                .contains("40 samples give 0.2 per sampling unit with a standard error of 25 %");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--precision 0.25 --k 1",
                "--density 1 --k 1",
                "--density 1 --precision 0.25",
                "--density 1 --precision 0.25 --k 1 --taylor 2,1.5",
                "--density 1 --precision 0.25 --taylor 2",
                "--density 1 --precision 0.25 --taylor 2,x",
                "--density 1 --precision 0.25 --taylor -2,1.5",
                "--density 1 --precision 0.25 --taylor NaN,1.5",
                "--density 1 --precision 0.25 --iwao -2,1.5",
                "--density 9 --precision 0.25 --iwao 0.5,0.1",
                "--density 0 --precision 0.25 --k 1",
                "--density NaN --precision 0.25 --k 1",
                "--density 1 --precision 0 --k 1",
                "--density 1 --precision -0.25 --k 1",
                "--density 1 --precision 0.25 --k 0",
                "--density 1 --precision 0.25 --k 1 --units 0",
                "--density 1 --precision 0.25 --k 1 --unit 3"
            })
    void refusesInOneParagraph(String options) {
        CommandRun run = run(options + " --json");

        assertThat(run.code()).isEqualTo(Commands.WRONG_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n").doesNotContain("\tat ");
    }
}
