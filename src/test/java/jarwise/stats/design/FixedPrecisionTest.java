package jarwise.stats.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FixedPrecisionTest {

    static List<Row> golden() {
        return ReferenceTable.read("precision/fixed-precision.csv");
    }

    static List<Row> taylor() {
        return ReferenceTable.read("precision/taylor-published.csv");
    }

    static List<Row> negativeBinomial() {
        return ReferenceTable.read("precision/negative-binomial-own.csv");
    }

    static List<Row> kuno() {
        return ReferenceTable.read("precision/kuno-own.csv");
    }

    static List<Row> nextWeek() {
        return ReferenceTable.read("precision/jars-next-week.csv");
    }

    private static double exact(FixedPrecision plan) {
        return plan.samplesExact().orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("golden")
    void equalsGeneralStatisticsSoftware(Row row) {
        VarianceLaw law =
                row.text("law").equals("taylor")
                        ? new VarianceLaw.Taylor(row.number("first"), row.number("second"))
                        : new VarianceLaw.NegativeBinomial(row.number("first"));
        FixedPrecision plan =
                new FixedPrecision(row.number("mean"), 1, row.number("precision"), law);
        double samples = row.number("samples_exact");
        double counted = row.number("cumulative_count");

        assertThat(exact(plan)).isCloseTo(samples, within(1e-12 * samples));
        assertThat(plan.sampleSize()).hasValue((long) row.number("samples"));
        assertThat(plan.cumulativeCount().orElseThrow())
                .isCloseTo(counted, within(1e-12 * counted));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("taylor")
    void taylorsLawWithPublishedConstants(Row row) {
        double a = row.number("a");
        double b = row.number("b");
        double precision = row.number("precision");
        FixedPrecision plan =
                new FixedPrecision(row.number("mean"), 1, precision, new VarianceLaw.Taylor(a, b));

        assertThat(exact(plan))
                .isCloseTo(row.number("samples_exact"), within(row.printedDigits("samples_exact")));
        // the point lies on Green's stop line
        double logCount =
                Math.log(precision * precision / a) / (b - 2)
                        + (b - 1) / (b - 2) * Math.log(exact(plan));
        assertThat(Math.log(plan.cumulativeCount().orElseThrow()))
                .isCloseTo(logCount, within(1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("negativeBinomial")
    void negativeBinomialCounts(Row row) {
        FixedPrecision plan =
                new FixedPrecision(
                        row.number("mean"),
                        1,
                        row.number("precision") / row.number("quantile"),
                        new VarianceLaw.NegativeBinomial(row.number("k")));

        assertThat(exact(plan))
                .isCloseTo(row.number("samples_exact"), within(row.printedDigits("samples_exact")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kuno")
    void iwaosLineMeetsKunosStopLine(Row row) {
        double samples = row.number("samples");
        double mean = row.number("cumulative_count") / samples;

        assertThat(exact(new FixedPrecision(mean, 1, 0.25, new VarianceLaw.Iwao(0.5, 1.3))))
                .isCloseTo(samples, within(1e-4 * samples));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nextWeek")
    void tellsHowManyJarsNextWeek(Row row) {
        FixedPrecision plan =
                new FixedPrecision(
                        row.number("mean") / 10,
                        10,
                        row.number("precision"),
                        new VarianceLaw.NegativeBinomial(row.number("k")));

        assertThat(plan.sampleSize()).hasValue((long) row.number("samples"));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void precisionIsReachedAndOneSampleLessWouldNotDo(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double k = Math.exp(random.normal());
        double density = Math.exp(2 * random.normal());
        double wanted = 0.05 + 0.5 * random.uniform();
        FixedPrecision plan =
                new FixedPrecision(density, 5, wanted, new VarianceLaw.NegativeBinomial(k));
        long samples = plan.sampleSize().orElseThrow();
        double mean = 5 * density;
        double variance = mean + mean * mean / k;

        assertThat(Math.sqrt(variance / samples) / mean).isLessThanOrEqualTo(wanted * 1.000001);
        assertThat(samples == 1 || Math.sqrt(variance / (samples - 1)) / mean > wanted).isTrue();
    }

    @Test
    void poissonAndPresenceAreSpecialCases() {
        VarianceLaw poisson = new VarianceLaw.NegativeBinomial(Double.POSITIVE_INFINITY);

        assertThat(exact(new FixedPrecision(2, 1, 0.25, poisson))).isEqualTo(8);
        assertThat(exact(new FixedPrecision(2, 1, 0.25, new VarianceLaw.Taylor(1, 1))))
                .isEqualTo(8);
        assertThat(exact(new FixedPrecision(2, 1, 0.25, new VarianceLaw.Iwao(0, 1)))).isEqualTo(8);
        assertThat(exact(new FixedPrecision(0.2, 1, 0.25, new VarianceLaw.Presence())))
                .isCloseTo(64, within(1e-12));
    }

    @Test
    void refusesWhatCannotBeAndNeverOverflows() {
        VarianceLaw clumped = new VarianceLaw.NegativeBinomial(0.5);

        assertThat(new FixedPrecision(1e-12, 1, 1e-6, clumped).sampleSize()).isEmpty();
        assertThat(new FixedPrecision(1e-12, 1, 1e-6, clumped).cumulativeCount()).isEmpty();
        assertThat(new FixedPrecision(1e12, 1, 1e6, clumped).sampleSize()).hasValue(1);
        assertThatThrownBy(() -> new FixedPrecision(0, 1, 0.25, clumped))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FixedPrecision(1, 1, Double.NaN, clumped))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FixedPrecision(9, 1, 0.25, new VarianceLaw.Iwao(0.5, 0.1)))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("variance of 0 or below");
        assertThatThrownBy(() -> new VarianceLaw.Taylor(-1, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new VarianceLaw.Iwao(-2, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FixedPrecision(1, 1, 0.25, new VarianceLaw.Presence()))
                .isInstanceOf(InvalidInput.class);
    }

    /** n samples of u units at density d are n·u·d individuals. */
    @Test
    void whatIsToBeCountedIsThatOfAllUnits() {
        VarianceLaw law = new VarianceLaw.NegativeBinomial(0.8);
        FixedPrecision jars = new FixedPrecision(0.3, 10, 0.25, law);
        FixedPrecision same = new FixedPrecision(3, 1, 0.25, law);

        assertThat(jars.cumulativeCount().orElseThrow())
                .isCloseTo(exact(jars) * 10 * 0.3, within(1e-9))
                .isCloseTo(same.cumulativeCount().orElseThrow(), within(1e-9));
    }
}
