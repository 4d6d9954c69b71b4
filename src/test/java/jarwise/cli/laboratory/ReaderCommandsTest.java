package jarwise.cli.laboratory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReaderCommandsTest {

    private static final String RECOUNTS = "sample,stage,ana,ben\nJ1,larva,12,10\nJ2,adult,4,4\n";

    @TempDir Path folder = Path.of("");

    private String sheet(String text) throws IOException {
        return Files.writeString(folder.resolve("sheet.csv"), text).toString();
    }

    private static JsonNode json(String... args) {
        String[] all = Arrays.copyOf(args, args.length + 1);
        all[args.length] = "--json";
        CommandRun run = CommandRun.of(all);
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        return run.json();
    }

    private String peakFlow() throws IOException {
        String text =
                Files.readString(Path.of("src/test/resources/reference/agreement/peak-flow.csv"));
        return sheet(text.substring(text.indexOf("wright1,")));
    }

    @Test
    void publishedPairsHaveThePublishedLimits() throws IOException {
        JsonNode answer =
                json("agreement", peakFlow(), "--pair", "wright1,mini1", "--scale", "identity");

        assertThat(answer.get("sampleSize").asInt()).isEqualTo(17);
        assertThat(answer.get("bias").asDouble()).isCloseTo(-2.1176471, within(1e-6));
        assertThat(answer.get("standardDeviation").asDouble()).isCloseTo(38.7651299, within(1e-6));
        assertThat(answer.get("lowerLimit").asDouble()).isCloseTo(-78.0973, within(1e-4));
        assertThat(answer.get("upperLimit").asDouble()).isCloseTo(73.8620, within(1e-4));
        assertThat(answer.get("biasInterval").get("upper").asDouble())
                .isCloseTo(17.81354, within(1e-4));
        assertThat(answer.get("concordance").asDouble()).isCloseTo(0.9427424, within(1e-6));
        assertThat(answer.get("concordanceDivisor").asText()).isEqualTo("n");
        assertThat(answer.get("concordanceInterval").get("lower").asDouble())
                .isCloseTo(0.8504919, within(1e-6));
        assertThat(answer.get("warnings").get(0).asText()).contains("--sensitivity");
    }

    @Test
    void squareRootsAreTheDefaultAndRowsCanBeChosen() throws IOException {
        String rows = sheet(RECOUNTS + "J3,larva,9,16\nJ4,larva,,7\n");
        JsonNode answer = json("agreement", rows, "--pair", "ana,ben", "--where", "stage=larva");

        assertThat(answer.get("scale").asText()).isEqualTo("sqrt");
        assertThat(answer.get("sampleSize").asInt()).isEqualTo(2);
        assertThat(answer.get("bias").asDouble())
                .isCloseTo((Math.sqrt(12) - Math.sqrt(10) - 1) / 2, within(1e-9));
        assertThat(answer.get("warnings").toString()).contains("Blank counts: 1");
    }

    @Test
    void readersOfOneFilterHaveANarrowerBandOfChance() throws IOException {
        String rows = sheet(RECOUNTS);
        JsonNode same =
                json("agreement", rows, "--pair", "ana,ben", "--sensitivity", "0.9,18/20")
                        .get("countingBand");
        JsonNode two =
                json("agreement", rows, "--pair", "ana,ben", "--two-filters").get("countingBand");

        assertThat(same.get("sameFilter").asBoolean()).isTrue();
        assertThat(two.get("sameFilter").asBoolean()).isFalse();
        assertThat(same.get("standardDeviation").asDouble())
                .isLessThan(0.5 * two.get("standardDeviation").asDouble());
        assertThat(same.get("pairsOutside").asInt()).isZero();
    }

    @Test
    void sharesAreBetaByGroup() throws IOException {
        String rows =
                sheet("reader,stage,known,found\nB,adult,10,10\nA,larva,12,9\nA,larva,12,9\n");
        JsonNode groups = json("sensitivity", rows, "--by", "reader,stage").get("groups");

        assertThat(groups).hasSize(2);
        assertThat(groups.get(0).get("group").get("reader").asText()).isEqualTo("A");
        assertThat(groups.get(0).get("found").asLong()).isEqualTo(18);
        assertThat(groups.get(0).get("known").asLong()).isEqualTo(24);
        assertThat(groups.get(0).get("estimate").asDouble()).isCloseTo(18.5 / 25, within(1e-12));
        assertThat(groups.get(0).get("lower").asDouble()).isCloseTo(0.5554505, within(1e-6));
        assertThat(groups.get(0).get("upper").asDouble()).isCloseTo(0.8882897, within(1e-6));
        assertThat(json("sensitivity", "9/12", "9/12").get("groups").get(0).get("estimate"))
                .isEqualTo(groups.get(0).get("estimate"));
    }

    @Test
    void spikesAndWashesTellTogether() {
        JsonNode group = json("sensitivity", "18/24", "--washes", "38,26,12").get("groups").get(0);
        JsonNode alone = json("sensitivity", "--washes", "38,26,12").get("groups").get(0);

        assertThat(group.get("estimate").asDouble()).isCloseTo(0.5320713, within(1e-6));
        assertThat(group.get("lower").asDouble()).isCloseTo(0.4173931, within(1e-6));
        assertThat(alone.get("known").asLong()).isZero();
        assertThat(alone.get("estimate").asDouble()).isCloseTo(0.3935678, within(1e-6));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "sensitivity",
                "sensitivity 24/18",
                "sensitivity 0/0",
                "sensitivity 18",
                "sensitivity 18/24 nowhere.csv",
                "sensitivity nowhere.csv",
                "sensitivity 18/24 --by stage",
                "sensitivity --washes 38",
                "sensitivity --washes 0,0",
                "sensitivity --washes 38,NaN",
                "agreement nowhere.csv --pair a,b",
                "agreement nowhere.csv",
                "agreement nowhere.csv --pair a",
                "agreement nowhere.csv --pair a,b --sensitivity 0.9",
                "agreement nowhere.csv --pair a,b --sensitivity 0.9,1.2",
                "agreement nowhere.csv --pair a,b --scale log"
            })
    void refusesInOneParagraph(String line) {
        assertRefused(CommandRun.of(line.split(" ")));
    }

    static Stream<Arguments> faultySheets() {
        return Stream.of(
                arguments("", "The file is empty"),
                arguments("ana,benn\n1,2\n3,4", "There is no column \"ben\". Maybe: benn"),
                arguments("ana,ben\n1,NaN\n3,4", "Row 2, column ben"),
                arguments("ana,ben\n1,-2\n3,4", "below 0"),
                arguments("ana,ben\n1,2.5\n3,4", "not a count"),
                arguments("ana,ben\n1,2\n3", "the row has 1 cells"),
                arguments("ana,ben\n1,2", "at least 2 are needed"),
                arguments("ana,ben\n,2\n3,", "No row has a number in all of the columns"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("faultySheets")
    void aFaultySheetIsRefusedWhole(String text, String sentence) throws IOException {
        CommandRun run = CommandRun.of("agreement", sheet(text), "--pair", "ana,ben");

        assertRefused(run);
        assertThat(run.err()).contains(sentence);
    }

    @Test
    void everyFaultOfASheetIsToldAtOnce() throws IOException {
        CommandRun run =
                CommandRun.of(
                        "sensitivity",
                        sheet("reader,known,found\nA,12,x\n,12,9\nA,1e3,9\n"),
                        "--by=reader");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("3 faults", "Row 2", "Row 3", "Row 4");
        assertThat(CommandRun.of("sensitivity", sheet("known,found\n8,9\n7,9\n")).err())
                .contains("2 faults", "at most the 8");
    }

    private static void assertRefused(CommandRun run) {
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n", "Exception");
    }
}
