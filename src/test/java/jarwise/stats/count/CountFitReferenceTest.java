package jarwise.stats.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.Samples;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CountFitReferenceTest {

    private static final double CUT_95 = 3.841458820694124;
    private static final double CUT_90 = 2.705543454095404;

    static List<Row> singleSamples() {
        return ReferenceTable.read("mean-and-k/single-sample.csv");
    }

    static List<Row> published() {
        return ReferenceTable.read("mean-and-k/published.csv");
    }

    static List<Row> commonK() {
        return ReferenceTable.read("mean-and-k/common-k.csv");
    }

    private static CountData data(String samples) {
        return CountData.ofFrequencies(Samples.frequencies(samples));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("singleSamples")
    void fitsMeanAndKAsGeneralStatisticsSoftwareDoes(Row row) {
        CountFit fit = CountFit.of(data(row.text("samples")));

        double k = row.number("k_ml");
        assertThat(fit.density()).isCloseTo(row.number("rate"), withinPercentage(1e-4));
        assertThat(fit.k()).isPresent();
        assertThat(fit.kOrInfinity()).isCloseTo(k, within((k > 100 ? 1e-4 : 1e-6) * k));
        assertThat(fit.logLikelihood()).isCloseTo(row.number("logLik"), within(1e-8));
        assertThat(fit.standardErrorOfLog().orElseThrow())
                .isCloseTo(row.number("se_log_rate_expected"), withinPercentage(1e-4));
        assertThat(
                        CountFit.givenK(data(row.text("samples")), Double.POSITIVE_INFINITY)
                                .logLikelihood())
                .isCloseTo(row.number("logLik_poisson"), within(1e-8));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("singleSamples")
    void profilesTheDensityAsGeneralStatisticsSoftwareDoes(Row row) {
        DensityProfile profile = DensityProfile.of(data(row.text("samples")));

        assertRelative(profile.lower(CUT_95), row.number("lower95"), 1e-5);
        assertRelative(profile.upper(CUT_95).orElseThrow(), row.number("upper95"), 1e-5);
        assertRelative(profile.lower(CUT_90), row.number("lower90"), 1e-5);
        assertRelative(profile.upper(CUT_90).orElseThrow(), row.number("upper90"), 1e-5);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("singleSamples")
    void profilesKAsGeneralStatisticsSoftwareDoes(Row row) {
        CountData data = data(row.text("samples"));

        assertProfileOfK(KProfile.of(data, CUT_95), row, "95");
        assertProfileOfK(KProfile.of(data, CUT_90), row, "90");
    }

    private static void assertProfileOfK(KProfile profile, Row row, String level) {
        assertRelative(profile.lower(), row.number("klower" + level), 1e-5);
        if (Double.isInfinite(row.number("kupper" + level))) {
            assertThat(profile.upper()).isEmpty();
        } else {
            assertRelative(profile.upper().orElseThrow(), row.number("kupper" + level), 1e-5);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    void agreesWithPublishedFits(Row row) {
        CountFit fit = CountFit.of(data(row.text("samples")));

        assertPrinted(fit.density(), row, "density");
        if (row.text("k").equals("Infinity")) {
            assertThat(fit.isPoisson()).isTrue();
        } else if (row.has("k")) {
            assertPrinted(fit.kOrInfinity(), row, "k");
        }
        if (row.has("logLikelihood")) {
            assertPrinted(fit.logLikelihood(), row, "logLikelihood");
        }
        if (row.has("standardError")) {
            assertPrinted(
                    fit.density() * fit.standardErrorOfLog().orElseThrow(), row, "standardError");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("commonK")
    void fitsOneKToGroupsWithTheirOwnMeans(Row row) {
        List<CountData> groups =
                Stream.of(row.text("groups").split("\\|", -1))
                        .map(CountFitReferenceTest::data)
                        .toList();

        CommonKFit fit = CommonKFit.of(groups);

        assertPrinted(fit.k().orElseThrow(), row, "k");
        assertPrinted(fit.logLikelihood(), row, "logLikelihood");
        assertThat(fit.densities()).hasSameSizeAs(groups);
    }

    private static void assertPrinted(double value, Row row, String column) {
        assertThat(value)
                .as(column)
                .isCloseTo(row.number(column), within(row.printedDigits(column)));
    }

    private static void assertRelative(double value, double expected, double tolerance) {
        assertThat(value).isCloseTo(expected, within(tolerance * expected));
    }
}
