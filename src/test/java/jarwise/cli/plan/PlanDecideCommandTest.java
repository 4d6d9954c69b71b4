package jarwise.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanDecideCommandTest {

    private static final String PLAN = "plan decide --low 1 --high 2 --alpha 0.1 --beta 0.1";

    static List<Row> outcomes() {
        return ReferenceTable.read("sequential/outcome.csv");
    }

    @ParameterizedTest(name = "{index}: {0}")
    @MethodSource("outcomes")
    void printsWhatTwoOtherRecursionsSay(Row row) {
        JsonNode json = run(command(row) + " --json").json();
        JsonNode point = json.get("curve").get(0);

        assertThat(json.get("curve")).hasSize(1);
        assertThat(json.get("stopLines")).hasSize((int) row.number("n_max"));
        assertClose(json.get("slope"), row, "slope");
        assertClose(json.get("lowerIntercept"), row, "h0");
        assertClose(json.get("upperIntercept"), row, "h1");
        assertClose(point.get("density"), row, "true_mean");
        assertClose(point.get("probabilityBelow"), row, "p_low");
        assertClose(point.get("probabilityAbove"), row, "p_high");
        assertClose(point.get("probabilityUndecided"), row, "p_undecided");
        assertClose(point.get("averageSampleNumber"), row, "asn");
        assertClose(point.get("waldProbabilityBelow"), row, "wald_p_low");
        assertClose(point.get("waldAverageSampleNumber"), row, "wald_asn");
        JsonNode quantiles = point.get("sampleNumberQuantiles");
        assertThat(quantiles.get("0.5").asInt()).isEqualTo((int) row.number("n_q50"));
        assertThat(quantiles.get("0.9").asInt()).isEqualTo((int) row.number("n_q90"));
        assertThat(quantiles.get("0.95").asInt()).isEqualTo((int) row.number("n_q95"));
    }

    private static String command(Row row) {
        String spread =
                switch (row.text("kind")) {
                    case "binomial" -> "--binomial";
                    case "poisson" -> "--poisson";
                    default -> "--k " + row.text("design_k") + " --true-k " + row.text("true_k");
                };
        return ("plan decide --low %s --high %s --alpha %s --beta %s --min-samples %s"
                        + " --max-samples %s --densities %s %s")
                .formatted(
                        row.text("m0"),
                        row.text("m1"),
                        row.text("alpha"),
                        row.text("beta"),
                        row.text("n_min"),
                        row.text("n_max"),
                        row.text("true_mean"),
                        spread);
    }

    private static void assertClose(JsonNode value, Row row, String column) {
        assertThat(value.asDouble()).isCloseTo(row.number(column), within(1e-9));
    }

    @Test
    void stopLinesAreRoundedToWholeTotals() {
        JsonNode json = run(PLAN + " --k 0.8 --json").json();
        JsonNode first = json.get("stopLines").get(0);
        JsonNode tenth = json.get("stopLines").get(9);

        assertThat(first.get("sampleSize").asInt()).isEqualTo(1);
        assertThat(first.get("stopBelow").isNull()).isTrue();
        assertThat(json.get("warnings").get(0).asText()).contains("no total is low enough");
        assertThat(tenth.get("lower").asDouble()).isCloseTo(5.3218, within(1e-4));
        assertThat(tenth.get("stopBelow").isIntegralNumber()).isTrue();
        assertThat(tenth.get("stopBelow").asInt()).isEqualTo(5);
        assertThat(tenth.get("upper").asDouble()).isCloseTo(22.8076, within(1e-4));
        assertThat(tenth.get("stopAbove").asInt()).isEqualTo(23);
    }

    @Test
    void theUsualDensitiesGoFromAQuarterOfTheLowToTwiceTheHigh() {
        JsonNode curve = run(PLAN + " --k 0.8 --json").json().get("curve");

        assertThat(curve).hasSize(41);
        assertThat(curve.get(0).get("density").asDouble()).isEqualTo(0.25);
        assertThat(curve.get(40).get("density").asDouble()).isEqualTo(4);
    }

    @Test
    void unitsInASampleMultiplyTheDensity() {
        String tail = " --k 0.8 --alpha 0.1 --beta 0.1 --json";
        JsonNode perJar = run("plan decide --low 1 --high 2 --densities 1.5" + tail).json();
        JsonNode perPoint =
                run("plan decide --low 0.125 --high 0.25 --units 8 --densities 0.1875" + tail)
                        .json();

        assertThat(perPoint.get("stopLines")).isEqualTo(perJar.get("stopLines"));
        assertThat(perPoint.get("curve").get(0).get("probabilityBelow"))
                .isEqualTo(perJar.get("curve").get(0).get("probabilityBelow"));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"--k 0.8 --true-k 0.4", "--poisson", "--k 0.8 --units 7"})
    void aPlanMadeAgainFromItsOwnFiguresIsTheSame(String spread) {
        CommandRun first = run(PLAN + " --min-samples 3 --json " + spread);
        JsonNode json = first.json();
        List<String> args = new ArrayList<>(List.of("plan", "decide", "--json"));
        for (String field : List.of("low", "high", "alpha", "beta", "units", "k")) {
            if (json.has(field)) {
                args.addAll(List.of("--" + field, json.get(field).asText()));
            }
        }
        args.addAll(List.of("--min-samples", json.get("minSamples").asText()));
        args.addAll(List.of("--max-samples", json.get("maxSamples").asText()));
        if (json.get("distribution").asText().equals("poisson")) {
            args.add("--poisson");
        } else {
            args.addAll(List.of("--true-k", json.get("trueK").asText()));
        }

        assertThat(CommandRun.of(args.toArray(String[]::new)).out()).isEqualTo(first.out());
    }

    @Test
    void nothingThereEndsBelow() {
        JsonNode none = run(PLAN + " --k 0.8 --densities 0 --json").json().get("curve").get(0);

        assertThat(none.get("probabilityBelow").asDouble()).isEqualTo(1);
        assertThat(none.get("averageSampleNumber").asDouble()).isEqualTo(7);
        assertThat(none.get("waldProbabilityBelow").asDouble()).isEqualTo(1);
    }

    @Test
    void peopleGetTwoTablesAndASentence() {
        CommandRun run = run(PLAN + " --k 0.8 --max-samples 20");

        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("below at or under")
                .contains("95 % within")
                .contains("At 1 it says \"below\" with a chance of")
                .contains("still undecided after 20 samples; they are not shared out.");
    }

    static List<String> wrong() {
        return List.of(
                "--low 2 --high 1 --k 1 --alpha 0.1 --beta 0.1",
                "--low 1 --high 1 --k 1 --alpha 0.1 --beta 0.1",
                "--low 0 --high 1 --k 1 --alpha 0.1 --beta 0.1",
                "--low NaN --high 1 --k 1 --alpha 0.1 --beta 0.1",
                "--low 1 --high 2 --k 1 --alpha 0.5 --beta 0.1",
                "--low 1 --high 2 --k 1 --alpha 0.1 --beta 0",
                "--low 1 --high 2 --k 1 --alpha NaN --beta 0.1",
                "--low 1 --high 2 --k 1 --alpha 0.1",
                "--low 1 --high 2 --k 0 --alpha 0.1 --beta 0.1",
                "--low 1 --high 2 --alpha 0.1 --beta 0.1",
                "--low 0.1 --high 1 --binomial --alpha 0.1 --beta 0.1",
                "--low 0.1 --high 0.2 --binomial --units 8 --alpha 0.1 --beta 0.1",
                "--low 0.1 --high 0.2 --binomial --true-k 1 --alpha 0.1 --beta 0.1",
                "--low 0.1 --high 0.2 --binomial --densities 1.2 --alpha 0.1 --beta 0.1",
                "--low 1 --high 1.0000001 --k 1 --alpha 0.1 --beta 0.1",
                "--low 1000 --high 1100 --k 0.3 --alpha 0.1 --beta 0.1");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrong")
    void wrongDesignsAreRefusedInOneParagraph(String options) {
        assertRefused("plan decide " + options);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "--k 1 --poisson",
                "--poisson --binomial",
                "--binomial",
                "--k 1 --min-samples 61",
                "--k 1 --min-samples 0",
                "--k 1 --max-samples 10001",
                "--k 1 --max-samples 1.5",
                "--k 1 --densities 1,-2",
                "--k 1 --densities 1,NaN",
                "--k 1 --densities 1,,2",
                "--k 1 --true-k -1",
                "--k 1 --units 0",
                "--k 1 --units 1e30"
            })
    void wrongOptionsAreRefusedInOneParagraph(String options) {
        assertRefused(PLAN + " " + options);
    }

    private static void assertRefused(String command) {
        CommandRun run = run(command);

        assertThat(run.out()).isEmpty();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n", "Exception", "at jarwise");
    }

    private static CommandRun run(String command) {
        return CommandRun.of(command.split(" "));
    }
}
