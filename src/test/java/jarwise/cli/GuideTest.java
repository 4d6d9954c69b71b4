package jarwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.Sources;
import jarwise.cli.option.CommandEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** The examples of the guide do what the guide says. */
class GuideTest {

    private static final Path GUIDES = Path.of("docs/guide");
    private static final Path GUIDE = GUIDES.resolve("counting-sheets.md");
    private static final Pattern BLOCK =
            Pattern.compile("```(csv|console) ?(\\S*)\n(.*?)```\n", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @TempDir Path folder = Path.of("");

    static List<Path> guides() {
        return Sources.files(GUIDES, ".md");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("guides")
    void everyExamplePrintsWhatTheGuideShows(Path guide) throws IOException {
        int run = 0;
        Matcher block = BLOCK.matcher(Files.readString(guide));
        while (block.find()) {
            if (block.group(1).equals("csv")) {
                Files.writeString(folder.resolve(block.group(2)), block.group(3));
            } else {
                assertThat(printed(block.group(3))).isEqualTo(block.group(3));
                run++;
            }
        }
        assertThat(run).isGreaterThanOrEqualTo(guide.equals(GUIDE) ? 6 : 0);
    }

    private String printed(String shown) {
        String command = shown.lines().findFirst().orElse("");
        List<String> args = new ArrayList<>();
        Matcher word = WORD.matcher(command.replaceFirst("^\\$ jarwise ", ""));
        while (word.find()) {
            String text = word.group(1) == null ? word.group(2) : word.group(1);
            args.add(text.endsWith(".csv") ? folder.resolve(text).toString() : text);
        }
        CommandRun run = CommandRun.of(args.toArray(String[]::new));
        return command + "\n" + run.out() + run.err();
    }

    @Test
    void namesEveryOptionOfTheCommandsThatReadSheets() throws IOException {
        String guide = Files.readString(GUIDE);
        for (CommandEntry entry : Commands.computing(false).entries()) {
            if (entry.name().equals("estimate")) {
                CommandLine parser = new CommandLine(entry.made().apply(System.out));
                for (String option : parser.getCommandSpec().optionsMap().keySet()) {
                    assertThat(option.length() == 2 || guide.contains("`" + option))
                            .as(option)
                            .isTrue();
                }
            }
        }
    }
}
