package jarwise.cli.plan;

import jarwise.base.InvalidInput;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.Numbers;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.stats.design.Allocation;
import jarwise.wire.json.JsonObject;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise plan allocate}: how many samples from which part of the crop? */
@Command(
        name = "plan allocate",
        description = "How many samples should come from which part of the crop?")
public final class PlanAllocateCommand implements Callable<Integer> {

    private static final int MOST_SAMPLES = 1_000_000;

    private final PrintStream out;

    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--strata",
            required = true,
            split = ",",
            paramLabel = "NAME=SIZE[:SD[:COST]]",
            description =
                    "parts of the crop: growing points standing there, standard deviation of the"
                            + " density per sample, cost of a sample")
    List<String> strata = List.of();

    @Option(
            names = "--total",
            required = true,
            paramLabel = "SAMPLES",
            converter = Numbers.Whole.class,
            description = "samples in all, at least two for each part")
    long total;

    /** Prints its answer to the stream it is given. */
    public PlanAllocateCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        if (total > MOST_SAMPLES) {
            throw new InvalidInput(
                    "--total is %d; at most %d is allowed.".formatted(total, MOST_SAMPLES));
        }
        Allocation plan = Allocation.of(StrataText.read(strata), (int) total);
        List<JsonObject> shares = plan.shares().stream().map(PlanAllocateCommand::object).toList();
        JsonObject json =
                new JsonObject()
                        .put("method", plan.method().name().toLowerCase(Locale.ROOT))
                        .put("sampleSize", plan.sampleSize())
                        .put("cost", plan.cost())
                        .put("standardError", plan.standardError())
                        .putObjects("strata", shares);
        new Answer(json, shares, text(plan), warnings(plan)).print(out, answer.json);
        return 0;
    }

    private static List<String> warnings(Allocation plan) {
        return plan.standardError().isPresent()
                ? List.of()
                : List.of(
                        "Samples go by size, and no standardError is given: no standard deviations"
                                + " are known.");
    }

    private static JsonObject object(Allocation.Share share) {
        return new JsonObject()
                .put("stratum", share.stratum().name())
                .put("samplingUnitsStanding", share.stratum().samplingUnitsStanding())
                .put("standardDeviation", share.stratum().standardDeviation())
                .put("costOfSample", share.stratum().costOfSample())
                .put("samplesExact", share.samplesExact())
                .put("sampleSize", share.sampleSize());
    }

    private static String text(Allocation plan) {
        TextTable table =
                new TextTable(1, List.of("stratum", "units standing", "deviation", "samples"));
        for (Allocation.Share share : plan.shares()) {
            table.add(
                    List.of(
                            share.stratum().name(),
                            Figures.of(share.stratum().samplingUnitsStanding()),
                            Figures.of(share.stratum().standardDeviation()),
                            String.valueOf(share.sampleSize())));
        }
        String error =
                plan.standardError().isPresent()
                        ? "; expect a standard error of %s for the crop's mean"
                                .formatted(Figures.of(plan.standardError()))
                        : "";
        return "%s\n%d samples in all, %s%s.\n"
                .formatted(table.text(), plan.sampleSize(), ratio(plan.method()), error);
    }

    private static String ratio(Allocation.Method method) {
        return method == Allocation.Method.NEYMAN
                ? "more where it is larger, more uneven or cheaper"
                : "in proportion to what stands";
    }
}
