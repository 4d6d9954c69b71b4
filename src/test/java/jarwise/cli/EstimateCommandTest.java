package jarwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.stats.ReferenceTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class EstimateCommandTest {

    private static final String DATA = "src/test/resources/reference/data/";

    @TempDir Path folder = Path.of("");

    /** Open data sets; the reference values are from R, see the head of the reference file. */
    static Stream<Arguments> sheets() {
        return Stream.of(
                arguments("insectsprays.csv", "insectsprays_", List.of("--by", "spray")),
                arguments(
                        "freq_corn_borers.csv",
                        "corn_borers_",
                        List.of("--by", "treat", "--frequency", "freq")),
                arguments("freq_red_mites.csv", "red_mites", List.of("--frequency", "freq")),
                arguments("freq_yeast.csv", "yeast", List.of("--frequency", "freq")),
                arguments("freq_machinists.csv", "machinists", List.of("--frequency", "FREQ")),
                arguments("freq_flying_bombs.csv", "flying_bombs", List.of("--frequency", "freq")),
                arguments(
                        "synthetic_baci.csv",
                        "synthetic_offset_",
                        List.of("--by", "treat,time", "--map", "units=growing_points")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void equalsGeneralStatisticsSoftware(String file, String prefix, List<String> options) {
        List<String> args = new ArrayList<>(List.of("estimate", DATA + file));
        args.addAll(options);
        args.addAll(List.of("--interval", "profile", "--json"));
        CommandRun run = CommandRun.of(args.toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();

        int compared = 0;
        for (JsonNode group : run.json().get("groups")) {
            List<String> values = new ArrayList<>();
            group.get("group").forEach(value -> values.add(value.asText()));
            String name = prefix + String.join(".", values);
            for (ReferenceTable.Row row : ReferenceTable.read("mean-and-k/single-sample.csv")) {
                if (row.text("case").equals(name)) {
                    assertEquals(group, row);
                    compared++;
                }
            }
        }

        int withoutFiniteK = file.equals("insectsprays.csv") ? 1 : 0;
        assertThat(compared).isEqualTo(run.json().get("groups").size() - withoutFiniteK);
    }

    private static void assertEquals(JsonNode group, ReferenceTable.Row row) {
        double rate = row.number("rate");
        double k = row.number("k_ml");
        assertThat(group.get("estimate").asDouble()).isCloseTo(rate, within(1e-6 * rate));
        assertThat(group.get("standardError").asDouble())
                .isCloseTo(rate * row.number("se_log_rate_expected"), within(1e-6 * rate));
        assertThat(group.get("k").asDouble()).isCloseTo(k, within((k > 100 ? 1e-4 : 1e-6) * k));
        assertThat(group.get("logLikelihood").asDouble())
                .isCloseTo(row.number("logLik"), within(1e-8));
        assertThat(group.get("lower").asDouble())
                .isCloseTo(row.number("lower95"), within(1e-5 * rate));
        assertThat(group.get("upper").asDouble())
                .isCloseTo(row.number("upper95"), within(1e-5 * rate));
    }

    @Test
    void saysNullWhereCountsVaryNoMoreThanByChance() {
        JsonNode groups =
                CommandRun.of("estimate", DATA + "insectsprays.csv", "--by", "spray", "--json")
                        .json()
                        .get("groups");

        assertThat(groups.get(4).get("group").get("spray").asText()).isEqualTo("E");
        assertThat(groups.get(4).get("k").isNull()).isTrue();
        assertThat(groups.get(3).get("k").isNumber()).isTrue();
    }

    @Test
    void mappingGivesTheSameAsRenamingInTheSheet() throws IOException {
        Path renamed = folder.resolve("renamed.csv");
        String text = Files.readString(Path.of(DATA, "insectsprays.csv"));
        Files.writeString(renamed, text.replace("count,spray", "INSECTS,spray"));

        assertThat(
                        CommandRun.of(
                                        "estimate",
                                        renamed.toString(),
                                        "--by=spray",
                                        "--map=count=INSECTS",
                                        "--json")
                                .out())
                .isEqualTo(
                        CommandRun.of("estimate", DATA + "insectsprays.csv", "--by=spray", "--json")
                                .out());
    }

    @ParameterizedTest(name = "seed {0}")
    @org.junit.jupiter.params.provider.ValueSource(longs = {1, 2, 3, 4, 5})
    void orderOfRowsMakesNoDifference(long seed) throws IOException {
        Path file = Path.of(DATA, "synthetic_baci.csv");
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        Collections.shuffle(lines.subList(1, lines.size()), new Random(seed));
        Path shuffled = Files.write(folder.resolve("shuffled.csv"), lines);

        assertThat(
                        CommandRun.of(
                                        "estimate",
                                        shuffled.toString(),
                                        "--by",
                                        "treat,time",
                                        "--json")
                                .out())
                .isEqualTo(
                        CommandRun.of("estimate", file.toString(), "--by", "treat,time", "--json")
                                .out());
    }

    @Test
    void printsTheSameBytesAsAtRelease() throws IOException {
        String golden =
                Files.readString(Path.of("src/test/resources/golden/estimate-red-mites.json"));

        assertThat(
                        CommandRun.of(
                                        "estimate",
                                        DATA + "freq_red_mites.csv",
                                        "--frequency",
                                        "freq",
                                        "--interval",
                                        "profile",
                                        "--efficiency",
                                        "0.8",
                                        "--threshold",
                                        "1",
                                        "--json")
                                .out())
                .isEqualTo(golden);
    }

    @Test
    void tellsAPersonTheDensityAndTheVerdict() {
        CommandRun run =
                CommandRun.of(
                        "estimate",
                        DATA + "freq_red_mites.csv",
                        "--frequency",
                        "freq",
                        "--interval=profile",
                        "--threshold",
                        "5");

        assertThat(run.out())
                .contains("samples  units  counted  density  lower  upper      k")
                .contains("150    150      172    1.147  0.921   1.43  1.025")
                .contains("below the line")
                .contains("1.147 per sampling unit, between 0.921 and 1.43 (95 % sure).");
    }

    @Test
    void nothingFoundIsAZeroWithABound() throws IOException {
        Path file =
                Files.writeString(folder.resolve("zero.csv"), "count,units\n" + "0,10\n".repeat(8));

        JsonNode group =
                CommandRun.of("estimate", file.toString(), "--k", "0.5", "--json")
                        .json()
                        .get("groups")
                        .get(0);

        // (k / u) (alpha^(-1 / kJ) - 1), by hand: 0.05 (0.05^(-1/4) - 1)
        assertThat(group.get("estimate").asDouble()).isZero();
        assertThat(group.get("lower").asDouble()).isZero();
        assertThat(group.get("upper").asDouble())
                .isCloseTo(0.05 * (Math.pow(0.05, -0.25) - 1), within(1e-9));
        assertThat(group.get("standardError").isNull()).isTrue();
        assertThat(group.get("k").asDouble()).isEqualTo(0.5);
    }

    @ParameterizedTest(name = "{0}")
    @org.junit.jupiter.params.provider.ValueSource(
            strings = {"--k=1e-300", "--k=1e300", "--efficiency=1e-9", "--efficiency=5e-324"})
    void answersAtTheFarEndsOfWhatIsAllowed(String option) {
        CommandRun run = CommandRun.of("estimate", DATA + "insectsprays.csv", option, "--json");

        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        JsonNode group = run.json().get("groups").get(0);
        double estimate = group.get("estimate").asDouble(Double.POSITIVE_INFINITY);
        assertThat(group.get("upper").asDouble(Double.POSITIVE_INFINITY))
                .isGreaterThanOrEqualTo(estimate);
        boolean unsaid = group.get("estimate").isNull() || group.get("upper").isNull();
        assertThat(run.json().get("warnings").toString().contains("beyond all numbers"))
                .isEqualTo(unsaid);
    }

    @Test
    void correctsForWhatTheWashLeavesBehind() {
        String[] args = {
            "estimate", DATA + "freq_yeast.csv", "--frequency=freq", "--interval=profile", "--json"
        };
        String[] corrected = {
            "estimate",
            DATA + "freq_yeast.csv",
            "--frequency=freq",
            "--interval=profile",
            "--efficiency=0.5",
            "--json"
        };
        JsonNode plain = CommandRun.of(args).json().get("groups").get(0);
        JsonNode group = CommandRun.of(corrected).json().get("groups").get(0);

        for (String field : List.of("estimate", "lower", "upper")) {
            assertThat(group.get(field).asDouble())
                    .isCloseTo(2 * plain.get(field).asDouble(), within(1e-9));
            assertThat(group.get("apparent").get(field).asDouble())
                    .isCloseTo(plain.get(field).asDouble(), within(1e-9));
        }
        assertThat(plain.has("apparent")).isFalse();
    }
}
