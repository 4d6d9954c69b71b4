package jarwise.cli;

import jarwise.cli.option.DataOptions;
import jarwise.render.report.Paper;
import jarwise.usecase.SaveReport;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise report}: the grower's letter as a file. */
@Command(name = "report", description = "Writes the grower's letter: one page, HTML or PDF.")
public final class ReportCommand implements Callable<Integer> {

    private final PrintStream out;
    private final InstantSource clock;

    @Mixin private final DataOptions data;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            required = true,
            description = "the letter, ending in .html or .pdf; replaced if it is there")
    Path file = Path.of("letter.pdf");

    @Option(
            names = "--nursery",
            paramLabel = "NAME",
            description = "short name of the nursery; needed where there are several")
    @Nullable String nursery;

    @Option(
            names = "--pest",
            paramLabel = "CODE",
            description = "what the letter is about; the first pest with a line otherwise")
    @Nullable String pest;

    @Option(
            names = "--stage",
            paramLabel = "GROUP",
            description = "stages added up, such as larva; with --pest")
    @Nullable String stage;

    @Option(
            names = "--language",
            paramLabel = "CODE",
            description = "en, es or fr; the nursery's own otherwise")
    @Nullable String language;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            description = "a4 or letter, for PDF; a4 otherwise")
    Paper paper = Paper.A4;

    /**
     * Makes the command.
     *
     * @param out where the answer goes
     * @param usualAddress where the data lie when no option says
     * @param clock what time it is
     */
    public ReportCommand(PrintStream out, String usualAddress, InstantSource clock) {
        this.out = out;
        this.data = new DataOptions(usualAddress);
        this.clock = clock;
    }

    @Override
    public Integer call() {
        SaveReport.Wanted wanted =
                new SaveReport.Wanted(
                        Optional.ofNullable(nursery),
                        Optional.ofNullable(pest),
                        Optional.ofNullable(stage),
                        Optional.ofNullable(language),
                        paper);
        String answer = new SaveReport(clock).run(data.address, file, wanted);
        out.println(answer);
        out.printf("The letter is in %s.%n", file);
        return Commands.DONE;
    }
}
