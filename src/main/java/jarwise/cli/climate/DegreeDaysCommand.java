package jarwise.cli.climate;

import jarwise.cli.option.AnswerOptions;
import jarwise.phenology.DegreeDayMethod;
import jarwise.usecase.climate.SumDegreeDays;
import java.io.PrintStream;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code jarwise degree-days LOG}: how much heat for development came together? */
@Command(
        name = "degree-days",
        description = "How much heat for development came together, day by day?")
final class DegreeDaysCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final LogOptions log = new LogOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--lower",
            required = true,
            paramLabel = "L",
            converter = LogOptions.Degrees.class,
            description = "below this nothing develops, in the log's unit")
    double lower;

    @Option(
            names = "--upper",
            paramLabel = "U",
            converter = LogOptions.Degrees.class,
            description = "above this it gets no faster (horizontal cutoff), in the log's unit")
    @Nullable Double upper;

    @Option(
            names = "--method",
            paramLabel = "METHOD",
            converter = Method.class,
            description =
                    "hourly (default for time,temperature), single-sine (default for date,min,max)"
                            + " or average")
    @Nullable DegreeDayMethod method;

    DegreeDaysCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        OptionalDouble cutoff = upper == null ? OptionalDouble.empty() : OptionalDouble.of(upper);
        SumDegreeDays.Sum sum =
                new SumDegreeDays(log.request(), lower, cutoff, Optional.ofNullable(method)).run();
        DegreeDaysAnswer.of(sum).print(out, answer.json);
        return 0;
    }

    /** A method by its name. */
    static final class Method implements ITypeConverter<DegreeDayMethod> {

        @Override
        public DegreeDayMethod convert(String text) {
            return Arrays.stream(DegreeDayMethod.values())
                    .filter(method -> method.text().equalsIgnoreCase(text))
                    .findAny()
                    .orElseThrow(
                            () ->
                                    new TypeConversionException(
                                            ("it is \"%s\"; single-sine, hourly or average is"
                                                            + " allowed. Maybe hourly")
                                                    .formatted(text)));
        }
    }
}
