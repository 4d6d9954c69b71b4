package jarwise.cli.climate;

import jarwise.cli.option.AnswerOptions;
import jarwise.usecase.climate.FindWindow;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise window LOG}: when does a second treatment meet what the first left? */
@Command(
        name = "window",
        description = "When does a second treatment meet what was an egg at the first?")
final class WindowCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final LogOptions log = new LogOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--pest",
            required = true,
            paramLabel = "CODE",
            description = "pest by its EPPO code, such as FRANOC")
    String pest = "";

    @Option(
            names = "--treated-at",
            required = true,
            paramLabel = "TIME",
            description = "time of the first treatment, such as 2026-05-04T18:00")
    String treatedAt = "";

    @Option(
            names = "--stage",
            required = true,
            paramLabel = "STAGE",
            description = "stage that the product kills: larva, or nymph")
    String stage = "";

    WindowCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        FindWindow find = new FindWindow(log.request(), pest, treatedAt, stage);
        new WindowAnswer(find, find.run()).answer().print(out, answer.json);
        return 0;
    }
}
