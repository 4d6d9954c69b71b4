package jarwise.cli.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ModelCommandsTest {

    private static final String DATA = "src/test/resources/reference/data/";

    @TempDir Path folder = Path.of("");

    /** reference: R 4.2.2 and MASS 7.3-58.2, as in reference/regression. */
    @Test
    void comparesSpraysAsGeneralStatisticsSoftwareDoes() {
        JsonNode json = json("compare", DATA + "insectsprays.csv", "--by", "spray", "--json");

        near(json.get("k"), 28.0995071351335, 1e-5);
        near(json.get("kStandardError"), 17.7004328298534, 1e-5);
        near(json.get("logLikelihood"), -180.108941809356, 1e-8);
        near(json.get("aic"), 374.217883618711, 1e-8);
        assertThat(json.get("levels")).hasSize(6);
        near(json.get("levels").get(0).get("estimate"), 14.5, 1e-9);
        assertThat(json.get("pairs")).hasSize(15);
        JsonNode pair = json.get("pairs").get(1);
        assertThat(pair.get("a").asText() + pair.get("b").asText()).isEqualTo("AC");
        near(pair.get("ratio"), 6.96, 1e-9);
        near(pair.get("lower"), 4.53096693386882, 1e-4);
        near(pair.get("upper"), 11.1101529676397, 1e-4);
        near(pair.get("pAdjusted"), 2.53844833948738e-15, 1e-19);
        assertThat(json.get("test").get("degreesOfFreedom").asInt()).isEqualTo(5);
        assertThat(json.get("warnings")).isEmpty();
    }

    /** reference: R 4.2.2, likelihood drop where treated-after is all zero. */
    @Test
    void givesNoNumberWhereThereIsNone() {
        JsonNode json =
                json(
                        "regress",
                        DATA + "synthetic_baci_zero_after.csv",
                        "--terms",
                        "treat,time,treat:time",
                        "--map",
                        "units=growing_points",
                        "--json");
        JsonNode interaction = json.get("coefficients").get(3);

        assertThat(interaction.get("term").asText()).isEqualTo("treat:time");
        assertThat(interaction.get("level").asText()).isEqualTo("treated:before");
        assertThat(interaction.get("estimate").isNull()).isTrue();
        near(interaction.get("lower"), 4.4961873188386, 1e-5);
        assertThat(interaction.get("upper").isNull()).isTrue();
        assertThat(json.get("warnings").toString()).contains("treated:before");
    }

    @Test
    void saysSoWhereNothingWasFoundAtAll() throws IOException {
        Path sheet = folder.resolve("zero.csv");
        Files.writeString(sheet, "g,count\na,0\na,0\nb,0\n");
        JsonNode json = json("compare", sheet.toString(), "--by", "g", "--json");

        assertThat(json.get("pairs").get(0).get("ratio").isNull()).isTrue();
        assertThat(json.get("k").isNull()).isTrue();
        assertThat(json.get("warnings").toString()).contains("Nothing was found in any row");
    }

    @Test
    void tellsPeopleInATableAndASentence() {
        CommandRun run = CommandRun.of("compare", DATA + "insectsprays.csv", "--by", "spray");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("A to C").contains("differ");
    }

    static Stream<Arguments> wrong() {
        String quine = DATA + "quine.csv";
        return Stream.of(
                arguments(List.of("compare", quine), "--by"),
                arguments(List.of("compare", quine, "--by", "Sexx"), "Maybe: Sex"),
                arguments(List.of("compare", quine, "--by", "Sex", "--block", "Sex"), "once"),
                arguments(List.of("regress", quine), "--terms"),
                arguments(List.of("regress", quine, "--terms", "Sex,Sex:Age"), "Sex,Age,Sex:Age"),
                arguments(List.of("regress", quine, "--terms", "Sex,Sex"), "there twice"),
                arguments(
                        List.of("regress", quine, "--terms", "Sex", "--factors", "Sez"),
                        "Maybe: Sex"),
                arguments(
                        List.of("regress", quine, "--terms", "Age,Lrn,Age:Lrn"),
                        "\"Age:Lrn F3:SL\" can't be told"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrong")
    void refusesInOneParagraph(List<String> args, String said) {
        List<String> all = new ArrayList<>(args);
        all.addAll(List.of("--map", "count=Days"));
        CommandRun run = CommandRun.of(all.toArray(String[]::new));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip()).contains(said).contains("Maybe").doesNotContain("\n");
    }

    private static JsonNode json(String... args) {
        CommandRun run = CommandRun.of(args);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        return run.json();
    }

    private static void near(JsonNode found, double expected, double tolerance) {
        assertThat(found.asDouble()).isCloseTo(expected, within(tolerance));
    }
}
