package jarwise.cli.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class DegreeDaysCommandTest {

    private static final double EXACT = 1e-9;

    @TempDir Path folder = Path.of("");

    /** The average of 64 F over a limit of 53 F: 11 degree-days in F (University of California). */
    @Test
    void averageOfFahrenheitBecomesDegreeDaysInCelsius() throws IOException {
        JsonNode json = json("date,min F,max F\n2026-05-04,48,80\n", "53", "--method", "average");

        assertThat(json.get("total").asDouble()).isCloseTo(11 / 1.8, within(EXACT));
        assertThat(json.get("days").get(0).get("date").asText()).isEqualTo("2026-05-04");
        assertThat(json.get("days").get(0).get("degreeDays").asDouble())
                .isCloseTo(11 / 1.8, within(EXACT));
        assertThat(json.get("gaps")).isEmpty();
        assertThat(json.get("warnings").isArray()).isTrue();
    }

    @Test
    void fahrenheitAndCelsiusAgree() throws IOException {
        JsonNode celsius = json("date,min,max\n2026-05-04,5,35\n", "10", "--upper=30", "--unit=C");
        JsonNode fahrenheit =
                json("date,min,max\n2026-05-04,41,95\n", "50", "--upper=86", "--unit=F");

        assertThat(celsius.get("total").asDouble()).isCloseTo(10, within(1e-6));
        assertThat(fahrenheit.get("total").asDouble())
                .isCloseTo(celsius.get("total").asDouble(), within(EXACT));
    }

    @Test
    void readingsAreJoinedByLines() throws IOException {
        JsonNode json =
                json(
                        """
                        time,temperature_c
                        2026-05-04T00:00,8
                        2026-05-04T01:00,12
                        2026-05-04T03:00,40
                        """,
                        "10",
                        "--upper",
                        "30");

        // trapezoids of max(0, min(T, 30) - 10): (0 + 2)/2 and 2 (2 + 20)/2 degree-hours
        assertThat(json.get("total").asDouble()).isCloseTo(23 / 24.0, within(EXACT));
        assertThat(json.get("gaps")).isEmpty();
        assertThat(json.get("warnings").toString()).contains("partly");
    }

    @Test
    void gapsAreToldAndLongOnesLeftOut() throws IOException {
        JsonNode json =
                json(
                        """
                        time,temperature (°C)
                        2026-05-04 00:00,20
                        2026-05-04 05:00,20
                        2026-05-04 12:00,20
                        2026-05-04 13:00,20
                        """,
                        "10");

        assertThat(json.get("total").asDouble()).isCloseTo(60 / 24.0, within(EXACT));
        assertThat(json.get("gaps").get(0).get("filled").asBoolean()).isTrue();
        assertThat(json.get("gaps").get(1).get("filled").asBoolean()).isFalse();
        assertThat(json.get("gaps").get(1).get("from").asText()).isEqualTo("2026-05-04T05:00");
        assertThat(json.get("gaps").get(1).get("to").asText()).isEqualTo("2026-05-04T12:00");
        assertThat(json.get("warnings").toString()).contains("left out", "filled by a line");
    }

    @Test
    void aMissingDayIsAGap() throws IOException {
        JsonNode json = json("date,min C,max C\n2026-05-07,10,30\n2026-05-04,10,30\n", "9.5");

        assertThat(json.get("gaps").get(0).get("from").asText()).isEqualTo("2026-05-05");
        assertThat(json.get("gaps").get(0).get("to").asText()).isEqualTo("2026-05-06");
        assertThat(json.get("gaps").get(0).get("filled").asBoolean()).isFalse();
        assertThat(json.get("total").asDouble()).isCloseTo(21, within(EXACT));
    }

    /** The night when clocks are put back has the hour from 2 to 3 twice. */
    @Test
    void offsetsKeepTheHourThatIsThereTwice() throws IOException {
        JsonNode json =
                json(
                        """
                        time,temperature C
                        2026-10-25T02:00+02:00,20
                        2026-10-25T02:00+01:00,20
                        2026-10-25T03:00+01:00,20
                        """,
                        "8");

        assertThat(json.get("total").asDouble()).isCloseTo(1, within(EXACT));
        assertThat(json.get("warnings").toString()).contains("+02:00");
    }

    @Test
    void anUnsaidUnitIsTakenAsCelsiusAndSaid() throws IOException {
        JsonNode json = json("date;min;max\n2026-05-04;15,0;30\n", "9.5");

        assertThat(json.get("total").asDouble()).isCloseTo(13, within(EXACT));
        assertThat(json.get("warnings").toString()).contains("taken as °C");
    }

    @Test
    void tellsAPersonTheSum() throws IOException {
        CommandRun run = run("day,lowest C,highest C\n2026-05-04,15,30\n2026-05-05,8,22\n", "9.5");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("2026-05-04           13           24")
                .contains("degree-days (°C·d) came together from 2026-05-04 to 2026-05-05");
    }

    static Stream<Arguments> refused() {
        String days = "date,min C,max C\n";
        String times = "time,temperature\n";
        return Stream.of(
                arguments("", "9", "empty"),
                arguments(days, "9", "no row below it"),
                arguments(days + "2026-05-04,,\n", "9", "No row has a temperature"),
                arguments("date,min C\n2026-05-04,9\n", "9", "no column \"max\""),
                arguments("when,min,max\n2026-05-04,9,10\n", "9", "no column \"date\""),
                arguments(days + "2026-05-04,20,10\n", "9", "Row 2, column max C"),
                arguments(days + "2026-05-04,NaN,10\n", "9", "\"NaN\" is no temperature"),
                arguments(days + "2026-05-04,9,400\n", "9", "-60 to 100 °C"),
                arguments(days + "2026-05-04,9,\n", "9", "both are needed"),
                arguments(days + "2026-05-04,9,10\n2026-05-04,9,10\n", "9", "first in row 2"),
                arguments(days + "4/5/2026,9,10\n", "9", "could be two days"),
                arguments(days + "2026-13-04,9,10\n", "9", "is no day"),
                arguments("date,min,max\n2026-05-04,50,70\n", "9", "--unit F"),
                arguments("date,min C,max F\n2026-05-04,9,10\n", "9", "another unit"),
                arguments(times + "2026-05-04 25:00,9\n2026-05-04 03:00,9\n", "9", "is no time"),
                arguments(times + "2026-05-04 03:00,9\n", "9", "one reading"),
                arguments(times + "2026-05-04 03:00,9\n2026-05-04T04:00Z,9\n", "9", "offset"),
                arguments(days + "2026-05-04,9,10\n", "NaN", "\"NaN\"; a temperature"),
                arguments(days + "2026-05-04,9,10\n", "warm", "a temperature"));
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource("refused")
    void refusesWhatCannotBeRead(String log, String lower, String said) throws IOException {
        assertRefused(run(log, lower), said);
    }

    @Test
    void refusesLimitsMethodsAndUnitsThatDoNotFit() throws IOException {
        String log = "date,min C,max C\n2026-05-04,9,20\n";

        assertRefused(run(log, "10", "--upper", "10"), "--upper is 10");
        assertRefused(run(log, "10", "--method", "hourly"), "single-sine");
        assertRefused(run(log, "10", "--method", "triangle"), "single-sine");
        assertRefused(run(log, "10", "--unit", "F"), "another unit");
        assertRefused(run(log, "10", "--unit", "K"), "C or F");
        assertRefused(CommandRun.of("degree-days", "no-such.csv", "--lower", "9"), "no file");
        assertRefused(CommandRun.of("degree-days", "no-such.csv"), "--lower");
    }

    private static void assertRefused(CommandRun run, String said) {
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("Exception", "\tat ");
    }

    private JsonNode json(String log, String lower, String... more) throws IOException {
        String[] options =
                Stream.concat(Stream.of(more), Stream.of("--json")).toArray(String[]::new);
        CommandRun run = run(log, lower, options);
        assertThat(run.err()).isEmpty();
        return run.json();
    }

    private CommandRun run(String log, String lower, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("log.csv"), log);
        return CommandRun.of(
                Stream.concat(
                                Stream.of("degree-days", file.toString(), "--lower", lower),
                                Stream.of(more))
                        .toArray(String[]::new));
    }
}
