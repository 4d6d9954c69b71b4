package jarwise.cli.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalibrateCommandTest {

    /** Taps find half of the adults that jars hold, and none of the larvae. */
    private static final String PAIRS =
            """
            bench,date,method,stage,units,count
            A,2026-03-02,wash,adult,1,4
            A,2026-03-02,tap,adult,1,2
            B,2026-03-02,wash,adult,1,7
            B,2026-03-02,tap,adult,1,3
            A,2026-03-09,wash,adult,1,9
            A,2026-03-09,tap,adult,1,5
            A,2026-03-02,wash,larva,1,6
            A,2026-03-02,tap,larva,1,0
            B,2026-03-02,wash,larva,1,8
            B,2026-03-02,tap,larva,1,0
            """;

    @TempDir Path folder = Path.of("");

    private CommandRun run(String text, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("pairs.csv"), text);
        List<String> args = new ArrayList<>(List.of("calibrate", file.toString()));
        args.addAll(List.of(options));
        return CommandRun.of(args.toArray(String[]::new));
    }

    @Test
    void saysWhatTapsFindOfWhatJarsHold() throws IOException {
        JsonNode json = run(PAIRS, "--by", "stage", "--threshold", "5", "--json").json();
        JsonNode adult = json.get("groups").get(0);
        JsonNode larva = json.get("groups").get(1);

        assertThat(adult.get("group").get("stage").asText()).isEqualTo("adult");
        // counts vary less than by chance, so the ratio is that of the sums: 10 / 20
        assertThat(adult.get("ratio").asDouble()).isCloseTo(0.5, within(1e-7));
        assertThat(adult.get("lower").asDouble()).isBetween(0.1, 0.5);
        assertThat(adult.get("upper").asDouble()).isBetween(0.5, 1.5);
        assertThat(adult.get("pairs").asInt()).isEqualTo(3);
        assertThat(adult.get("k").isNull()).isTrue();
        assertThat(adult.get("thresholdCount").asDouble()).isCloseTo(2.5, within(1e-6));
        assertThat(adult.get("equivalentSamples").asDouble()).isCloseTo(16, within(1e-5));
        assertThat(larva.get("ratio").asDouble()).isZero();
        assertThat(larva.get("lower").asDouble()).isZero();
        assertThat(larva.get("upper").asDouble()).isBetween(0.0, 1.0);
        assertThat(larva.get("equivalentSamples").isNull()).isTrue();
        assertThat(json.get("warnings").toString()).contains("Fewer than 3 samples");
    }

    @Test
    void swappingTheMethodsInvertsTheRatio() throws IOException {
        String[] there = {"--where=stage=adult", "--pair=tap,wash", "--json"};
        String[] back = {"--where=stage=adult", "--pair=wash,tap", "--json"};
        JsonNode one = run(PAIRS, there).json().get("groups").get(0);
        JsonNode two = run(PAIRS, back).json().get("groups").get(0);

        assertThat(one.get("ratio").asDouble() * two.get("ratio").asDouble())
                .isCloseTo(1, within(1e-6));
        assertThat(one.get("lower").asDouble() * two.get("upper").asDouble())
                .isCloseTo(1, within(1e-5));
        assertThat(one.get("upper").asDouble() * two.get("lower").asDouble())
                .isCloseTo(1, within(1e-5));
    }

    @Test
    void tellsAPerson() throws IOException {
        assertThat(run(PAIRS, "--by", "stage").out())
                .contains("stage adult: tap finds 0.5 of what wash finds")
                .contains("16 of tap tell as much as 8 of wash")
                .contains("No number of tap gets there");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "cards|--pair=card,wash|never turned into densities",
                "itself|--pair=tap,tap|two are needed",
                "one|--pair=tap|2 are needed",
                "not there|--pair=visual,wash|Maybe: tap, wash",
                "no such column|--by=stge|stage",
                "no samples|--samples=0|above 0",
            })
    void refusesWhatCannotBe(String name, String option, String said) throws IOException {
        CommandRun run = run(PAIRS, option, "--json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("Exception");
    }

    @Test
    void refusesASheetWithoutBenchOrDay() throws IOException {
        CommandRun run = run("method,count\nwash,3\ntap,1\n", "--json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("bench");
        assertThat(run("", "--json").code()).isEqualTo(2);
    }
}
