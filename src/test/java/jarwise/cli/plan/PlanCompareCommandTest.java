package jarwise.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Tag("slow")
class PlanCompareCommandTest {

    private static CommandRun run(String options) {
        List<String> args = new ArrayList<>(List.of("plan", "compare", "--json"));
        args.addAll(List.of(options.split(" ", -1)));
        return CommandRun.of(args.toArray(String[]::new));
    }

    @Test
    void saysTheChanceOfEachVerdict() {
        JsonNode json = run("--before 2 --efficacy 0.9 --k 2 --per-arm 8 --units 5").json();
        double sum = 0;
        for (String verdict : List.of("Worked", "Partly", "Failed", "CannotTell")) {
            sum += json.get("probability" + verdict).asDouble();
        }

        assertThat(sum).isCloseTo(1, within(1e-12));
        assertThat(json.get("efficacy").asDouble()).isEqualTo(0.9);
        assertThat(json.get("lowerMedian").asDouble()).isLessThan(0.9);
        assertThat(json.get("upperMedian").asDouble()).isBetween(0.9, 1.0);
        assertThat(json.get("method").asText()).isEqualTo("simulation");
        assertThat(json.get("seed").asLong()).isEqualTo(1);
        assertThat(json.get("warnings").isArray()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--before 0 --efficacy 0.9 --k 1 --per-arm 6",
                "--before NaN --efficacy 0.9 --k 1 --per-arm 6",
                "--before 1 --efficacy 90 --k 1 --per-arm 6",
                "--before 1 --efficacy NaN --k 1 --per-arm 6",
                "--before 1 --efficacy 0.9 --k 0 --per-arm 6",
                "--before 1 --efficacy 0.9 --k 1 --per-arm 0",
                "--before 1 --efficacy 0.9 --k 1 --per-arm 1.5",
                "--before 1 --efficacy 0.9 --k 1 --per-arm 100000",
                "--before 1 --efficacy 0.9 --k 1",
                "--before 1 --efficacy 0.9 --k 1 --per-arm 6 --target 1",
                "--before 1 --efficacy 0.9 --k 1 --per-arm 6 --check-change 0",
                "--before 1 --efficacy 0.9 --k 1 --per-arm 6 --units 1e300"
            })
    void refusesImpossibleNumbers(String options) {
        CommandRun run = run(options);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("Exception", "\n\n");
    }
}
