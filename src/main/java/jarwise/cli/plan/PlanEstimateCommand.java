package jarwise.cli.plan;

import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.design.FixedPrecision;
import jarwise.stats.design.VarianceLaw;
import jarwise.wire.json.JsonObject;
import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.DoubleStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise plan estimate}: how many samples for a wanted precision? */
@Command(
        name = "plan estimate",
        description = "How many samples give the density with a wanted precision?")
public final class PlanEstimateCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();
    @Mixin private final VarianceOptions variance = new VarianceOptions();

    @Option(
            names = "--density",
            required = true,
            paramLabel = "DENSITY",
            converter = Numbers.Positive.class,
            description = "density that is expected, as counted, per sampling unit")
    double density;

    @Option(
            names = "--precision",
            required = true,
            paramLabel = "SHARE",
            converter = Numbers.Positive.class,
            description = "wanted standard error as a share of the mean, such as 0.25")
    double precision;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            converter = Numbers.Positive.class,
            description = "sampling units in one sample, 1 by default")
    double units = 1;

    /** Prints its answer to the stream it is given. */
    public PlanEstimateCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        VarianceLaw law = variance.law();
        FixedPrecision plan = new FixedPrecision(density, units, precision, law);
        JsonObject json =
                new JsonObject()
                        .put("sampleSize", plan.sampleSize())
                        .put("samplesExact", plan.samplesExact())
                        .put("cumulativeCount", plan.cumulativeCount());
        List<String> warnings =
                plan.sampleSize().isPresent()
                        ? List.of()
                        : List.of(
                                "More than %d samples would be needed: they are not given."
                                        .formatted(FixedPrecision.MOST_SAMPLES));
        new Answer(json, List.of(), text(plan), warnings).print(out, answer.json);
        return 0;
    }

    private String text(FixedPrecision plan) {
        TextTable table = new TextTable(0, List.of("standard error", "samples", "counted"));
        DoubleStream.of(2 * precision, precision, 0.5 * precision)
                .mapToObj(share -> new FixedPrecision(density, units, share, plan.law()))
                .forEach(other -> table.add(cells(other)));
        if (plan.sampleSize().isEmpty()) {
            return table.text();
        }
        return "%s\n%d samples give %s per sampling unit with a standard error of %s of it.\n"
                .formatted(
                        table.text(),
                        plan.sampleSize().getAsLong(),
                        Figures.of(density),
                        Figures.percent(precision));
    }

    private static List<String> cells(FixedPrecision plan) {
        return List.of(
                Figures.percent(plan.relativeStandardError()),
                plan.sampleSize().isPresent() ? String.valueOf(plan.sampleSize().getAsLong()) : "-",
                Figures.of(plan.cumulativeCount()));
    }
}
