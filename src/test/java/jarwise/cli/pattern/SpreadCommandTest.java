package jarwise.cli.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadCommandTest {

    @TempDir Path folder = Path.of("");

    private String sheet(String text) throws IOException {
        return Files.writeString(folder.resolve("map.csv"), text).toString();
    }

    /** Five by three benches, dense at the left, with two rounds. */
    private static List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int x = 1; x <= 5; x++) {
            for (int y = 1; y <= 3; y++) {
                String bench = "B" + x + y;
                int before = x == 1 ? 4 : 0;
                int after = x == 1 ? 9 + y : x == 2 ? 3 : 0;
                lines.add("%s,%d,%d,2026-03-01,10,%d".formatted(bench, x, y, before));
                lines.add("%s,%d,%d,2026-03-15,10,%d".formatted(bench, x, y, after));
            }
        }
        return lines;
    }

    private static String text(List<String> lines) {
        return "bench,x,y,date,units,count\n" + String.join("\n", lines) + "\n";
    }

    @Test
    void saysWhereAndWhetherItSpreads() throws IOException {
        CommandRun run = CommandRun.of("spread", sheet(text(lines())), "--json");
        assertThat(run.err()).isEmpty();
        JsonNode json = run.json();

        assertThat(json.get("round").asText()).isEqualTo("2026-03-15");
        assertThat(json.get("benches").asInt()).isEqualTo(15);
        assertThat(json.get("positive").asInt()).isEqualTo(6);
        assertThat(json.get("shareCorrected").get("estimate").asDouble())
                .isCloseTo(0.4, within(1e-9));
        assertThat(json.get("shareCorrected").get("lower").asDouble()).isBetween(0.1, 0.4);
        assertThat(json.get("shareCorrected").get("upper").asDouble()).isBetween(0.4, 0.7);
        assertThat(json.get("shareCorrected").get("effort").asDouble()).isEqualTo(10);
        assertThat(json.get("moran").get("expected").asDouble())
                .isCloseTo(-1 / 14.0, within(1e-12));
        assertThat(json.get("moran").get("index").asDouble()).isGreaterThan(0.5);
        assertThat(json.get("moran").get("pValue").asDouble()).isLessThan(0.01);
        assertThat(json.get("moran").get("permutations").asInt()).isEqualTo(9999);
        assertThat(json.get("moran").get("seed").asInt()).isEqualTo(1);
        JsonNode joins = json.get("newNextToOld");
        assertThat(joins.get("oldBenches").asInt()).isEqualTo(3);
        assertThat(joins.get("couldTurn").asInt()).isEqualTo(12);
        assertThat(joins.get("newBenches").asInt()).isEqualTo(3);
        assertThat(joins.get("joins").asInt()).isEqualTo(3);
        assertThat(joins.get("expected").asDouble()).isCloseTo(0.75, within(1e-12));
        assertThat(joins.get("pValue").asDouble()).isCloseTo(1 / 220.0, within(0.003));
        assertThat(json.get("map")).hasSize(15);
        assertThat(json.get("warnings").isArray()).isTrue();
    }

    @Test
    void orderOfRowsMakesNoDifference() throws IOException {
        String straight = CommandRun.of("spread", sheet(text(lines())), "--json").out();
        List<String> shuffled = lines();
        Collections.shuffle(shuffled, new Random(3));

        assertThat(CommandRun.of("spread", sheet(text(shuffled)), "--json").out())
                .isEqualTo(straight);
    }

    @Test
    void aMapWithoutRoundsHasNoNewFinds() throws IOException {
        JsonNode json =
                CommandRun.of(
                                "spread",
                                sheet("bench,row,column,count\nA,1,1,0\nB,1,2,0\nC,1,3,0\n"),
                                "--position",
                                "row,column",
                                "--json")
                        .json();

        assertThat(json.has("newNextToOld")).isFalse();
        assertThat(json.get("moran").get("index").isNull()).isTrue();
        assertThat(json.get("moran").get("pValue").isNull()).isTrue();
        assertThat(json.get("shareCorrected").get("estimate").asDouble()).isZero();
        assertThat(json.get("shareCorrected").get("k").isNull()).isTrue();
        assertThat(json.get("warnings").toString())
                .contains("all benches are the same")
                .contains("no more than by chance");
    }

    @Test
    void tellsAPerson() throws IOException {
        CommandRun run = CommandRun.of("spread", sheet(text(lines())));

        assertThat(run.out())
                .contains("6 of 15 benches had a find")
                .contains("Dense benches lie together")
                .contains("New finds lie beside old ones");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "no bench|x,y,count\\n1,1,3\\n||bench",
                "no place|bench,x,count\\nA,1,3\\n||y",
                "place is a word|bench,x,y,count\\nA,left,1,3\\n||must be a number",
                "place is NaN|bench,x,y,count\\nA,NaN,1,3\\n||must be a number",
                "blank place|bench,x,y,count\\nA,,1,3\\n||blank",
                "two places|bench,x,y,count\\nA,1,1,3\\nA,2,1,3\\n||a bench has one place",
                "one place for two|bench,x,y,count\\nA,1,1,3\\nB,1,1,3\\n||both stand at",
                "one column|bench,x,y,count\\nA,1,1,3\\n|--position=x|2 are needed",
                "no reach|bench,x,y,count\\nA,1,1,3\\n|--reach=-1|above 0",
                "few draws|bench,x,y,count\\nA,1,1,3\\n|--permutations=5|99 to",
                "no such round|bench,x,y,count\\nA,1,1,3\\n|--round=week|week",
                "negative|bench,x,y,count\\nA,1,1,-3\\n||-3",
                "empty|''||empty",
            })
    void refusesWhatCannotBe(String name, String text, String option, String said)
            throws IOException {
        List<String> args = new ArrayList<>(List.of("spread", sheet(text.replace("\\n", "\n"))));
        if (option != null) {
            args.add(option);
        }
        args.add("--json");
        CommandRun run = CommandRun.of(args.toArray(String[]::new));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("Exception");
    }
}
