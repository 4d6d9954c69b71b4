package jarwise.stats.removal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RemovalReferenceTest {

    private static final double LEVEL = 0.95;

    static List<Row> maximumLikelihood() {
        return ReferenceTable.read("removal/maximum-likelihood.csv");
    }

    static List<Row> zippin() {
        return ReferenceTable.read("removal/zippin.csv");
    }

    static List<Row> carleStrub() {
        return ReferenceTable.read("removal/carle-strub.csv");
    }

    static List<Row> twoPass() {
        return ReferenceTable.read("removal/two-pass.csv");
    }

    static List<Row> brookTrout() {
        return ReferenceTable.read("removal/brook-trout.csv");
    }

    static List<Row> firstWash() {
        return ReferenceTable.read("removal/first-wash.csv");
    }

    static List<Row> electrofishing() {
        return ReferenceTable.read("removal/electrofishing-precision.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("maximumLikelihood")
    void maximumAndProfileLimitsEqualAnIndependentProgram(Row row) {
        RemovalCatches catches = catches(row);

        RemovalEstimate estimate = RemovalMethod.ML.estimate(catches, LEVEL);

        assertThat(estimate.finite()).isEqualTo(row.has("n"));
        assertOptional(estimate.estimate(), row, "n", 1e-6);
        assertOptional(estimate.removalProbability(), row, "p", 1e-6);
        assertOptional(estimate.upper(), row, "upper95", 1e-5);
        if (row.has("n")) {
            assertThat(estimate.lower()).isCloseTo(row.number("lower95"), within(1e-5));
            ConstantShare likelihood = ConstantShare.of(catches);
            assertThat(likelihood.at(row.number("n")))
                    .isCloseTo(row.number("log_likelihood_without_constants"), within(1e-8));
            assertIntegerMaximum(likelihood, row.number("integer_n"));
        } else {
            assertThat(estimate.lower()).isEqualTo((double) catches.total());
        }
    }

    private static void assertIntegerMaximum(ConstantShare likelihood, double total) {
        assertThat(likelihood.at(total)).isGreaterThan(likelihood.at(total + 1));
        if (total > likelihood.least()) {
            assertThat(likelihood.at(total)).isGreaterThan(likelihood.at(total - 1));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("zippin")
    void largeSampleFormEqualsAnIndependentProgram(Row row) {
        RemovalCatches catches = catches(row);
        RemovalEstimate estimate = RemovalMethod.ZIPPIN.estimate(catches, LEVEL);
        if (!row.has("n")) {
            boolean allInTheFirst = catches.first() == catches.total();
            assertThat(estimate.finite()).isEqualTo(allInTheFirst);
            return;
        }
        assertOptional(estimate.estimate(), row, "n", 1e-6);
        assertOptional(estimate.removalProbability(), row, "p", 1e-6);
        assertOptional(estimate.standardError(), row, "se_n", 1e-6);
        double total = estimate.estimate().orElseThrow();
        double share = estimate.removalProbability().orElseThrow();
        assertThat(RemovalPrecision.standardErrorOfShare(total, share, catches.washes()))
                .isCloseTo(row.number("se_p"), within(1e-6 * row.number("se_p")));
        assertThat(estimate.fit().isPresent()).isEqualTo(catches.washes() > 2);
        estimate.fit()
                .ifPresent(
                        fit -> {
                            assertThat(fit.statistic()).isCloseTo(row.number("chi2"), within(1e-6));
                            assertThat((double) fit.degreesOfFreedom()).isEqualTo(row.number("df"));
                            assertThat(fit.pValue()).isCloseTo(row.number("p_value"), within(1e-6));
                        });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("carleStrub")
    void carleAndStrubEqualsAnIndependentProgram(Row row) {
        RemovalEstimate estimate = RemovalMethod.CARLE_STRUB.estimate(catches(row), LEVEL);

        assertThat(estimate.estimate()).hasValue(row.number("n"));
        assertOptional(estimate.removalProbability(), row, "p", 1e-6);
        assertThat(estimate.standardError().orElseThrow())
                .isCloseTo(row.number("se_n"), within(1e-6 * row.number("se_n")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("twoPass")
    void twoPassFormulaEqualsAnIndependentProgram(Row row) {
        RemovalEstimate estimate = RemovalMethod.TWO_PASS.estimate(catches(row), LEVEL);

        assertThat(estimate.finite()).isEqualTo(row.has("n"));
        assertOptional(estimate.estimate(), row, "n", 1e-6);
        assertOptional(estimate.removalProbability(), row, "p", 1e-6);
        assertOptional(estimate.standardError(), row, "se_n", 1e-6);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("brookTrout")
    void limitsOfSixteenBrookTroutSamplesAreThosePublished(Row row) {
        RemovalCatches catches = catches(row);
        RemovalEstimate estimate = RemovalMethod.ML.estimate(catches, LEVEL);

        assertPrinted(estimate.estimate().orElseThrow(), row, "n");
        assertPrinted(estimate.removalProbability().orElseThrow(), row, "p");
        assertThat(estimate.lower()).isCloseTo(row.number("lower95"), within(0.06));
        assertThat(estimate.upper().orElseThrow()).isCloseTo(row.number("upper95"), within(0.06));
        double height = FirstWashTest.of(catches, LEVEL).logLikelihoodOfOneShare();
        assertPrinted(entropyForm(height, catches), row, "neg_log_likelihood");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("firstWash")
    void aFirstCatchOfItsOwnIsTestedAsPublished(Row row) {
        RemovalCatches catches = catches(row);

        FirstWashTest test = FirstWashTest.of(catches, LEVEL);

        assertPrinted(test.estimate().orElseThrow(), row, "n");
        assertThat(test.lower()).isCloseTo(row.number("lower95"), within(0.06));
        assertThat(test.upper()).isEmpty();
        assertPrinted(test.firstRemovalProbability().orElseThrow(), row, "first_p");
        assertPrinted(test.removalProbability().orElseThrow(), row, "p");
        assertPrinted(entropyForm(test.logLikelihood(), catches), row, "neg_log_likelihood");
        assertPrinted(test.statistic(), row, "chi2");
        assertThat(test.pValue()).isBetween(0.02, 0.05);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("electrofishing")
    void precisionIsThatOfThePublishedTable(Row row) {
        double total = row.number("total");
        double error =
                RemovalPrecision.standardError(total, row.number("p"), (int) row.number("passes"));

        String column = row.has("computed") ? "computed" : "cv";
        assertPrinted(100 * error / total, row, column);
    }

    /** Minus the log-likelihood against one that fits every catch, given their total. */
    private static double entropyForm(double logLikelihood, RemovalCatches catches) {
        double total = catches.total();
        double constant = Gamma.logGamma(total + 1) - total * Math.log(total);
        for (long caught : catches.catches()) {
            constant += caught == 0 ? 0 : caught * Math.log((double) caught);
            constant -= Gamma.logGamma(caught + 1.0);
        }
        return constant - logLikelihood;
    }

    static RemovalCatches catches(Row row) {
        return RemovalCatches.of(
                java.util.Arrays.stream(row.text("catches").split(" "))
                        .flatMapToLong(text -> LongStream.of(Long.parseLong(text)))
                        .toArray());
    }

    private static void assertOptional(
            OptionalDouble value, Row row, String column, double tolerance) {
        assertThat(value.isPresent()).as(column).isEqualTo(row.has(column));
        if (row.has(column)) {
            double expected = row.number(column);
            assertThat(value.orElseThrow())
                    .as(column)
                    .isCloseTo(expected, within(tolerance * Math.max(1, expected)));
        }
    }

    /** Half a unit of the last digit, and a rounding error where it is exactly that. */
    static void assertPrinted(double value, Row row, String column) {
        assertThat(value)
                .as(column)
                .isCloseTo(row.number(column), within(0.5001 * row.printedDigits(column)));
    }
}
