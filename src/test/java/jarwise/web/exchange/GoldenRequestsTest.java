package jarwise.web.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jarwise.sample.SampleCode;
import jarwise.sample.SeededFilter;
import jarwise.store.Database;
import jarwise.store.work.SeededFilterStore;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.wire.PlacedJson;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Requests as devices of each version send them. A page may be older than the server by a season:
 * these files are never changed, new ones are added.
 */
@Tag("slow")
class GoldenRequestsTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir Path folder;

    static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/golden-requests"))) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void aRequestIsTakenAnsweredAndCountedOnce(Path file) throws Exception {
        JsonNode given = JSON.readTree(file.toFile());
        List<String> jars = new ArrayList<>();
        given.path("registered").forEach(jar -> jars.add(jar.asText()));
        ExchangeServer.prepare(folder, jars);
        seed(given.path("seeded"));
        try (ExchangeServer server = ExchangeServer.start(folder)) {
            for (int sending = 1; sending <= 2; sending++) {
                HttpResponse<String> answer = server.send(given.path("request").toString());

                assertThat(answer.body()).isEqualTo(given.path("answer").toString());
                assertThat(answer.statusCode()).isEqualTo(200);
                assertThat(server.events().count())
                        .isEqualTo(jars.size() + given.path("request").path("events").size());
                given.path("folds")
                        .properties()
                        .forEach(
                                fold ->
                                        assertThat(said(server.fold(fold.getKey())))
                                                .as(given.path("why").asText())
                                                .isEqualTo(expected(fold.getValue())));
            }
            for (String page : List.of("samples", "quality", "microscope/data")) {
                assertThat(server.status(page)).as(page).isEqualTo(200);
            }
            given.path("folds")
                    .fieldNames()
                    .forEachRemaining(code -> assertThat(status(server, code)).isEqualTo(200));
        }
    }

    private static int status(ExchangeServer server, String code) {
        try {
            return server.status("samples/" + code);
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private void seed(JsonNode filters) {
        try (Database database = Database.open(ExchangeServer.address(folder))) {
            for (JsonNode one : filters) {
                SeededFilter filter =
                        new SeededFilter(
                                new SampleCode(one.path("code").asText()),
                                one.path("name").asText(),
                                PlacedJson.read(one.path("placed").toString()),
                                LocalDate.of(2026, 5, 1),
                                "SC-1",
                                Optional.empty());
                new SeededFilterStore(database).put(ExchangeServer.SLUG, filter, Instant.EPOCH);
            }
        }
    }

    private static Map<String, Object> said(SampleFold fold) {
        Map<String, Object> said = new TreeMap<>();
        said.put("state", fold.sample().state().name().toLowerCase(Locale.ROOT));
        said.put("sampling_units", (long) fold.sample().samplingUnits());
        said.put("counts", named(fold.tally().individuals()));
        said.put("aside", named(fold.tally().aside()));
        said.put("cells_read", (long) fold.tally().cellsRead());
        said.put("cells_obscured", (long) fold.tally().cellsObscured());
        said.put("done", fold.tally().done());
        return said;
    }

    private static Map<String, Object> expected(JsonNode fold) {
        Map<String, Object> expected = new TreeMap<>();
        fold.properties().forEach(field -> expected.put(field.getKey(), value(field.getValue())));
        return expected;
    }

    private static Object value(JsonNode node) {
        if (node.isObject()) {
            return expected(node);
        }
        if (node.isBoolean()) {
            return node.asBoolean();
        }
        return node.isNumber() ? (Object) node.asLong() : node.asText();
    }

    private static Map<String, Long> named(Map<StageKey, Long> individuals) {
        Map<String, Long> counts = new TreeMap<>();
        individuals.forEach(
                (key, number) -> counts.put(key.pest() + "/" + key.lifeStage(), number));
        return counts;
    }
}
