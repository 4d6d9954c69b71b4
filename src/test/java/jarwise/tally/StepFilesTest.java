package jarwise.tally;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jarwise.sample.CollectedSample;
import jarwise.wire.DeedJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cases in testdata/walk/fold; the round sheet of the browser is held to the same files. */
class StepFilesTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("testdata/walk/fold"))) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void theStepsOfAJarSayWhatTheFileSays(Path file) throws IOException {
        JsonNode given = JSON.readTree(file.toFile());
        List<SampleEvent> events = new ArrayList<>();
        for (JsonNode node : given.path("events")) {
            events.add(
                    Events.event(
                            node.path("device").asText(),
                            node.path("sequence").asLong(),
                            DeedJson.read(node.path("deed").toString())));
        }
        Collections.reverse(events);

        SampleFold fold = SampleFold.of(Events.JAR, events, Map.of());

        String why = given.path("why").asText();
        assertThat(word(fold.sample().state())).as(why).isEqualTo(given.path("state").asText());
        assertThat(fold.openQuestions().stream().map(open -> word(open.step())))
                .as(why)
                .containsExactlyElementsOf(texts(given.path("questions")));
        sameFacts(fold.sample(), given.path("facts"), why);
    }

    private static void sameFacts(CollectedSample sample, JsonNode facts, String why) {
        assertThat(sample.samplingUnits())
                .as(why)
                .isEqualTo(facts.path("sampling_units").asDouble(1));
        assertThat(sample.place().bench().orElse("")).isEqualTo(facts.path("bench").asText());
        assertThat(sample.wash().fluid().map(StepFilesTest::word).orElse(""))
                .isEqualTo(facts.path("fluid").asText());
        OptionalInt seconds = sample.wash().shakeSeconds();
        assertThat(seconds.orElse(0)).isEqualTo(facts.path("shake_seconds").asInt());
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(node -> texts.add(node.asText()));
        return texts;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
