package jarwise.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanPrecisionLineCommandTest {

    /** Thrips tabaci on onion, see reference/sequential/green-thrips.csv. */
    @ParameterizedTest(name = "{0} samples")
    @CsvSource({"10, 182.49", "20, 88.44", "50, 33.95"})
    void greensLine(int sampleSize, double count) {
        JsonNode json =
                run("plan precision-line --taylor 2.586,1.511 --precision 0.25 --units 2 --json")
                        .json();
        JsonNode entry = json.get("stopLines").get(sampleSize - 1);

        assertThat(json.get("stopLines")).hasSize(60);
        assertThat(json.get("warnings")).isEmpty();
        assertThat(entry.get("sampleSize").asInt()).isEqualTo(sampleSize);
        assertThat(entry.get("cumulativeCount").asDouble()).isCloseTo(count, within(0.01));
        assertThat(entry.get("density").asDouble())
                .isCloseTo(entry.get("cumulativeCount").asDouble() / sampleSize / 2, within(1e-12));
    }

    @Test
    void kunosLineIsNullWhereThereIsNone() {
        JsonNode json =
                run("plan precision-line --iwao 0.5,1.3 --precision 0.25 --max-samples 20 --json")
                        .json();
        JsonNode lines = json.get("stopLines");

        assertThat(lines).hasSize(20);
        assertThat(lines.get(3).get("cumulativeCount").isNull()).isTrue();
        assertThat(lines.get(4).get("cumulativeCount").isNull()).isFalse();
        assertThat(lines.get(19).get("cumulativeCount").asDouble())
                .isCloseTo(31.5789, within(1e-4));
        assertThat(json.get("warnings").get(0).asText()).contains("no line up to 4.8 samples");
    }

    @Test
    void withTaylorsBOfTwoThereIsNoLine() {
        JsonNode json = run("plan precision-line --taylor 2,2 --precision 0.25 --json").json();

        assertThat(json.get("stopLines").get(59).get("cumulativeCount").isNull()).isTrue();
        assertThat(json.get("warnings").get(0).asText()).contains("a/D² = 32");
    }

    @Test
    void withTaylorsBOverTwoTheLineStopsFromAbove() {
        JsonNode json = run("plan precision-line --taylor 2,2.2 --precision 0.25 --json").json();

        assertThat(json.get("stopWhen").asText()).isEqualTo("at or under");
        assertThat(json.get("warnings").get(0).asText()).contains("at or under");
    }

    @Test
    void peopleGetATableAndASentence() {
        CommandRun run = run("plan precision-line --taylor 2.586,1.511 --precision 0.25");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("stop at or over")
                .contains("the standard error is then 25 % of the mean");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "plan precision-line --precision 0.25",
                "plan precision-line --precision 0.25 --taylor 2,1 --iwao 1,1",
                "plan precision-line --taylor 2,1.5",
                "plan precision-line --precision 1 --taylor 2,1.5",
                "plan precision-line --precision 25 --taylor 2,1.5",
                "plan precision-line --precision NaN --taylor 2,1.5",
                "plan precision-line --precision 0.25 --taylor 2",
                "plan precision-line --precision 0.25 --taylor 2,x",
                "plan precision-line --precision 0.25 --taylor 2,NaN",
                "plan precision-line --precision 0.25 --taylor -2,1.5",
                "plan precision-line --precision 0.25 --iwao -1,1.5",
                "plan precision-line --precision 0.25 --taylor 2,1.5 --max-samples 0",
                "plan precision-line --precision 0.25 --taylor 2,1.5 --max-samples 10001",
                "plan precision-line --precision 0.25 --taylor 2,1.5 --units -1"
            })
    void wrongInputIsRefusedInOneParagraph(String command) {
        CommandRun run = run(command);

        assertThat(run.out()).isEmpty();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n", "Exception", "at jarwise");
    }

    private static CommandRun run(String command) {
        return CommandRun.of(command.split(" "));
    }
}
