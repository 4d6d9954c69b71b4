package jarwise.cli.laboratory;

import jarwise.cli.Commands;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.filter.PartialReading;
import jarwise.wire.json.JsonObject;
import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise partial}: how many are on a filter of which a part was read? */
@Command(name = "partial", description = "How many are on a filter of which a part was read?")
public final class PartialCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--found",
            required = true,
            paramLabel = "C",
            converter = WholeNumber.class,
            description = "individuals in the cells that were read")
    long found;

    @Option(
            names = "--read",
            required = true,
            paramLabel = "CELLS",
            converter = Numbers.Positive.class,
            description = "cells read, of completed passes only, without obscured ones")
    double read;

    @Option(
            names = "--total",
            required = true,
            paramLabel = "CELLS",
            converter = Numbers.Positive.class,
            description = "cells that can be read in all, without obscured ones")
    double total;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "level of the limits, 0.95 by default")
    double confidence = 0.95;

    /** Prints to this stream. */
    public PartialCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        PartialReading reading = PartialReading.of(found, read, total);
        JsonObject json =
                new JsonObject()
                        .put("confidenceLevel", confidence)
                        .put("estimate", reading.estimate())
                        .put("lower", reading.lower(confidence))
                        .put("upper", reading.upper(confidence))
                        .put("upperOneSided", reading.upperOneSided(confidence));
        new Answer(json, List.of(), text(reading), List.of()).print(out, answer.json);
        return Commands.DONE;
    }

    private String text(PartialReading reading) {
        TextTable table =
                new TextTable(
                        0, List.of("found", "read", "cells", "on the filter", "lower", "upper"));
        table.add(
                List.of(
                        String.valueOf(found),
                        Figures.of(read),
                        Figures.of(total),
                        Figures.of(reading.estimate()),
                        Figures.of(reading.lower(confidence)),
                        Figures.of(reading.upper(confidence))));
        return table.text() + "\n" + sentence(reading) + "\n";
    }

    private String sentence(PartialReading reading) {
        String sure = " (" + Figures.percent(confidence) + " sure).";
        if (reading.shareRead() == 1) {
            return "Every cell was read: " + found + " are on the filter.";
        }
        return found == 0
                ? "None found; up to "
                        + Figures.of(reading.upperOneSided(confidence))
                        + " can still be on the filter"
                        + sure
                : "%s on the whole filter, between %s and %s"
                                .formatted(
                                        Figures.of(reading.estimate()),
                                        Figures.of(reading.lower(confidence)),
                                        Figures.of(reading.upper(confidence)))
                        + sure;
    }
}
