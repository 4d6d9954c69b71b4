package jarwise.cli;

import jarwise.base.InvalidInput;
import jarwise.cli.option.DataOptions;
import jarwise.plan.RoundPlan;
import jarwise.usecase.paper.SaveLabels;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code jarwise labels}: the labels of a round as PDF. */
@Command(
        name = "labels",
        description = "Prints the labels of a round: lid, base and voucher of each jar, as PDF.")
public final class LabelsCommand implements Callable<Integer> {

    private final PrintStream out;
    private final InstantSource clock;

    @Mixin private final DataOptions data;

    @Option(
            names = "--round",
            paramLabel = "ID",
            description = "the round's name, such as 2026-05-11-a")
    @Nullable String round;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            required = true,
            description = "the labels, ending in .pdf; replaced if it is there")
    Path file = Path.of("labels.pdf");

    @Option(
            names = "--sheet",
            paramLabel = "NAME",
            description =
                    "a4-21, a4-24, a4-65, letter-30, letter-10 or letter-80; otherwise the one"
                            + " that was chosen on the page")
    @Nullable String sheet;

    @Option(
            names = "--nudge",
            paramLabel = "X,Y",
            converter = Millimetres.class,
            description = "moves everything by X mm to the right and Y mm down, such as 0.5,-1")
    SaveLabels.@Nullable Nudge nudge;

    @Option(
            names = "--start",
            paramLabel = "N",
            description = "the first label still on the sheet, along the rows; 1 otherwise")
    int start = 1;

    @Option(
            names = "--test-page",
            description = "instead of labels a page with their outlines and a ruler of 100 mm")
    boolean testPage;

    @Option(
            names = "--nursery",
            paramLabel = "NAME",
            description = "short name of the nursery; needed where there are several")
    @Nullable String nursery;

    /**
     * Makes the command.
     *
     * @param out where the answer goes
     * @param usualAddress where the data lie when no option says
     * @param clock what time it is
     */
    public LabelsCommand(PrintStream out, String usualAddress, InstantSource clock) {
        this.out = out;
        this.data = new DataOptions(usualAddress);
        this.clock = clock;
    }

    @Override
    public Integer call() {
        SaveLabels.Wanted wanted =
                new SaveLabels.Wanted(
                        Optional.ofNullable(sheet), Optional.ofNullable(nudge), start);
        if (testPage) {
            SaveLabels.testPage(file, wanted);
            out.printf("The test page is in %s. Print it at 100 %%.%n", file);
            return Commands.DONE;
        }
        if (round == null) {
            throw new InvalidInput("Which round? Say it with --round, such as 2026-05-11-a.");
        }
        RoundPlan plan =
                new SaveLabels(clock)
                        .run(data.address, Optional.ofNullable(nursery), round, file, wanted);
        out.printf(
                "Lid, base and voucher of %d jars of round %s are in %s. Print it at 100 %%.%n",
                plan.jars().size(), plan.id(), file);
        return Commands.DONE;
    }

    /** Two numbers in mm with a comma between. */
    static final class Millimetres implements ITypeConverter<SaveLabels.Nudge> {
        @Override
        public SaveLabels.Nudge convert(String text) {
            if (!text.matches("-?[0-9]+(\\.[0-9]+)?,-?[0-9]+(\\.[0-9]+)?")) {
                throw new TypeConversionException(
                        ("it is \"%s\"; two numbers in mm, to the right and down, with a comma"
                                        + " between, are allowed. Maybe 0.5,-1")
                                .formatted(text));
            }
            int comma = text.indexOf(',');
            return new SaveLabels.Nudge(
                    Double.parseDouble(text.substring(0, comma)),
                    Double.parseDouble(text.substring(comma + 1)));
        }
    }
}
