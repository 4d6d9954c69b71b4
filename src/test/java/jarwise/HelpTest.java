package jarwise;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.cli.Commands;
import jarwise.cli.option.CommandEntry;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What {@code jarwise help} tells of the commands as the program has them. */
class HelpTest {

    @TempDir Path folder;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    static Stream<String> commands() {
        return App.commands().entries().stream().map(CommandEntry::name);
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandTellsWhatItDoesAndItsOptions(String name) {
        assertThat(run("help", name)).isEqualTo(Commands.DONE);
        String told = printed(out);
        assertThat(told).startsWith("Usage: jarwise " + name).contains("--help");

        out.reset();
        assertThat(run((name + " --help").split(" "))).isEqualTo(Commands.DONE);
        assertThat(printed(out)).isEqualTo(told);
        assertThat(printed(err)).isEmpty();
    }

    @Test
    void whatServeTellsIsWhatServeTakes() {
        run("help", "serve");

        List<String> options =
                List.of("--data", "--database", "--port", "--lan-port", "--certificate", "--key");
        assertThat(printed(out)).contains(options).contains("--lan ");
        List<String> all = new ArrayList<>(List.of("--lan"));
        options.forEach(option -> all.addAll(List.of(option, "1")));
        assertThat(ServeOptions.of(all, "usual").lan()).isPresent();
    }

    @Test
    void aSheetThatCannotBeReadLeavesNothingBehind() {
        String data = folder.resolve("data").toString();
        assertThat(run("import", "no-such.csv", "--nursery", "lane", "--data", data))
                .isEqualTo(Commands.WRONG_INPUT);

        assertThat(printed(err)).contains("no file");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aPreviewMakesNoNursery() {
        String data = folder.resolve("data").toString();
        String sheet = "src/test/resources/reference/data/quine.csv";
        assertThat(
                        run(
                                "import",
                                sheet,
                                "--map",
                                "count=Days",
                                "--preview",
                                "--data",
                                data,
                                "--nursery",
                                "lane"))
                .isEqualTo(Commands.DONE);
        out.reset();

        assertThat(run("import", sheet, "--data", data)).isEqualTo(Commands.WRONG_INPUT);
        assertThat(printed(err)).contains("no nursery yet");
    }

    @Test
    void aDayThatIsNoneIsSaidInPlainWords() {
        assertThat(run("import", "x.csv", "--date", "2026-99-99")).isEqualTo(Commands.WRONG_INPUT);

        assertThat(printed(err)).contains("\"2026-99-99\" is no day").doesNotContain("java");
    }

    private int run(String... args) {
        return App.commands().run(args, printing(out), printing(err));
    }

    private static PrintStream printing(ByteArrayOutputStream to) {
        return new PrintStream(to, false, StandardCharsets.UTF_8);
    }

    private static String printed(ByteArrayOutputStream from) {
        return from.toString(StandardCharsets.UTF_8);
    }
}
