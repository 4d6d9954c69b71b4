package jarwise.cli.laboratory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WashingCommandsTest {

    private static JsonNode json(String line) {
        CommandRun run = CommandRun.of((line + " --json").split(" "));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        return run.json();
    }

    @Test
    void partGivesTheWholeWithLimits() {
        JsonNode answer = json("partial --found 7 --read 10 --total 40");

        assertThat(answer.get("estimate").asDouble()).isEqualTo(28);
        assertThat(answer.get("lower").asDouble()).isEqualTo(15);
        assertThat(answer.get("upper").asDouble()).isEqualTo(53);
        assertThat(answer.get("upperOneSided").asDouble()).isEqualTo(49);
        assertThat(answer.get("warnings")).isEmpty();
    }

    @Test
    void maximumLikelihoodIsTheDefault() {
        JsonNode answer = json("removal 165 101 54");

        assertThat(answer.get("estimate").asDouble()).isCloseTo(394.466473, within(1e-5));
        assertThat(answer.get("lower").asDouble()).isCloseTo(360.182628, within(1e-5));
        assertThat(answer.get("upper").asDouble()).isCloseTo(455.501569, within(1e-5));
        assertThat(answer.get("removalProbability").asDouble()).isCloseTo(0.425306, within(1e-6));
        assertThat(answer.get("finite").asBoolean()).isTrue();
        assertThat(answer.get("fit").get("degreesOfFreedom").asInt()).isEqualTo(1);
        assertThat(answer.get("fit").get("pValue").asDouble()).isCloseTo(0.593186, within(1e-5));
        assertThat(json("removal --method ml 165 101 54")).isEqualTo(answer);
    }

    @Test
    void otherMethodsGoByTheirNames() {
        JsonNode zippin = json("removal 165 101 54 --method zippin");
        JsonNode carleStrub = json("removal 5 7 8 --method carle-strub");
        JsonNode twoPass = json("removal 79 28 --method two-pass");

        assertThat(zippin.get("standardError").asDouble()).isCloseTo(23.331997, within(1e-5));
        assertThat(carleStrub.get("estimate").asDouble()).isEqualTo(44);
        assertThat(twoPass.get("estimate").asDouble()).isCloseTo(122.372549, within(1e-5));
        assertThat(twoPass.get("standardError").asDouble()).isCloseTo(8.797042, within(1e-5));
        assertThat(twoPass.has("fit")).isFalse();
    }

    @Test
    void washesThatDoNotFallOffAreAnAnswer() {
        JsonNode answer = json("removal 4 6 9");

        assertThat(answer.get("finite").asBoolean()).isFalse();
        assertThat(answer.get("estimate").isNull()).isTrue();
        assertThat(answer.get("upper").isNull()).isTrue();
        assertThat(answer.get("lower").asDouble()).isEqualTo(19);
        assertThat(answer.get("removalProbability").isNull()).isTrue();
        assertThat(answer.get("warnings").get(0).asText()).contains("do not fall off");
        assertThat(json("removal 10 10 --method two-pass").get("finite").asBoolean()).isFalse();
    }

    @Test
    void anEndlessUpperLimitIsNullAndSaid() {
        JsonNode answer = json("removal 10 10");

        assertThat(answer.get("finite").asBoolean()).isTrue();
        assertThat(answer.get("estimate").asDouble()).isCloseTo(59.828227, within(1e-4));
        assertThat(answer.get("upper").isNull()).isTrue();
        assertThat(answer.get("warnings").get(0).asText()).contains("no upper limit");
    }

    @Test
    void aFirstWashThatDiffersIsSaid() {
        JsonNode answer = json("removal 45 11 18 8");

        assertThat(answer.get("firstWash").get("estimate").asDouble())
                .isCloseTo(123.6, within(0.05));
        assertThat(answer.get("firstWash").get("upper").isNull()).isTrue();
        assertThat(answer.get("warnings").toString()).contains("first wash brings off another");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "removal",
                "removal 5",
                "removal 0 0 0",
                "removal 5 -3",
                "removal 5 NaN",
                "removal 5 1.5",
                "removal 5 1e3",
                "removal 5 99999999999",
                "removal 5 3 1 --method two-pass",
                "removal 5 3 --method best",
                "removal 5 3 --confidence 95",
                "partial --found 7 --read 10",
                "partial --found -7 --read 10 --total 40",
                "partial --found 7.5 --read 10 --total 40",
                "partial --found NaN --read 10 --total 40",
                "partial --found 7 --read NaN --total 40",
                "partial --found 7 --read 0 --total 40",
                "partial --found 7 --read 41 --total 40",
                "partial --found 7 --read 10 --total Infinity"
            })
    void refusesInOneParagraph(String line) {
        CommandRun run = CommandRun.of(line.split(" "));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n", "Exception");
    }
}
