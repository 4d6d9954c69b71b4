package jarwise.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import jarwise.cli.Commands;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanAllocateCommandTest {

    private static CommandRun run(String strata, String... options) {
        List<String> args = new ArrayList<>(List.of("plan", "allocate", "--strata", strata));
        args.addAll(List.of(options));
        return CommandRun.of(args.toArray(String[]::new));
    }

    @Test
    void sharesOutBySize() {
        CommandRun run = run("house 1=500,house 2=300,house 3=200", "--total", "10", "--json");
        JsonNode answer = run.json();

        assertThat(run.code()).isZero();
        assertThat(answer.get("method").asText()).isEqualTo("proportional");
        assertThat(answer.get("sampleSize").asInt()).isEqualTo(10);
        assertThat(answer.get("standardError").isNull()).isTrue();
        assertThat(answer.get("warnings")).hasSize(1);
        assertThat(answer.get("strata")).hasSize(3);
        assertThat(answer.get("strata").get(0).get("stratum").asText()).isEqualTo("house 1");
        assertThat(answer.get("strata").get(0).get("sampleSize").asInt()).isEqualTo(5);
        assertThat(answer.get("strata").get(2).get("standardDeviation").isNull()).isTrue();
    }

    @Test
    void sharesOutByNeymansRatioWithCosts() {
        JsonNode answer = run("a=300:2,b=100:6:4", "--total", "9", "--json").json();

        assertThat(answer.get("method").asText()).isEqualTo("neyman");
        assertThat(answer.get("strata").get(0).get("sampleSize").asInt()).isEqualTo(6);
        assertThat(answer.get("strata").get(1).get("sampleSize").asInt()).isEqualTo(3);
        assertThat(answer.get("cost").asDouble()).isEqualTo(18);
        assertThat(answer.get("standardError").asDouble()).isBetween(1.06, 1.061);
        assertThat(answer.get("warnings")).isEmpty();
    }

    @Test
    void tellsAPersonInOneSentence() {
        assertThat(run("a=300:2,b=100:6", "--total", "9").out())
                .contains("stratum  units standing  deviation  samples")
                .contains("9 samples in all, more where it is larger, more uneven or cheaper");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "a",
                "=3",
                "a=",
                "a=x",
                "a=0",
                "a=-5",
                "a=NaN",
                "a=1:2:3:4",
                "a=10,a=20",
                "a=10:1,b=10",
                "a=10:0,b=10:0",
                "a=10:-1,b=10:1",
                "a=10:1:0,b=10:1",
                "a=1,b=1,c=1,d=1,e=1,f=1"
            })
    void refusesInOneParagraph(String strata) {
        CommandRun run = run(strata, "--total", "10", "--json");

        assertThat(run.code()).isEqualTo(Commands.WRONG_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n").doesNotContain("\tat ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-3", "2.5", "x", "1", "1000001", "99999999999"})
    void refusesATotalThatCannotBe(String total) {
        CommandRun run = run("a=10", "--total", total);

        assertThat(run.code()).isEqualTo(Commands.WRONG_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(total);
    }
}
