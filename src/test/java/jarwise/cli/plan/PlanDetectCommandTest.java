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

class PlanDetectCommandTest {

    private static final String REFUSED =
            """
            --density 0.1
            --density 0 --k 1
            --density -1 --k 1
            --density NaN --k 1
            --density 1e300 --units 1e300 --k 1
            --density 0.1 --k 0
            --density 0.1 --k NaN
            --density 0.1 --k 1 --units 0
            --density 0.1 --k 1 --efficiency 0
            --density 0.1 --k 1 --efficiency 25/24
            --density 0.1 --k 1 --efficiency 1.5
            --density 0.1 --k 1 --confidence 1
            --density 0.1 --k 1 --confidence 95
            --density 0.1 --k 1 --lot 100
            --density 0.1 --k 1 --infested 0.1
            --density 0.1 --k 1 --method poisson
            --lot 100
            --lot 0 --infested 1
            --lot 1e3 --infested 1
            --lot 100 --infested 0
            --lot 100 --infested 101
            --lot 100 --infested 2.5
            --lot 100 --infested 0.001
            --lot 100 --infested 5 --method poisson
            --lot 100 --infested 5 --correlation 0.1
            --lot 100 --infested 5 --units 10
            --infested 1
            --infested 3
            --infested 0.1 --k 1
            --infested 0.1 --correlation 0
            --infested 0.1 --correlation 1
            --infested 0.1 --correlation 0.1 --method poisson
            --infested 0.1 --method cubist
            """;

    /** Every tenth row is enough here; the engine's own tests take all. */
    static Stream<Row> clumped() {
        return every(10, "detection/clumped.csv");
    }

    static Stream<Row> finite() {
        return every(10, "detection/finite-lot.csv");
    }

    private static Stream<Row> every(int step, String file) {
        List<Row> rows = ReferenceTable.read(file);
        return Stream.iterate(0, i -> i < rows.size(), i -> i + step).map(rows::get);
    }

    private static CommandRun run(String options) {
        List<String> args = new ArrayList<>(List.of("plan", "detect"));
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
    @MethodSource("clumped")
    void jarsThatFindADensity(Row row) {
        JsonNode answer =
                json(
                        "--density %s --units %s --k %s --efficiency %s --confidence %s"
                                .formatted(
                                        row.text("density"),
                                        row.text("units"),
                                        row.text("k"),
                                        row.text("efficiency"),
                                        row.text("confidence")));

        assertThat(answer.get("sampleSize").isIntegralNumber()).isTrue();
        assertThat(answer.get("sampleSize").asLong()).isEqualTo((long) row.number("samples"));
        assertThat(answer.get("samplesExact").asDouble())
                .isCloseTo(row.number("samples_exact"), within(1e-9 * row.number("samples")));
        assertThat(answer.get("probability").asDouble())
                .isBetween(row.number("confidence") - 1e-12, 1.0);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("finite")
    void unitsOfALot(Row row) {
        JsonNode answer =
                json(
                        "--lot %s --infested %s --efficiency %s --confidence %s"
                                .formatted(
                                        row.text("lot"),
                                        row.text("infested"),
                                        row.text("efficacy"),
                                        row.text("confidence")));

        assertThat(answer.get("method").asText()).isEqualTo("hypergeometric");
        assertThat(answer.get("probability").asDouble())
                .isCloseTo(row.number("probability"), within(1e-12));
        if (row.has("samples")) {
            assertThat(answer.get("sampleSize").asLong()).isEqualTo((long) row.number("samples"));
        } else {
            assertThat(answer.get("sampleSize").isNull()).isTrue();
            assertThat(answer.get("warnings").get(0).asText()).contains("Not even the whole lot");
        }
    }

    @Test
    void aShareOfTheLotIsRoundedDown() {
        assertThat(json("--lot 500 --infested 0.005").get("sampleSize").asInt()).isEqualTo(388);
        assertThat(json("--lot 600 --infested 0.005").get("sampleSize").asInt()).isEqualTo(379);
        assertThat(json("--lot 100 --infested 0.29").get("infestedUnits").asInt()).isEqualTo(29);
        CommandRun none = run("--lot 19 --infested 0.05 --json");
        assertThat(none.code()).isEqualTo(Commands.WRONG_INPUT);
        assertThat(none.err()).contains("less than one unit").contains("Maybe");
    }

    @Test
    void largeLotsAreBinomialUnlessAskedOtherwise() {
        JsonNode binomial = json("--infested 0.01");
        assertThat(binomial.get("sampleSize").asInt()).isEqualTo(299);
        assertThat(binomial.get("method").asText()).isEqualTo("binomial");

        JsonNode poisson = json("--infested 0.01 --method poisson --efficiency 0.8");
        assertThat(poisson.get("sampleSize").asInt()).isEqualTo(375);
        assertThat(poisson.get("method").asText()).isEqualTo("poisson");

        JsonNode together = json("--infested 0.01 --correlation 0.01");
        assertThat(together.get("sampleSize").asInt()).isEqualTo(1923);
        assertThat(together.get("method").asText()).isEqualTo("beta-binomial");
    }

    @Test
    void aMeasuredEfficiencyIsIntegrated() {
        double known =
                json("--density 0.1 --units 10 --k 0.5 --efficiency 0.74")
                        .get("samplesExact")
                        .asDouble();
        double measured =
                json("--density 0.1 --units 10 --k 0.5 --efficiency 18/24")
                        .get("samplesExact")
                        .asDouble();

        assertThat(measured).isBetween(known, 1.3 * known);
        assertThat(json("--lot 80 --infested 5 --efficiency 18/24").get("sampleSize").asInt())
                .isBetween(38, 70);
    }

    @Test
    void sensitivityOfTheReaderCountsLikeEfficiency() {
        String plan = "--density 0.1 --units 10 --k 0.5 ";

        assertThat(json(plan + "--efficiency 0.8 --sensitivity 0.75").get("samplesExact"))
                .isEqualTo(json(plan + "--efficiency 0.6000000000000001").get("samplesExact"));
    }

    @Test
    void moreSamplesThanCanBeCountedAreNull() {
        JsonNode answer = json("--density 1e-12 --k 0.5 --efficiency 0.000001");

        assertThat(answer.get("sampleSize").isNull()).isTrue();
        assertThat(answer.get("samplesExact").isNull()).isTrue();
        assertThat(answer.get("warnings").get(0).asText()).contains("Not even 1000000000000000");
    }

    @Test
    void tellsAPersonInOneSentence() {
        CommandRun run = run("--density 0.05 --units 10 --k 0.5 --efficiency 0.6");

        assertThat(run.out())
                .contains("samples  chance of a find")
                .contains("13 samples find it with a chance of");
    }

    static Stream<String> refused() {
        return REFUSED.lines();
    }

    @ParameterizedTest
    @MethodSource("refused")
    void refusesInOneParagraph(String options) {
        CommandRun run = run(options + " --json");

        assertThat(run.code()).isEqualTo(Commands.WRONG_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n").doesNotContain("\tat ");
    }
}
