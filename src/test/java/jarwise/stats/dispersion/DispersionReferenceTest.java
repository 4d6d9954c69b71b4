package jarwise.stats.dispersion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.Samples;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DispersionReferenceTest {

    static List<Row> indices() {
        return ReferenceTable.read("dispersion/indices.csv");
    }

    static List<Row> published() {
        return ReferenceTable.read("dispersion/published.csv");
    }

    static Stream<Row> reprinted() {
        return published().stream().filter(row -> row.has("printedK"));
    }

    static List<Row> taylor() {
        return ReferenceTable.read("dispersion/taylor.csv");
    }

    static List<Row> ownTaylor() {
        return ReferenceTable.read("dispersion/taylor-own.csv");
    }

    static List<Row> iwao() {
        return ReferenceTable.read("dispersion/iwao.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("indices")
    void indicesAreThoseOfGeneralStatisticsSoftware(Row row) {
        CountDispersion indices = CountDispersion.of(Samples.list(row.text("samples")));

        ChiSquaredTest test = indices.test().orElseThrow();
        assertThat(indices.mean()).isCloseTo(row.number("mean"), withinPercentage(1e-7));
        assertExists(indices.variance(), row, "variance", 1e-7);
        assertExists(indices.kMoments(), row, "kMoments", 1e-7);
        assertExists(indices.kZeroClass(), row, "kZeroClass", 1e-4);
        assertThat(test.statistic()).isCloseTo(row.number("statistic"), withinPercentage(1e-7));
        assertThat((double) test.degreesOfFreedom()).isEqualTo(row.number("degreesOfFreedom"));
        assertThat(test.pValue()).isCloseTo(row.number("pValue"), withinPercentage(1e-6));
    }

    private static void assertExists(
            OptionalDouble value, Row row, String column, double percentage) {
        assertThat(value.isPresent()).as(column).isEqualTo(row.has(column));
        if (value.isPresent()) {
            assertThat(value.getAsDouble())
                    .isCloseTo(row.number(column), withinPercentage(percentage));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    void indicesAreThosePrinted(Row row) {
        CountDispersion indices = CountDispersion.of(Samples.list(row.text("samples")));

        assertPrinted(OptionalDouble.of(indices.mean()), row, "mean");
        assertPrinted(indices.variance(), row, "variance");
        assertPrinted(indices.varianceToMeanRatio(), row, "ratio");
        assertPrinted(indices.kMoments(), row, "kMoments");
        assertPrinted(indices.kZeroClass(), row, "kZeroClass");
        assertPrinted(indices.kMaximumLikelihood(), row, "kMaximumLikelihood");
        assertPrinted(indices.meanCrowding(), row, "meanCrowding");
        assertPrinted(indices.patchiness(), row, "patchiness");
        OptionalDouble morisita = OptionalDouble.of(indices.morisita().orElseThrow().index());
        assertPrinted(morisita, row, "morisita");
    }

    private static void assertPrinted(OptionalDouble value, Row row, String column) {
        if (row.text(column).equals("none")) {
            assertThat(value).as(column).isEmpty();
        } else if (row.has(column)) {
            assertThat(value.orElseThrow())
                    .as(column)
                    .isCloseTo(row.number(column), within(row.printedDigits(column)));
        }
    }

    /** Both numbers stand: the day the printed one reproduces, this says so. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("reprinted")
    void printedValuesThatDoNotReproduceAreNotOurs(Row row) {
        CountDispersion indices = CountDispersion.of(Samples.list(row.text("samples")));

        assertThat(indices.kMaximumLikelihood().orElseThrow())
                .isNotCloseTo(row.number("printedK"), within(row.printedDigits("printedK")))
                .isCloseTo(row.number("printedK"), within(0.04));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("taylor")
    void taylorIsThatOfGeneralStatisticsSoftware(Row row) {
        TaylorRegression law = TaylorRegression.of(groups(row)).orElseThrow();

        assertThat(law.b().estimate()).isCloseTo(row.number("b"), withinPercentage(1e-7));
        assertThat(law.a()).isCloseTo(row.number("a"), withinPercentage(1e-7));
        assertThat(law.log10A().estimate()).isCloseTo(row.number("log10A"), withinPercentage(1e-7));
        assertThat(law.b().standardError())
                .isCloseTo(row.number("standardErrorB"), withinPercentage(1e-7));
        assertThat(law.log10A().standardError())
                .isCloseTo(row.number("standardErrorLog10A"), withinPercentage(1e-7));
        assertThat(law.rSquared().orElseThrow())
                .isCloseTo(row.number("rSquared"), withinPercentage(1e-7));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ownTaylor")
    void taylorOfTheSpraysIsThatOfOurOwnArithmetic(Row row) {
        TaylorRegression law = TaylorRegression.of(groups(row)).orElseThrow();

        assertPrinted(OptionalDouble.of(law.b().estimate()), row, "b");
        assertPrinted(OptionalDouble.of(law.log10A().estimate()), row, "log10A");
        assertPrinted(OptionalDouble.of(law.a()), row, "a");
        assertPrinted(law.rSquared(), row, "rSquared");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("iwao")
    void iwaoIsThatOfOurOwnArithmetic(Row row) {
        IwaoRegression line = IwaoRegression.of(groups(row)).orElseThrow();

        assertThat(line.alpha().estimate()).isCloseTo(row.number("alpha"), withinPercentage(1e-7));
        assertThat(line.beta().estimate()).isCloseTo(row.number("beta"), withinPercentage(1e-7));
        assertThat(line.alpha().standardError())
                .isCloseTo(row.number("standardErrorAlpha"), withinPercentage(1e-7));
        assertThat(line.beta().standardError())
                .isCloseTo(row.number("standardErrorBeta"), withinPercentage(1e-7));
        assertThat(line.rSquared().orElseThrow())
                .isCloseTo(row.number("rSquared"), withinPercentage(1e-7));
    }

    private static List<MeanAndVariance> groups(Row row) {
        double[] means = numbers(row.text("means"));
        double[] variances = numbers(row.text("variances"));
        List<MeanAndVariance> groups = new ArrayList<>();
        for (int i = 0; i < means.length; i++) {
            groups.add(new MeanAndVariance("group " + i, 30, means[i], variances[i]));
        }
        return groups;
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    }
}
