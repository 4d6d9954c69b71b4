package jarwise.cli.pattern;

import jarwise.cli.Commands;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.cli.option.SheetOptions;
import jarwise.stats.space.Permutations;
import jarwise.usecase.pattern.MapSpread;
import jarwise.usecase.pattern.SpreadOptions;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise spread SHEET}: where on the map are they, and do they spread? */
@Command(
        name = "spread",
        description = "On what share of benches are they, and do dense benches lie together?")
public final class SpreadCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final SheetOptions sheet = new SheetOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--position",
            split = ",",
            paramLabel = "COLUMN",
            description = "the two columns of a bench's place, x,y by default")
    List<String> position = List.of("x", "y");

    @Option(
            names = "--reach",
            paramLabel = "DISTANCE",
            converter = Numbers.Positive.class,
            description = "benches no farther apart are neighbours; 1 by default")
    double reach = 1;

    @Option(
            names = "--round",
            paramLabel = "COLUMN",
            description = "column that tells the rounds apart; the date by default")
    @Nullable String round;

    @Option(
            names = "--effort",
            paramLabel = "UNITS",
            converter = Numbers.Positive.class,
            description = "sampling units per bench to say the share for; the mean by default")
    @Nullable Double effort;

    @Option(
            names = "--k",
            paramLabel = "K",
            converter = Numbers.Dispersion.class,
            description = "how unlike the benches are; estimated by default")
    @Nullable Double k;

    @Option(names = "--permutations", paramLabel = "M", description = "9999 by default")
    int permutations = Permutations.STANDARD.number();

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "start of the random numbers; 1 by default")
    long seed = Permutations.STANDARD.seed();

    /** Makes the command. */
    public SpreadCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        SpreadOptions options =
                new SpreadOptions(
                        position,
                        reach,
                        Optional.ofNullable(round),
                        optional(effort),
                        optional(k),
                        new Permutations(permutations, seed));
        MapSpread spread = MapSpread.run(sheet.request(List.of()), options);
        new SpreadAnswer(spread, options.permutations()).answer().print(out, answer.json);
        return Commands.DONE;
    }

    private static OptionalDouble optional(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
