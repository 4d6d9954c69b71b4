package jarwise.cli.laboratory;

import jarwise.base.InvalidInput;
import jarwise.cli.Commands;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.stats.agreement.AgreementScale;
import jarwise.stats.agreement.CountingBand;
import jarwise.stats.estimate.DetectionShare;
import jarwise.usecase.laboratory.ReadPairs;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jarwise agreement SHEET}: how far do two counts of the same things differ? */
@Command(
        name = "agreement",
        description =
                "How far do two counts of the same things differ, and is it more than chance?")
public final class AgreementCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();
    @Mixin private final RowOptions rows = new RowOptions();

    @Parameters(paramLabel = "SHEET", description = "CSV (UTF-8) or .xlsx with a header row")
    Path sheet = Path.of("");

    @Option(
            names = "--pair",
            required = true,
            split = ",",
            paramLabel = "COLUMN",
            description = "the two columns of counts, as first,second")
    List<String> pair = List.of();

    @Option(
            names = "--scale",
            paramLabel = "SCALE",
            description = "sqrt (default): square roots; identity: the counts as they are")
    AgreementScale scale = AgreementScale.SQRT;

    @Option(
            names = "--sensitivity",
            split = ",",
            paramLabel = "SHARE",
            converter = Numbers.Share.class,
            description = "share that each of the two finds, as 0.9,18/20; for the band of chance")
    List<DetectionShare> sensitivity = List.of();

    @Option(
            names = "--two-filters",
            description = "the two counts are of two filters; else both are of the same")
    boolean twoFilters;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "level of the intervals of bias and limits, 0.95 by default")
    double confidence = 0.95;

    /** Prints to this stream. */
    public AgreementCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        if (pair.size() != 2) {
            throw new InvalidInput(
                    "--pair is \"%s\"; two columns are needed. Maybe: --pair first,second"
                            .formatted(String.join(",", pair)));
        }
        Optional<CountingBand> band = band();
        ReadPairs read = ReadPairs.run(rows.request(sheet, List.of()), pair.get(0), pair.get(1));
        AgreementAnswer.of(read, scale, confidence, band).answer().print(out, answer.json);
        return Commands.DONE;
    }

    private Optional<CountingBand> band() {
        if (sensitivity.size() == 2) {
            return Optional.of(
                    new CountingBand(
                            !twoFilters, sensitivity.get(0).mean(), sensitivity.get(1).mean()));
        }
        if (!sensitivity.isEmpty()) {
            throw new InvalidInput(
                    "--sensitivity has %d share(s); one for each of the two counts is needed."
                                    .formatted(sensitivity.size())
                            + " Maybe: --sensitivity 0.9,18/20");
        }
        return twoFilters ? Optional.of(new CountingBand(false, 1, 1)) : Optional.empty();
    }
}
