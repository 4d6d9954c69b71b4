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

class GrowthCommandTest {

    /** Doubles every week, and every 70 degree-days. */
    private static final String DOUBLING =
            """
            date,heat,units,count
            2026-03-02,100,10,10
            2026-03-02,100,20,20
            2026-03-09,170,10,20
            2026-03-09,170,20,40
            2026-03-16,240,10,40
            2026-03-16,240,20,80
            """;

    @TempDir Path folder = Path.of("");

    private JsonNode json(String text, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("growth.csv"), text);
        List<String> args = new ArrayList<>(List.of("growth", file.toString(), "--json"));
        args.addAll(List.of(options));
        CommandRun run = CommandRun.of(args.toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        return run.json();
    }

    @Test
    void exponentialCountsDoubleAsTheyDo() throws IOException {
        JsonNode json = json(DOUBLING, "--threshold", "8");

        assertThat(json.get("rate").get("estimate").asDouble())
                .isCloseTo(Math.log(2) / 7, within(1e-7));
        assertThat(json.get("doublingTime").get("estimate").asDouble()).isCloseTo(7, within(1e-5));
        assertThat(json.get("doublingTime").get("lower").asDouble()).isBetween(3.0, 7.0);
        assertThat(json.get("doublingTime").get("upper").asDouble()).isGreaterThan(7);
        assertThat(json.get("density").get("estimate").asDouble()).isCloseTo(4, within(1e-5));
        assertThat(json.get("k").isNull()).isTrue();
        assertThat(json.get("rounds")).hasSize(3);
        assertThat(json.get("sampleSize").asInt()).isEqualTo(6);
        JsonNode half = json.get("passing").get(0);
        // twice the last density: a week later; a rounded digit may make it a day more
        assertThat(half.get("date").asText()).isIn("2026-03-23", "2026-03-24");
        assertThat(json.get("passing").get(1).get("time").asDouble()).isGreaterThan(7);
        assertThat(json.get("warnings").toString()).contains("goes on as it did");
    }

    @Test
    void growsByHeatToo() throws IOException {
        JsonNode json = json(DOUBLING, "--degree-days", "heat", "--threshold", "8");

        assertThat(json.get("time").asText()).isEqualTo("degree-days");
        assertThat(json.get("doublingTime").get("estimate").asDouble()).isCloseTo(70, within(1e-4));
        assertThat(json.get("passing").get(0).has("date")).isFalse();
        assertThat(json.get("passing").get(0).get("time").asDouble()).isBetween(70.0, 80.0);
    }

    @Test
    void usesTheLastRounds() throws IOException {
        JsonNode json = json(DOUBLING, "--rounds", "2");

        assertThat(json.get("rounds").get(0).asText()).isEqualTo("2026-03-09");
        assertThat(json.get("sampleSize").asInt()).isEqualTo(4);
        assertThat(json.get("warnings").toString()).contains("Two rounds");
    }

    @Test
    void whatFallsDoesNotDouble() throws IOException {
        JsonNode json = json("date,count\n2026-03-02,20\n2026-03-09,9\n2026-03-16,4\n");

        assertThat(json.get("rate").get("estimate").asDouble()).isNegative();
        assertThat(json.get("doublingTime").get("estimate").isNull()).isTrue();
        assertThat(json.get("warnings").toString()).contains("does not grow");
    }

    @Test
    void aFirstFindHasNoRate() throws IOException {
        JsonNode json = json("date,count\n2026-03-02,0\n2026-03-09,0\n2026-03-16,4\n");

        assertThat(json.get("rate").get("estimate").isNull()).isTrue();
        assertThat(json.get("warnings").toString()).contains("No rate");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "no date|count\\n3\\n||date",
                "one round|date,count\\n2026-03-02,3\\n2026-03-02,5\\n||2 rounds",
                "heat is a word|date,heat,count\\n2026-03-02,warm,3\\n|--degree-days=heat|warm",
                "one round asked|date,count\\n2026-03-02,3\\n|--rounds=1|2 or more",
                "threshold|date,count\\n2026-03-02,3\\n|--threshold=-1|above 0",
                "NaN|date,count\\n2026-03-02,NaN\\n||NaN",
                "empty|''||empty",
            })
    void refusesWhatCannotBe(String name, String text, String option, String said)
            throws IOException {
        Path file = Files.writeString(folder.resolve("bad.csv"), text.replace("\\n", "\n"));
        List<String> args = new ArrayList<>(List.of("growth", file.toString(), "--json"));
        if (option != null) {
            args.add(option);
        }
        CommandRun run = CommandRun.of(args.toArray(String[]::new));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("Exception");
    }
}
