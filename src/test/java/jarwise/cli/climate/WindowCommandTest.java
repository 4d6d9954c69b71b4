package jarwise.cli.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowCommandTest {

    private static final LocalDateTime START = LocalDateTime.of(2026, 5, 1, 0, 0);
    private static final LocalDateTime TREATED = LocalDateTime.of(2026, 5, 2, 18, 0);

    @TempDir Path folder = Path.of("");

    /**
     * In constant temperature the window of a set opens after 0.22 K/(T - T0) days and closes after
     * 0.35 K/(T - T0): 268 over 7.9 (McDonald 1998), shares from memory.
     */
    @ParameterizedTest
    @CsvSource({"18, 5.838, 9.287", "20, 4.873, 7.752", "24, 3.662, 5.826", "28, 2.933, 4.667"})
    void opensAndClosesWithTheHeatOfEggAndLarva(int celsius, double from, double to)
            throws IOException {
        JsonNode set = window(constant(celsius, 480), "FRANOC", "larva").get("sets").get(1);

        assertThat(set.get("source").asText()).contains("McDonald");
        assertThat(set.get("lowerDevelopmentalTemperature").asDouble()).isEqualTo(7.9);
        assertThat(set.get("eggDegreeDays").asDouble()).isCloseTo(0.22 * 268, within(1e-9));
        assertThat(set.get("larvaDegreeDays").asDouble()).isCloseTo(0.35 * 268, within(1e-9));
        assertThat(days(set, "earliest")).isCloseTo(from, within(0.0015));
        assertThat(days(set, "latest")).isCloseTo(to, within(0.0015));
        assertThat(set.get("surrogate").asBoolean()).isFalse();
    }

    @Test
    void theBandGoesFromTheSmallestToTheLargestOfAllSets() throws IOException {
        JsonNode json = window(constant(24, 480), "FRANOC", "larva");

        assertThat(json.get("sets")).hasSize(3);
        // 0.22 x 194 / 14.5 and 0.35 x 331.36 / 17.65
        assertThat(days(json, "earliest")).isCloseTo(2.943, within(0.0015));
        assertThat(days(json, "latest")).isCloseTo(6.571, within(0.0015));
        assertThat(json.get("assumedAfterLog").isNull()).isTrue();
        // 0.22 x 194 (1/15.5 - 1/13.5)/2 and 0.35 x 331.36 (1/18.65 - 1/16.65)/2
        assertThat(json.get("perDegree").get("earliest").asDouble())
                .isCloseTo(-0.2040, within(1e-4));
        assertThat(json.get("perDegree").get("latest").asDouble()).isCloseTo(-0.3735, within(1e-4));
        assertThat(json.get("warnings").toString())
                .contains("label", "assumption from memory")
                .doesNotContain("surrogate");
    }

    @Test
    void aSurrogateIsLabelled() throws IOException {
        JsonNode json = window(constant(24, 480), "THRIPV", "larva");

        assertThat(json.get("sets")).hasSize(3);
        json.get("sets").forEach(set -> assertThat(set.get("surrogate").asBoolean()).isTrue());
        assertThat(json.get("warnings").toString()).contains("surrogate");
    }

    @Test
    void afterTheLogTheMeanOfItsLastSevenDaysIsAssumed() throws IOException {
        StringBuilder log = new StringBuilder("date,min C,max C\n");
        for (int day = 0; day < 12; day++) {
            log.append(START.plusDays(day).toLocalDate()).append(day < 5 ? ",0,4\n" : ",16,24\n");
        }
        JsonNode json = run(log.toString(), "FRANOC", "larva", "2026-05-13T00:00", "--json").json();
        JsonNode set = json.get("sets").get(1);

        assertThat(json.get("assumedAfterLog").asDouble()).isCloseTo(20, within(1e-9));
        assertThat(json.get("warnings").toString()).contains("2026-05-13T00:00", "20 °C");
        LocalDateTime earliest = LocalDateTime.parse(set.get("earliest").asText());
        assertThat(Duration.between(START.plusDays(12), earliest).toMinutes())
                .isEqualTo((long) (0.22 * 268 / 12.1 * 24 * 60));
    }

    @Test
    void oneFollowUpIsNotEnoughWhereTheStageIsShorterThanTheEgg() throws IOException {
        JsonNode json = window(constant(24, 480), "TETRUR", "larva");
        JsonNode set = json.get("sets").get(0);
        List<String> times =
                Stream.of(0, 1, 2).map(i -> set.get("followUps").get(i).asText()).toList();

        assertThat(times.get(0)).isEqualTo(set.get("latest").asText());
        assertThat(times.get(2)).isEqualTo(set.get("earliest").asText());
        assertThat(times).isSorted();
        assertThat(set.get("larvaLowerDevelopmentalTemperature").asDouble()).isEqualTo(12.92);
        assertThat(json.get("warnings").toString()).contains("cannot meet all");
        assertThat(run(constant(24, 480), "TETRUR", "larva", TREATED.toString()).out())
                .contains("No single time meets all");
    }

    @Test
    void whereItIsTooCoolThereIsNoWindow() throws IOException {
        JsonNode json = window(constant(6, 480), "THRIPL", "larva");

        assertThat(json.get("earliest").isNull()).isTrue();
        assertThat(json.get("latest").isNull()).isTrue();
        assertThat(json.get("perDegree").get("earliest").isNull()).isTrue();
        assertThat(json.get("sets").get(0).get("latest").isNull()).isTrue();
        assertThat(json.get("warnings").toString()).contains("too cool", "within 120 days");
        assertThat(run(constant(6, 480), "THRIPL", "larva", TREATED.toString()).out())
                .contains("no window within 120 days");
    }

    @Test
    void aLongGapIsFilledAndSaid() throws IOException {
        String whole = constant(24, 480);
        String cut = whole.replaceAll("2026-05-04T.*\n", "");
        JsonNode json = window(cut, "FRANOC", "larva");

        assertThat(json.get("latest")).isEqualTo(window(whole, "FRANOC", "larva").get("latest"));
        assertThat(json.get("warnings").toString()).contains("1 gap(s) in the log after");
    }

    @Test
    void anOffsetOfTheTreatmentIsBroughtToTheLogs() throws IOException {
        String log = constant(24, 480).replaceAll("(T[0-9:]+)", "$1+02:00");
        JsonNode json = run(log, "FRANOC", "larva", "2026-05-02T16:00Z", "--json").json();

        assertThat(json.get("treatedAt").asText()).isEqualTo("2026-05-02T18:00+02:00");
        assertThat(json.get("latest").asText()).endsWith("+02:00");
    }

    @Test
    void refusesWhatItCannotAnswer() throws IOException {
        String log = constant(24, 48);

        assertRefused(run(log, "NOPEST", "larva", TREATED.toString()), "--pest is \"NOPEST\"");
        assertRefused(run(log, "APHIGO", "nymph", TREATED.toString()), "lays no eggs");
        assertRefused(run(log, "FRANOC", "adult", TREATED.toString()), "Maybe --stage larva");
        assertRefused(run(log, "SCITDO", "pupa", TREATED.toString()), "Maybe --stage larva");
        assertRefused(run(log, "BEMITA", "larva", TREATED.toString()), "Maybe --stage nymph");
        assertRefused(run(log, "FRANOC", "larva", "yesterday"), "--treated-at is \"yesterday\"");
        assertRefused(run(log, "FRANOC", "larva", "2025-05-02T18:00"), "another year");
        assertRefused(run(log, "FRANOC", "larva", "2026-07-02T18:00"), "another year");
        assertRefused(run(log, "FRANOC", "larva", "2026-05-02T18:00Z"), "offset");
        assertRefused(run("", "FRANOC", "larva", TREATED.toString()), "empty");
    }

    private static void assertRefused(CommandRun run, String said) {
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("Exception", "\tat ");
    }

    private static double days(JsonNode json, String field) {
        LocalDateTime time = LocalDateTime.parse(json.get(field).asText());
        return Duration.between(TREATED, time).toMinutes() / (24.0 * 60);
    }

    private static String constant(int celsius, int hours) {
        StringBuilder log = new StringBuilder("time,temperature_c\n");
        for (int hour = 0; hour <= hours; hour++) {
            log.append(START.plusHours(hour)).append(',').append(celsius).append('\n');
        }
        return log.toString();
    }

    private JsonNode window(String log, String pest, String stage) throws IOException {
        CommandRun run = run(log, pest, stage, TREATED.toString(), "--json");
        assertThat(run.err()).isEmpty();
        return run.json();
    }

    private CommandRun run(String log, String pest, String stage, String treatedAt, String... more)
            throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), log);
        return CommandRun.of(
                Stream.concat(
                                Stream.of(
                                        "window",
                                        file.toString(),
                                        "--pest",
                                        pest,
                                        "--treated-at",
                                        treatedAt,
                                        "--stage",
                                        stage),
                                Stream.of(more))
                        .toArray(String[]::new));
    }
}
