package jarwise.cli.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DispersionCommandTest {

    private static final String DATA = "src/test/resources/reference/data/";

    @TempDir Path folder = Path.of("");

    @Test
    void describesTheMites() {
        JsonNode json =
                CommandRun.of(
                                "dispersion",
                                DATA + "freq_red_mites.csv",
                                "--frequency",
                                "freq",
                                "--json")
                        .json();
        JsonNode group = json.get("groups").get(0);

        assertThat(group.get("group")).isEmpty();
        assertThat(group.get("sampleSize").asLong()).isEqualTo(150);
        assertClose(group, "mean", 1.1466667);
        assertClose(group, "variance", 2.2736465);
        assertClose(group, "varianceToMeanRatio", 1.9828313);
        assertThat(group.get("pValue").asDouble()).isCloseTo(1.02e-11, within(1e-13));
        assertClose(group, "kMoments", 1.1666974);
        assertClose(group, "kZeroClass", 0.9923061);
        assertClose(group, "kMaximumLikelihood", 1.0245924);
        assertClose(group, "meanCrowding", 2.1294979);
        assertClose(group, "patchiness", 1.8571203);
        assertClose(group.get("morisita"), "index", 1.8563851);
        assertThat(group.get("morisita").get("statistic").asDouble())
                .isCloseTo(295.44186, within(1e-5));
        assertThat(group.get("morisita").get("degreesOfFreedom").isIntegralNumber()).isTrue();
        assertThat(group.get("morisita").get("degreesOfFreedom").asLong()).isEqualTo(149);
        assertThat(json.has("taylor")).isFalse();
        assertThat(json.get("warnings")).isEmpty();
    }

    private static void assertClose(JsonNode object, String field, double expected) {
        assertThat(object.get(field).asDouble()).as(field).isCloseTo(expected, within(1e-7));
    }

    @Test
    void drawsTheLinesOverGroups() {
        JsonNode json =
                CommandRun.of("dispersion", DATA + "insectsprays.csv", "--by=spray", "--json")
                        .json();

        assertClose(json.get("taylor"), "b", 1.0994217);
        assertClose(json.get("taylor"), "a", 1.1785439);
        assertThat(json.get("taylor").get("rSquared").asDouble()).isCloseTo(0.892093, within(1e-6));
        assertThat(json.get("taylor").get("standardErrorB").asDouble()).isPositive();
        assertThat(json.get("iwao").get("alpha").isNumber()).isTrue();
        assertThat(json.get("iwao").get("beta").isNumber()).isTrue();
        JsonNode e = json.get("groups").get(4);
        assertThat(e.get("kMoments").isNull()).isTrue();
        assertThat(e.get("kMaximumLikelihood").isNull()).isTrue();
        assertThat(json.get("warnings").toString())
                .contains("spray E: No k by moments")
                .contains("Do not plan with them alone");
    }

    @Test
    void leavesTheLinesOutUnderFiveGroups() {
        JsonNode json =
                CommandRun.of(
                                "dispersion",
                                DATA + "freq_corn_borers.csv",
                                "--by=treat",
                                "--frequency=freq",
                                "--json")
                        .json();

        assertThat(json.has("taylor")).isFalse();
        assertThat(json.has("iwao")).isFalse();
        assertThat(json.get("warnings").toString()).contains("4 groups can be used");
    }

    @Test
    void tellsAPerson() {
        CommandRun run =
                CommandRun.of("dispersion", DATA + "freq_red_mites.csv", "--frequency", "freq");

        assertThat(run.out()).contains("clumped; the counts vary more than by chance.");
        assertThat(run.out()).contains("1.025");
    }

    @Test
    void sayNullWhereThereIsNoNumber() throws IOException {
        Path file = Files.writeString(folder.resolve("zero.csv"), "count\n0\n0\n0\n");
        JsonNode json = CommandRun.of("dispersion", file.toString(), "--json").json();
        JsonNode group = json.get("groups").get(0);

        assertThat(group.get("mean").asDouble()).isZero();
        assertThat(group.get("varianceToMeanRatio").isNull()).isTrue();
        assertThat(group.get("pValue").isNull()).isTrue();
        assertThat(group.get("morisita").get("index").isNull()).isTrue();
        assertThat(group.get("morisita").get("degreesOfFreedom").isNull()).isTrue();
        assertThat(json.get("warnings").toString()).contains("No find");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "unequal units|count,units\\n3,10\\n4,12\\n|Row 2 has 10.0 sampling units and row 3"
                        + " has 12.0",
                "unequal shares read|count,cells_read,cells_total\\n3,10,100\\n4,20,100\\n|of the"
                        + " filter read",
                "NaN|count\\nNaN\\n|NaN",
                "negative|count\\n-1\\n|-1",
                "half an insect|count\\n1.5\\n|1.5",
                "empty file|''|empty",
                "no row|count\\n|row",
            })
    void refusesWhatCannotBe(String name, String text, String said) throws IOException {
        Path file = Files.writeString(folder.resolve("bad.csv"), text.replace("\\n", "\n"));
        CommandRun run = CommandRun.of("dispersion", file.toString(), "--json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("Exception");
    }

    @Test
    void refusesAColumnThatIsNotThere() {
        CommandRun run =
                CommandRun.of("dispersion", DATA + "insectsprays.csv", "--by", "spry", "--json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("spry").contains("spray");
    }
}
