package jarwise.cli.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import jarwise.stats.ReferenceTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class EfficacyCommandTest {

    private static final String DATA = "src/test/resources/reference/data/";
    private static final String[] ARMS = {"--treated", "arm=spray", "--after", "time=after"};
    private static final String HEADER = "arm,time,stage,bench,count\n";

    @TempDir Path folder = Path.of("");

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("efficacy/golden.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsGeneralStatisticsSoftware(ReferenceTable.Row row) {
        List<String> args =
                new ArrayList<>(
                        List.of(
                                "efficacy",
                                DATA + row.text("data"),
                                "--treated=treat=treated",
                                "--after=time=after",
                                "--interval=profile",
                                "--json"));
        if (row.text("units").equals("yes")) {
            args.add("--map=units=growing_points");
        }
        CommandRun run = CommandRun.of(args.toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        JsonNode json = run.json();
        JsonNode group = json.get("groups").get(0);

        assertThat(json.get("target").asDouble()).isEqualTo(0.8);
        assertThat(group.get("group")).isEmpty();
        for (String field : List.of("interaction", "standardError", "k", "pValue", "efficacy")) {
            assertField(group, field, row, field, 1e-6);
        }
        assertField(group, "lower", row, "lower95", 1e-5);
        assertField(group, "upper", row, "upper95", 1e-5);
        assertField(group, "logLikelihood", row, "logLikelihood", 1e-8);
        assertField(group, "hendersonTilton", row, "hendersonTilton", 1e-12);
        assertThat(group.get("abbott").isNumber()).isTrue();
        assertThat(group.get("samples").get("treatedBefore").asInt()).isEqualTo(12);
        assertThat(json.get("warnings").isArray()).isTrue();
    }

    private static void assertField(
            JsonNode group, String field, ReferenceTable.Row row, String column, double within) {
        if (row.has(column)) {
            double scale = field.equals("k") || field.equals("pValue") ? row.number(column) : 1;
            assertThat(group.get(field).asDouble())
                    .as(field)
                    .isCloseTo(row.number(column), within(within * scale));
        } else if (!field.equals("pValue")) {
            assertThat(group.get(field).isNull()).as(field).isTrue();
        }
    }

    private CommandRun run(String rows, String... more) throws IOException {
        Path sheet = folder.resolve("trial.csv");
        Files.writeString(sheet, HEADER + rows);
        List<String> args = new ArrayList<>(List.of("efficacy", sheet.toString(), "--json"));
        args.addAll(List.of(more));
        return CommandRun.of(args.toArray(String[]::new));
    }

    private static String trial(String stage, String counts) {
        StringBuilder rows = new StringBuilder();
        String[] groups = {"spray,before", "spray,after", "check,before", "check,after"};
        String[] perGroup = counts.split("\\|", -1);
        for (int g = 0; g < groups.length; g++) {
            int i = 0;
            for (String count : perGroup[g].trim().split(" +", -1)) {
                String bench = groups[g].charAt(0) + String.valueOf(i++ % 2);
                rows.append("%s,%s,%s,%s%n".formatted(groups[g], stage, bench, count));
            }
        }
        return rows.toString().replace("\r", "");
    }

    @Test
    void givesOneEfficacyAStageInOrder() throws IOException {
        String larvae = trial("larva", "9 4 6 8|1 0 2 0|7 5 9 3|8 9 4 6");
        String adults = trial("adult", "3 4 2 5|3 2 4 3|4 3 2 6|3 5 4 2");
        JsonNode json = run(larvae + adults, with("--by=stage", "--target=0.5")).json();

        assertThat(json.get("target").asDouble()).isEqualTo(0.5);
        assertThat(json.get("groups")).hasSize(2);
        JsonNode adult = json.get("groups").get(0);
        JsonNode larva = json.get("groups").get(1);
        assertThat(adult.get("group").get("stage").asText()).isEqualTo("adult");
        assertThat(larva.get("hendersonTilton").asDouble())
                .isCloseTo(1 - 3 * 24.0 / (27 * 27), within(1e-12));
        assertThat(larva.get("abbott").asDouble()).isCloseTo(1 - 3 / 27.0, within(1e-12));
        assertThat(larva.get("lower").asDouble()).isGreaterThan(adult.get("lower").asDouble());
    }

    private static String[] with(String... more) {
        List<String> args = new ArrayList<>(List.of(ARMS));
        args.addAll(List.of(more));
        return args.toArray(String[]::new);
    }

    @Test
    void leavesOutAStageThatLacksAGroupAndSaysSo() throws IOException {
        String larvae = trial("larva", "9 4 6 8|1 0 2 0|7 5 9 3|8 9 4 6");
        JsonNode json = run(larvae + "spray,before,egg,s0,3\n", with("--by=stage")).json();

        assertThat(json.get("groups")).hasSize(1);
        assertThat(json.get("warnings").toString()).contains("stage egg").contains("--fill-zeros");
    }

    @Test
    void benchesAreBlocksWhenAsked() throws IOException {
        String rows = trial("larva", "19 4 16 3|3 0 2 0|17 5 19 3|18 6 24 4");
        JsonNode plain = run(rows, ARMS).json().get("groups").get(0);
        JsonNode json = run(rows, with("--block=bench")).json();
        JsonNode blocked = json.get("groups").get(0);

        assertThat(blocked.get("logLikelihood").asDouble())
                .isGreaterThan(plain.get("logLikelihood").asDouble());
        assertThat(json.get("warnings").toString()).contains("Bench is a fixed factor");
        assertThat(run(rows, ARMS).json().get("warnings").toString()).contains("not other benches");
    }

    @Test
    void figuresThatDoNotExistAreNullWithASentence() throws IOException {
        JsonNode json = run(trial("larva", "0 0 0|1 0 2|7 5 9|8 9 4"), ARMS).json();
        JsonNode group = json.get("groups").get(0);

        for (String field : List.of("efficacy", "lower", "upper", "interaction", "pValue")) {
            assertThat(group.get(field).isNull()).as(field).isTrue();
        }
        assertThat(group.get("verdict").asText()).isEqualTo("cannot tell");
        assertThat(json.get("warnings").toString()).contains("no find before the treatment");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--treated arm=spray",
                "--after time=after",
                "--treated arm=spry --after time=after",
                "--treated arm --after time=after",
                "--treated =spray --after time=after",
                "--treated arm= --after time=after",
                "--treated armm=spray --after time=after",
                "--treated arm=spray --after arm=check",
                "--treated arm=spray --after time=after --by arm",
                "--treated arm=spray --after time=after --check arm=spray",
                "--treated arm=spray --after time=after --check arm=none",
                "--treated arm=spray --after time=after --check time=before",
                "--treated arm=spray --after time=after --target 1",
                "--treated arm=spray --after time=after --target 80",
                "--treated arm=spray --after time=after --target NaN",
                "--treated arm=spray --after time=after --interval exact",
                "--treated arm=spray --after time=after --block nothing",
                "--treated bench=s0 --after time=after",
                "--treated arm=spray --after time=after --where arm=spray",
                "--treated arm=spray --after time=after --where time=after"
            })
    void refusesWhatItCannotAnswer(String options) throws IOException {
        CommandRun run =
                run(trial("larva", "9 4 6 8|1 0 2 0|7 5 9 3|8 9 4 6"), options.split(" ", -1));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().strip()).isNotEmpty().doesNotContain("Exception", "\n\n");
    }

    @Test
    void saysThatWithoutACheckThereIsOnlyAChange() throws IOException {
        String[] options = with("--where=arm=spray");
        CommandRun run = run(trial("larva", "9 4 6|1 0 2|7 5 9|8 9 4"), options);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("only a change, never an efficacy");
    }

    @Test
    void answersPeopleInASentence() throws IOException {
        Path sheet = folder.resolve("trial.csv");
        Files.writeString(sheet, HEADER + trial("larva", "9 4 6 8|1 0 2 0|7 5 9 3|8 9 4 6"));
        List<String> args = new ArrayList<>(List.of("efficacy", sheet.toString()));
        args.addAll(List.of(ARMS));
        CommandRun run = CommandRun.of(args.toArray(String[]::new));

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("the treatment took 90.1 %")
                .contains("also called Sun-Shepard")
                .contains("Corpses are washed off, too");
    }
}
