package jarwise.wire.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jarwise.base.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests of devices: those of every release are understood for ever. */
class ExchangeJsonTest {

    private static final Path GOLDEN = Path.of("src/test/resources/golden/exchange");
    private static final String CUT =
            "{\"sequence\":1,\"sample\":\"J-1\",\"at\":\"2026-05-11T06:01:00Z\","
                    + "\"person\":\"SC-1\",\"deed\":{\"deed\":\"step\",\"step\":\"cut\","
                    + "\"facts\":{}}}";

    @Test
    void everyKindOfEventIsReadAndWrittenTheSame() throws IOException {
        String text = Files.readString(GOLDEN.resolve("request-1.json"));
        EventBatch batch = ExchangeJson.read(text);

        assertThat(batch.device()).isEqualTo("phone-00112233445566aa");
        assertThat(batch.events()).hasSize(9);
        assertThat(batch.events().get(1).at()).isEqualTo(Instant.parse("2026-05-11T06:02:00.25Z"));
        JsonNode given = new ObjectMapper().readTree(text).path("events");
        for (int i = 0; i < 9; i++) {
            JsonNode written = ExchangeJson.write(batch.events().get(i));
            assertThat(written.path("deed")).isEqualTo(given.get(i).path("deed"));
            assertThat(written.path("person")).isEqualTo(given.get(i).path("person"));
        }
    }

    @Test
    void theAnswersAreWhatEveryReleaseOfThePageUnderstands() {
        assertThat(ExchangeJson.upTo(12)).isEqualTo("{\"upTo\":12}");
        assertThat(ExchangeJson.refused("Jar \"J-1\" is not here."))
                .isEqualTo("{\"refused\":\"Jar \\\"J-1\\\" is not here.\"}");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "null",
                "{\"device\":\"phone-1\"}",
                "{\"device\":1,\"events\":[]}",
                "{\"device\":\"a\",\"device\":\"b\",\"events\":[]}",
                "{\"device\":\"a\",\"events\":[]} and more",
                "{\"device\":\"a\",\"events\":[1]}",
            })
    void whatIsNoListOfEventsIsRefused(String text) {
        assertThatThrownBy(() -> ExchangeJson.read(text)).isInstanceOf(Refused.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"sequence\":1|\"sequence\":0",
                "\"sequence\":1|\"sequence\":1.5",
                "\"sequence\":1|\"sequence\":99999999999999999999",
                "\"sequence\":1|\"sequence\":\"1\"",
                "2026-05-11T06:01:00Z|yesterday",
                "\"SC-1\"|\"\"",
                "\"J-1\"|\"\"",
                "\"step\":\"cut\"|\"step\":\"bent\"",
                "\"deed\":\"step\"|\"deed\":\"dance\"",
                "\"deed\":{|\"dead\":{",
            })
    void anEventThatCannotBeReadIsRefused(String change) {
        String[] parts = change.split("\\|", -1);
        String text = CUT.replace(parts[0], parts[1]);
        assertThat(text).isNotEqualTo(CUT);

        assertThat(ExchangeJson.read(batch(CUT)).events()).hasSize(1);
        assertThatThrownBy(() -> ExchangeJson.read(batch(text))).isInstanceOf(Refused.class);
    }

    private static String batch(String event) {
        return "{\"device\":\"phone-00112233445566aa\",\"events\":[%s]}".formatted(event);
    }
}
