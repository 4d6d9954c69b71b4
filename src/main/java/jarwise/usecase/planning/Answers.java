package jarwise.usecase.planning;

import jarwise.decision.Finding.Subject;
import jarwise.plan.ComparisonPlan;
import jarwise.stats.count.CountData;
import jarwise.stats.count.Observation;
import jarwise.stats.design.FixedPrecision;
import jarwise.stats.design.VarianceLaw;
import jarwise.stats.detect.ClumpedDetection;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.estimate.ZeroBound;
import jarwise.stats.sequential.CountedSamples;
import jarwise.stats.sequential.SequentialOutcome;
import jarwise.stats.sequential.SequentialPlan;
import jarwise.stats.sequential.WaldDesign;
import jarwise.usecase.planning.PlanAnswer.DecideRow;
import jarwise.usecase.planning.PlanAnswer.DetectRow;
import jarwise.usecase.planning.PlanAnswer.EstimateRow;
import jarwise.usecase.planning.PlanAnswer.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Puts the questions of a round to the engine: the same classes that the {@code plan} commands ask.
 *
 * @param assumed what is taken for granted
 * @param subject which animals
 */
record Answers(Assumed assumed, Subject subject) {

    /** Level of every interval and of every bound after an empty round. */
    static final double LEVEL = 0.95;

    /** z of that level. */
    private static final double Z = 1.959963984540054;

    /** Nobody cuts more in a round. */
    static final int MOST_JARS = 400;

    private static final int POINTS = 41;
    private static final int SHOWN = 2;

    PlanAnswer.Detect detect(Ask.Detect ask, OptionalInt wanted, int least) {
        OptionalLong needed = washing(ask.density()).sampleSize(ask.confidence());
        int jars = jars(needed, wanted, least);
        return new PlanAnswer.Detect(
                jars,
                needed,
                washing(ask.density()).probability(jars),
                boundIfNone(jars),
                curves(jars, ask.density()),
                numbersAround(jars)
                        .mapToObj(
                                n ->
                                        new DetectRow(
                                                n,
                                                boundIfNone(n),
                                                washing(ask.density()).probability(n),
                                                assumed.workload().minutes(n)))
                        .toList());
    }

    private static int jars(OptionalLong needed, OptionalInt wanted, int least) {
        long enough = Math.min(MOST_JARS, needed.orElse(MOST_JARS));
        return Math.max(least, wanted.orElse((int) enough));
    }

    private ClumpedDetection washing(double density) {
        return new ClumpedDetection(
                density, assumed.growingPoints(), assumed.k(), assumed.detection());
    }

    /** {@return the density that so many empty jars rule out} */
    OptionalDouble boundIfNone(int jars) {
        Observation empty = Observation.of(0, assumed.growingPoints());
        CountData data = CountData.ofFrequencies(Map.of(empty, (long) jars));
        return ZeroBound.givenK(data, assumed.k(), assumed.detection()).upper(LEVEL);
    }

    private Map<String, List<Point>> curves(int jars, double density) {
        double from = Math.min(0.01, density / 5);
        double to = Math.max(1, density * 5);
        Map<String, List<Point>> curves = new LinkedHashMap<>();
        curves.put("wash", curve(from, to, d -> OptionalDouble.of(washing(d).probability(jars))));
        for (String way : List.of(WaysOfLooking.TAP, WaysOfLooking.LOOK)) {
            List<Point> points = curve(from, to, d -> WaysOfLooking.chance(way, subject, d));
            if (!points.isEmpty()) {
                curves.put(way, points);
            }
        }
        return curves;
    }

    private static List<Point> curve(double from, double to, DoubleFunction<OptionalDouble> y) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            double x = from * Math.pow(to / from, i / (POINTS - 1.0));
            y.apply(x).ifPresent(chance -> points.add(new Point(x, chance)));
        }
        return points;
    }

    /** {@return some numbers of jars to compare with, smallest first} */
    static IntStream numbersAround(int jars) {
        return DoubleStream.of(0.5, 0.75, 1, 1.25, 1.5, 2)
                .mapToInt(times -> (int) Math.max(1, Math.round(times * jars)))
                .distinct();
    }

    PlanAnswer.Estimate estimate(Ask.Estimate ask, OptionalInt wanted, int least) {
        OptionalLong needed = precision(ask, ask.precision()).sampleSize();
        int jars = jars(needed, wanted, least);
        List<EstimateRow> rows = numbersAround(jars).mapToObj(n -> row(ask, n)).toList();
        return new PlanAnswer.Estimate(jars, needed, row(ask, jars), rows);
    }

    /** The standard error falls as the root of the number: one jar's is that of a whole round. */
    private EstimateRow row(Ask.Estimate ask, int jars) {
        double ofOne = Math.sqrt(precision(ask, 1).samplesExact().orElse(Double.NaN));
        double share = ofOne / Math.sqrt(jars);
        return new EstimateRow(
                jars,
                share,
                ask.density() * Math.exp(-Z * share),
                ask.density() * Math.exp(Z * share),
                assumed.workload().minutes(jars));
    }

    private FixedPrecision precision(Ask.Estimate ask, double wanted) {
        return new FixedPrecision(
                assumed.counted(ask.density()),
                assumed.growingPoints(),
                wanted,
                new VarianceLaw.NegativeBinomial(assumed.k()));
    }

    PlanAnswer.Compare compare(Ask.Compare ask, double target, ComparisonOutlooks outlooks) {
        ComparisonPlan plan =
                new ComparisonPlan(
                        assumed.counted(ask.density()),
                        ask.efficacy(),
                        assumed.k(),
                        ask.jarsPerGroup(),
                        assumed.growingPoints(),
                        1);
        EfficacyEstimator estimator =
                EfficacyEstimator.standard().withTarget(target).withConfidenceLevel(LEVEL);
        return new PlanAnswer.Compare(
                2 * ask.jarsPerGroup(), outlooks.ask(plan, estimator), target);
    }

    PlanAnswer.Decide decide(Ask.Decide ask, int least) {
        WaldDesign design =
                new WaldDesign(
                        new CountedSamples(assumed.k()),
                        assumed.counted(ask.low()),
                        assumed.counted(ask.high()),
                        ask.risk(),
                        ask.risk(),
                        assumed.growingPoints());
        SequentialPlan plan = new SequentialPlan(design, 1, ask.most());
        List<Double> usual = plan.usualDensities();
        Stream<Double> some =
                IntStream.iterate(0, i -> i < usual.size(), i -> i + SHOWN)
                        .mapToObj(i -> usual.get(i) / assumed.detection().mean());
        List<DecideRow> rows =
                Stream.concat(some, Stream.of(ask.low(), ask.high()))
                        .sorted()
                        .distinct()
                        .map(density -> row(plan, density))
                        .toList();
        return new PlanAnswer.Decide(Math.max(least, ask.most()), plan, rows);
    }

    private DecideRow row(SequentialPlan plan, double density) {
        SequentialOutcome outcome = plan.outcome(assumed.counted(density));
        return new DecideRow(
                density,
                outcome.probabilityBelow(),
                outcome.probabilityAbove(),
                outcome.probabilityUndecided(),
                outcome.averageSampleNumber());
    }
}
