package jarwise.cli.laboratory;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.cli.Commands;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.stats.removal.RemovalCatches;
import jarwise.usecase.laboratory.ReadFinds;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jarwise sensitivity}: what share of a known number is found again? */
@Command(
        name = "sensitivity",
        description = "What share of a known number does a reader, or a wash, find again?")
public final class SensitivityCommand implements Callable<Integer> {

    private static final Pattern FIND = Pattern.compile("[0-9]{1,9}/[0-9]{1,9}");

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();
    @Mixin private final RowOptions rows = new RowOptions();

    @Parameters(
            arity = "0..*",
            paramLabel = "FOUND/KNOWN|SHEET",
            description = "found of known, added up; or a sheet with the columns known and found")
    List<String> finds = List.of();

    @Option(
            names = "--by",
            split = ",",
            paramLabel = "COLUMN",
            description = "one share for each value of these columns of the sheet")
    List<String> by = List.of();

    @Option(
            names = "--washes",
            paramLabel = "C1,C2,…",
            description = "a series of repeat washes that tells of the same share; may be repeated")
    List<String> washes = List.of();

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "level of the limits, 0.95 by default")
    double confidence = 0.95;

    /** Prints to this stream. */
    public SensitivityCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        List<RemovalCatches> series = washes.stream().map(SensitivityCommand::series).toList();
        ReadFinds read = read();
        new SensitivityAnswer(read, series, confidence).answer().print(out, answer.json);
        return Commands.DONE;
    }

    private ReadFinds read() {
        if (finds.size() == 1 && !finds.get(0).matches("[0-9./]+")) {
            return ReadFinds.run(rows.request(Path.of(finds.get(0)), by));
        }
        if (finds.isEmpty() && washes.isEmpty()) {
            throw new InvalidInput(
                    "Neither FOUND/KNOWN nor a sheet nor washes are given; one of them is needed."
                            + " Maybe: jarwise sensitivity 18/20");
        }
        if (!by.isEmpty()) {
            throw new InvalidInput("--by makes groups of a sheet's rows, but no sheet is given.");
        }
        long found = 0;
        long known = 0;
        for (String find : finds) {
            if (!FIND.matcher(find).matches()) {
                throw new InvalidInput(
                        ("FOUND/KNOWN is \"%s\"; two whole numbers are allowed, or the name of one"
                                        + " sheet. Maybe 18/20")
                                .formatted(find));
            }
            found += Long.parseLong(find.substring(0, find.indexOf('/')));
            known += Long.parseLong(find.substring(find.indexOf('/') + 1));
        }
        return new ReadFinds(
                List.of(new ReadFinds.Find(Map.of(), found, known)), List.<Message>of());
    }

    private static RemovalCatches series(String text) {
        if (!text.matches("[0-9]{1,10}(,[0-9]{1,10})+")) {
            throw new InvalidInput(
                    ("--washes is \"%s\"; whole numbers with commas are allowed, one for each wash."
                                    + " Maybe --washes 38,26,12")
                            .formatted(text));
        }
        return new RemovalCatches(Arrays.stream(text.split(",")).map(Long::valueOf).toList());
    }
}
