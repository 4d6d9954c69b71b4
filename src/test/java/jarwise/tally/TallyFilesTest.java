package jarwise.tally;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jarwise.stats.filter.CellWalk;
import jarwise.stats.filter.FilterLayout;
import jarwise.wire.DeedJson;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cases in testdata/tally; the tally page of the browser is held to the same files. */
class TallyFilesTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("testdata/tally"))) {
            return files
                    .filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void countsWhatTheFileSays(Path file) throws IOException {
        JsonNode given = JSON.readTree(file.toFile());

        Tally tally =
                Tally.of(
                        events(given.path("events")),
                        stages(given.path("stages")),
                        walk(given.path("walk")));

        String why = given.path("why").asText();
        assertThat(named(tally.individuals())).as(why).isEqualTo(counts(given.path("counts")));
        assertThat(named(tally.aside())).as(why).isEqualTo(counts(given.path("aside")));
        assertThat(tally.cellsReadTwice()).isEqualTo(given.path("cells_read_twice").asInt(0));
        assertThat(tally.cellsRead()).isEqualTo(given.path("cells_read").asInt());
        assertThat(tally.cellsObscured()).isEqualTo(given.path("cells_obscured").asInt());
        assertThat(tally.done()).isEqualTo(given.path("done").asBoolean());
    }

    private static Map<String, Long> named(Map<StageKey, Long> individuals) {
        Map<String, Long> counts = new TreeMap<>();
        individuals.forEach(
                (key, number) -> counts.put(key.pest() + "/" + key.lifeStage(), number));
        return counts;
    }

    private static Optional<CellWalk> walk(JsonNode node) {
        return node.isObject()
                ? Optional.of(
                        CellWalk.from(
                                FilterLayout.ofCells(node.path("cells").asInt()),
                                node.path("passes").asInt(),
                                node.path("start").asInt()))
                : Optional.empty();
    }

    private static List<SampleEvent> events(JsonNode array) {
        List<SampleEvent> events = new ArrayList<>();
        for (JsonNode node : array) {
            events.add(
                    Events.event(
                            node.path("device").asText(),
                            node.path("sequence").asLong(),
                            DeedJson.read(node.path("deed").toString())));
        }
        return events;
    }

    private static Map<String, List<String>> stages(JsonNode object) {
        Map<String, List<String>> stages = new HashMap<>();
        object.properties()
                .forEach(
                        pest -> {
                            List<String> names = new ArrayList<>();
                            pest.getValue().forEach(stage -> names.add(stage.asText()));
                            stages.put(pest.getKey(), names);
                        });
        return stages;
    }

    private static Map<String, Long> counts(JsonNode object) {
        Map<String, Long> counts = new TreeMap<>();
        object.properties().forEach(count -> counts.put(count.getKey(), count.getValue().asLong()));
        return counts;
    }
}
