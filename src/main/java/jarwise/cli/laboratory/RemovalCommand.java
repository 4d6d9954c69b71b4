package jarwise.cli.laboratory;

import jarwise.cli.Commands;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.stats.removal.FirstWashTest;
import jarwise.stats.removal.RemovalCatches;
import jarwise.stats.removal.RemovalEstimate;
import jarwise.stats.removal.RemovalMethod;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jarwise removal}: how many were there, and what share does one wash bring off? */
@Command(
        name = "removal",
        description = "How many were there, and what share does one wash bring off?")
public final class RemovalCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Parameters(
            arity = "1..*",
            paramLabel = "CATCH",
            converter = WholeNumber.class,
            description = "individuals that each wash of the same material brought off, in order")
    List<Long> catches = List.of();

    @Option(
            names = "--method",
            paramLabel = "METHOD",
            converter = MethodName.class,
            description = "ml (default), zippin, carle-strub or two-pass")
    RemovalMethod method = RemovalMethod.ML;

    @Option(
            names = "--confidence",
            paramLabel = "LEVEL",
            converter = Numbers.Level.class,
            description = "level of the limits, 0.95 by default")
    double confidence = 0.95;

    /** Prints to this stream. */
    public RemovalCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        RemovalCatches washes = new RemovalCatches(catches);
        RemovalEstimate estimate = method.estimate(washes, confidence);
        Optional<FirstWashTest> first =
                washes.washes() > 2 && method == RemovalMethod.ML
                        ? Optional.of(FirstWashTest.of(washes, confidence))
                        : Optional.empty();
        new RemovalAnswer(washes, estimate, first).answer().print(out, answer.json);
        return Commands.DONE;
    }
}
