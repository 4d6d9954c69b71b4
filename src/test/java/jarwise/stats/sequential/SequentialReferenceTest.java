package jarwise.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SequentialReferenceTest {

    private static final double PROBABILITY = 1e-9;

    static List<Row> outcomes() {
        return ReferenceTable.read("sequential/outcome.csv");
    }

    static List<Row> stopLines() {
        return ReferenceTable.read("sequential/stop-lines.csv");
    }

    static List<Row> approximations() {
        return ReferenceTable.read("sequential/wald-approximation.csv");
    }

    static List<Row> withoutEnd() {
        return ReferenceTable.read("sequential/without-end.csv");
    }

    @Test
    void allRowsOfTheOutcomesAreThere() {
        assertThat(outcomes()).hasSize(72);
    }

    @ParameterizedTest(name = "{index}: {0}")
    @MethodSource("outcomes")
    void endsAsOftenAndAsSoonAsTwoOtherRecursionsSay(Row row) {
        SequentialPlan plan =
                new SequentialPlan(
                        design(row, "design_k"),
                        (int) row.number("n_min"),
                        (int) row.number("n_max"));
        SampleModel truth = model(row, "true_k");
        SequentialOutcome outcome = plan.outcome(row.number("true_mean"), truth);

        assertLine(plan.lines(), row, 1e-12);
        assertClose(outcome.probabilityBelow(), row.number("p_low"));
        assertClose(outcome.probabilityAbove(), row.number("p_high"));
        assertClose(outcome.probabilityUndecided(), row.number("p_undecided"));
        assertClose(outcome.averageSampleNumber(), row.number("asn"));
        assertClose(outcome.standardDeviation(), row.number("sd_n"));
        assertThat(outcome.sampleNumberQuantile(0.5)).isEqualTo((int) row.number("n_q50"));
        assertThat(outcome.sampleNumberQuantile(0.9)).isEqualTo((int) row.number("n_q90"));
        assertThat(outcome.sampleNumberQuantile(0.95)).isEqualTo((int) row.number("n_q95"));
        WaldApproximation wald = plan.waldApproximation(row.number("true_mean"), truth);
        assertClose(wald.probabilityBelow(), row.number("wald_p_low"));
        assertClose(wald.averageSampleNumber(), row.number("wald_asn"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("stopLines")
    void drawsTheStopLinesOfTheFormulas(Row row) {
        StopLines lines = new SequentialPlan(design(row, "k"), 1, 60).lines();

        assertThat(lines.slope())
                .isCloseTo(row.number("slope"), within(row.printedDigits("slope")));
        assertThat(lines.lowerIntercept())
                .isCloseTo(row.number("h0"), within(row.printedDigits("h0")));
        assertThat(lines.upperIntercept())
                .isCloseTo(row.number("h1"), within(row.printedDigits("h1")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("approximations")
    void approximatesAsWaldDoesByHisParameter(Row row) {
        double k = row.number("k");
        WaldDesign design = counted(row, k);
        double h = row.number("h");
        double mean = h == 0 ? design.slope() : meanAt(h, design, k);
        WaldApproximation wald = WaldApproximation.of(design, design.model(), mean);

        assertThat(mean).isCloseTo(row.number("mean"), within(row.printedDigits("mean")));
        assertThat(wald.probabilityBelow())
                .isCloseTo(row.number("below"), within(row.printedDigits("below")));
        assertThat(wald.averageSampleNumber())
                .isCloseTo(row.number("asn"), within(row.printedDigits("asn")));
    }

    /** The mean for which Wald's parameter is h, from the ratio of the two distributions. */
    private static double meanAt(double h, WaldDesign design, double k) {
        double low = design.lowerDensity();
        double high = design.upperDensity();
        double zeros = (low + k) / (high + k);
        double counts = high * zeros / low;
        return k * (1 - Math.pow(zeros, h)) / (Math.pow(counts, h) - 1);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("withoutEnd")
    void aLargeNumberOfSamplesReachesThePlanWithoutEnd(Row row) {
        SequentialPlan plan = new SequentialPlan(counted(row, row.number("k")), 1, 2000);
        SequentialOutcome outcome = plan.outcome(row.number("mean"));

        assertThat(outcome.probabilityUndecided()).isLessThan(1e-9);
        assertThat(outcome.probabilityBelow())
                .isCloseTo(row.number("below"), within(row.printedDigits("below")));
        assertThat(outcome.averageSampleNumber())
                .isCloseTo(row.number("asn"), within(row.printedDigits("asn")));
    }

    /** What the methods say of the approximation. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("withoutEnd")
    void theExactSampleNumberIsLargerThanWaldsAndTheErrorsAreSmaller(Row row) {
        SequentialPlan plan = new SequentialPlan(counted(row, row.number("k")), 1, 2000);
        double mean = row.number("mean");
        SequentialOutcome exact = plan.outcome(mean);
        WaldApproximation wald = plan.waldApproximation(mean, plan.design().model());

        double larger = exact.averageSampleNumber() / wald.averageSampleNumber();
        assertThat(larger).isBetween(1.145, 1.385);
        if (mean == plan.design().lowerDensity()) {
            assertThat(exact.probabilityAbove()).isLessThan(plan.design().alpha());
        }
        if (mean == plan.design().upperDensity()) {
            assertThat(exact.probabilityBelow()).isLessThan(plan.design().beta());
        }
    }

    private static WaldDesign counted(Row row, double k) {
        return new WaldDesign(
                new CountedSamples(k), row.number("m0"), row.number("m1"), 0.1, 0.1, 1);
    }

    private static WaldDesign design(Row row, String k) {
        return new WaldDesign(
                model(row, k),
                row.number("m0"),
                row.number("m1"),
                row.number("alpha"),
                row.number("beta"),
                1);
    }

    private static SampleModel model(Row row, String k) {
        return switch (row.text("kind")) {
            case "binomial" -> new PresenceAbsence();
            case "poisson" -> CountedSamples.POISSON;
            default -> new CountedSamples(row.number(k));
        };
    }

    private static void assertLine(StopLines lines, Row row, double relative) {
        assertThat(lines.slope() / row.number("slope")).isCloseTo(1, within(relative));
        assertThat(lines.lowerIntercept() / row.number("h0")).isCloseTo(1, within(relative));
        assertThat(lines.upperIntercept() / row.number("h1")).isCloseTo(1, within(relative));
    }

    private static void assertClose(double value, double expected) {
        assertThat(value).isCloseTo(expected, within(PROBABILITY));
    }
}
