package jarwise.stats.filter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cases in testdata/partial; the microscope page of the browser is held to the same files. */
class PartialFilesTest {

    private static final double NEAR = 1e-9;

    static Stream<Path> readings() throws IOException {
        return files("reading");
    }

    static Stream<Path> stops() throws IOException {
        return files("stop");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("readings")
    void aPartSaysWhatTheFileSays(Path file) throws IOException {
        JsonNode given = read(file);

        PartialReading reading = reading(given);

        isClose(reading.estimate(), given.path("estimate"));
        isClose(reading.lower(0.95), given.path("lower95"));
        isClose(reading.upper(0.95), given.path("upper95"));
        isClose(reading.upperOneSided(0.95), given.path("upperOneSided95"));
        if (given.path("relativeStandardError").isNull()) {
            assertThat(reading.relativeStandardError()).isInfinite();
        } else {
            isClose(reading.relativeStandardError(), given.path("relativeStandardError"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("stops")
    void theReaderMayStopOrNot(Path file) throws IOException {
        JsonNode given = read(file);
        FilterLimits limits =
                new FilterLimits(
                        given.path("belowFrom").asLong(),
                        whole(given.path("below")),
                        whole(given.path("above")));
        StopRules rules =
                new StopRules(
                        given.path("detection").asBoolean(),
                        number(given.path("wantedRelativeError")),
                        number(given.path("minutesAllowed")));

        FilterLimits.Likely likely = limits.likely(reading(given));

        assertThat(word(likely.verdict())).isEqualTo(given.path("verdict").asText());
        isClose(likely.chanceOfOther(), given.path("chanceOfOtherVerdict"));
        assertThat(
                        rules.reason(
                                        reading(given),
                                        limits.chanceOfOtherDecision(
                                                reading(given), given.path("othersToRead").asInt()),
                                        given.path("minutes").asDouble())
                                .map(PartialFilesTest::word)
                                .orElse("null"))
                .as(given.path("why").asText())
                .isEqualTo(given.path("reason").asText());
    }

    private static Stream<Path> files(String folder) throws IOException {
        try (Stream<Path> files = Files.list(Path.of("testdata/partial", folder))) {
            return files.sorted().toList().stream();
        }
    }

    private static JsonNode read(Path file) throws IOException {
        return new ObjectMapper().readTree(file.toFile());
    }

    private static PartialReading reading(JsonNode given) {
        List<Long> counts = new ArrayList<>();
        given.path("counts").forEach(count -> counts.add(count.asLong()));
        return PartialReading.ofCells(counts, given.path("cells").asInt());
    }

    private static void isClose(double actual, JsonNode expected) {
        assertThat(expected.isNumber()).isTrue();
        double value = expected.asDouble();
        assertThat(actual).isCloseTo(value, within(NEAR * Math.max(1, value)));
    }

    private static OptionalLong whole(JsonNode value) {
        return value.isNull() ? OptionalLong.empty() : OptionalLong.of(value.asLong());
    }

    private static OptionalDouble number(JsonNode value) {
        return value.isNull() ? OptionalDouble.empty() : OptionalDouble.of(value.asDouble());
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
