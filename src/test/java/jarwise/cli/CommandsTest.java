package jarwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import jarwise.cli.option.CommandEntry;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Command;

class CommandsTest {

    private static final String SHEET = "src/test/resources/reference/data/quine.csv";

    static Stream<Arguments> wrongOptions() {
        return Stream.of(
                arguments(List.of("estimat"), "Maybe: estimate"),
                arguments(List.of("help", "estmate"), "Maybe: estimate"),
                arguments(List.of("estimate"), "SHEET"),
                arguments(List.of("estimate", SHEET, "--confidense", "1"), "Maybe: --confidence"),
                arguments(List.of("estimate", SHEET, "--confidence", "95"), "Maybe 0.95"),
                arguments(List.of("estimate", SHEET, "--confidence", "NaN"), "below 1"),
                arguments(List.of("estimate", SHEET, "--k", "0"), "above 0, or Inf"),
                arguments(List.of("estimate", SHEET, "--k", "-1"), "Maybe leave it out"),
                arguments(List.of("estimate", SHEET, "--k", "NaN"), "or Inf, is allowed"),
                arguments(
                        List.of("estimate", SHEET, "--confidence", "0.99999999999999999"),
                        "beyond 0.9999999999999999"),
                arguments(List.of("estimate", SHEET, "--efficiency", "1.2"), "at most 1,"),
                arguments(List.of("estimate", SHEET, "--efficiency", "25/24"), "18/24"),
                arguments(List.of("estimate", SHEET, "--sensitivity", "0"), "above 0"),
                arguments(List.of("estimate", SHEET, "--threshold", "NaN"), "above 0"),
                arguments(List.of("estimate", SHEET, "--interval", "wald"), "PROFILE"),
                arguments(List.of("estimate", SHEET, "--where", "larva"), "stage=larva"),
                arguments(List.of("estimate", SHEET), "--map count=Days"),
                arguments(List.of("estimate", SHEET, "--map", "count=Dais"), "Maybe: Days"),
                arguments(List.of("estimate", SHEET, "--map", "cuont=Days"), "Maybe: count"),
                arguments(
                        List.of("estimate", SHEET, "--map", "count=Days", "--by", "Sexx"),
                        "Maybe: Sex"),
                arguments(
                        List.of("estimate", SHEET, "--map", "count=Days", "--where", "Sex=X"),
                        "Maybe: M, F"),
                arguments(
                        List.of("estimate", SHEET, "--map", "count=Days", "--frequency", "Frq"),
                        "There is no column \"Frq\""),
                arguments(List.of("estimate", "no-such.csv"), "no file"),
                arguments(List.of("estimate", "src"), "no file"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrongOptions")
    void tellsWhatIsWrongAndGuessesWhatWasMeant(List<String> args, String said) {
        CommandRun run = CommandRun.of(args.toArray(String[]::new));

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("\tat ");
    }

    @Test
    void listsItsCommands() {
        assertThat(CommandRun.of("help").out()).contains("estimate").contains("Exit codes");
        assertThat(CommandRun.of().out()).isEqualTo(CommandRun.of("help").out());
        assertThat(CommandRun.of("help", "estimate").out())
                .isEqualTo(CommandRun.of("estimate", "--help").out())
                .contains("--per-sample");
        assertThat(CommandRun.of("--version").out()).startsWith("jarwise ");
    }

    @Test
    void aCommandMayHaveTwoWords() {
        CommandEntry two = new CommandEntry("plan rest", "rests", out -> new Broken());
        Commands commands = new Commands(List.of(two), false);

        assertThat(CommandRun.of(commands, "plan", "rest").err()).contains("a gear fell off");
        assertThat(CommandRun.of(commands, "help", "plan", "rest").out()).contains("plan rest");
        assertThat(CommandRun.of(commands, "plan").err()).contains("Maybe: plan rest.");
        assertThat(CommandRun.of(commands, "plan", "rset").err())
                .contains("no command \"plan rset\"")
                .contains("Maybe: plan rest.");
    }

    @Test
    void aFaultOfOursIsOneParagraphAndHidesItsTrace() {
        CommandEntry broken = new CommandEntry("broken", "breaks", out -> new Broken());

        CommandRun quiet = CommandRun.of(new Commands(List.of(broken), false), "broken");
        CommandRun loud = CommandRun.of(new Commands(List.of(broken), true), "broken");

        assertThat(quiet.code()).isEqualTo(1);
        assertThat(quiet.err().strip()).contains("its own fault").doesNotContain("\n");
        assertThat(loud.code()).isEqualTo(1);
        assertThat(loud.err()).contains("\tat ");
    }

    @Command(name = "broken")
    private static final class Broken implements Callable<Integer> {

        @Override
        public Integer call() {
            throw new IllegalStateException("a gear fell off");
        }
    }
}
