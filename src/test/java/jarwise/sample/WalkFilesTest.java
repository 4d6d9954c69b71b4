package jarwise.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jarwise.base.InvalidInput;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Rules that the phone has too: codes, and lids with their bases; both read testdata/walk. */
class WalkFilesTest {

    private static final Map<String, String> FAULTS =
            Map.of("length", "symbols; a label has", "symbol", "stands on no label", "check", "no");

    static Stream<JsonNode> codes() throws IOException {
        return cases("label-codes.json");
    }

    static Stream<JsonNode> pairs() throws IOException {
        return cases("pairs.json");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("codes")
    void aTypedCodeIsReadOrItsMistakeIsSaid(JsonNode given) {
        String typed = given.path("typed").asText();
        if (given.has("code")) {
            assertThat(LabelCode.parse(typed).toString()).isEqualTo(given.path("code").asText());
        } else {
            assertThatThrownBy(() -> LabelCode.parse(typed))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining(FAULTS.get(given.path("fault").asText()));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pairs")
    void lidAndBaseBelongTogetherOrDoNot(JsonNode given) {
        List<SampleCode> washed = new ArrayList<>();
        given.path("washed").forEach(code -> washed.add(new SampleCode(code.asText())));
        LidAndBase is =
                LidAndBase.of(
                        new SampleCode(given.path("lid").asText()),
                        new SampleCode(given.path("base").asText()),
                        washed);

        assertThat(is.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .isEqualTo(given.path("is").asText());
    }

    private static Stream<JsonNode> cases(String file) throws IOException {
        JsonNode all = new ObjectMapper().readTree(Path.of("testdata/walk", file).toFile());
        return StreamSupport.stream(all.spliterator(), false);
    }
}
