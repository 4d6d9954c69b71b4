package jarwise.stats.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AgreementReferenceTest {

    static List<Row> publishedLimits() {
        return ReferenceTable.read("agreement/published-limits.csv");
    }

    static List<Row> concordances() {
        return ReferenceTable.read("agreement/concordance.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("publishedLimits")
    void limitsOfPeakFlowAreThosePublished(Row row) {
        double value = value(row);

        assertThat(value)
                .isCloseTo(row.number("computed"), within(0.6 * row.printedDigits("computed")));
        boolean printed =
                Math.abs(value - row.number("published")) <= 0.51 * row.printedDigits("published");
        assertThat(printed).isEqualTo(row.text("reproduces").equals("yes"));
    }

    static List<Row> repeats() {
        return ReferenceTable.read("agreement/repeat-differences.csv");
    }

    /** About 0, as repeats of one meter have no bias, and divisor n. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("repeats")
    void repeatsOfOneMeterDifferByTheirRootMeanSquare(Row row) {
        LimitsOfAgreement limits =
                LimitsOfAgreement.of(
                        PeakFlow.pairs(row.text("first"), row.text("second")),
                        AgreementScale.IDENTITY,
                        0.95);
        double n = limits.sampleSize();
        double variance = limits.standardDeviation() * limits.standardDeviation() * (n - 1) / n;

        assertThat(Math.sqrt(variance + limits.bias() * limits.bias()))
                .isCloseTo(row.number("root_mean_square"), within(0.00005));
    }

    /** Variances with divisor n − 1 and the same means: what the other usage prints. */
    @Test
    void theOtherDivisorGivesTheOtherNumber() {
        List<CountPair> pairs = PeakFlow.pairs("wright1", "mini1");
        Concordance byN = Concordance.of(pairs, AgreementScale.IDENTITY, 0.95).orElseThrow();
        double n = pairs.size();
        double ratio = byN.scaleShift() + 1 / byN.scaleShift();
        double shift = byN.locationShift() * byN.locationShift() * (n - 1) / n;

        assertThat(2 * byN.correlation() / (ratio + shift)).isCloseTo(0.9427525, within(1e-7));
        assertThat(byN.estimate()).isCloseTo(0.9427424, within(1e-7));
    }

    private static double value(Row row) {
        List<CountPair> pairs = PeakFlow.pairs("wright1", "mini1");
        LimitsOfAgreement limits = LimitsOfAgreement.of(pairs, AgreementScale.IDENTITY, 0.95);
        boolean double1986 = row.text("multiple").equals("2");
        double shift = double1986 ? (2 - 1.96) * limits.standardDeviation() : 0;
        return switch (row.text("quantity")) {
            case "bias" -> limits.bias();
            case "standardDeviation" -> limits.standardDeviation();
            case "lowerLimit" -> limits.lowerLimit() - shift;
            case "upperLimit" -> limits.upperLimit() + shift;
            case "biasLower" -> limits.bias() - limits.biasReach();
            case "biasUpper" -> limits.bias() + limits.biasReach();
            case "lowerLimitLower" -> limits.lowerLimit() - shift - limits.limitReach();
            case "lowerLimitUpper" -> limits.lowerLimit() - shift + limits.limitReach();
            case "correlation" ->
                    Concordance.of(pairs, AgreementScale.IDENTITY, 0.95)
                            .orElseThrow()
                            .correlation();
            default -> throw new IllegalArgumentException(row.text("quantity"));
        };
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("concordances")
    void concordanceHasTheDivisorN(Row row) {
        Concordance concordance =
                Concordance.of(
                                PeakFlow.pairs(row.text("first"), row.text("second")),
                                AgreementScale.IDENTITY,
                                0.95)
                        .orElseThrow();

        assertClose(concordance.estimate(), row, "estimate");
        assertClose(concordance.lower(), row, "lower95");
        assertClose(concordance.upper(), row, "upper95");
        assertClose(concordance.correlation(), row, "correlation");
        assertClose(concordance.biasCorrection(), row, "bias_correction");
        assertClose(concordance.locationShift(), row, "location_shift");
        assertClose(concordance.scaleShift(), row, "scale_shift");
    }

    private static void assertClose(OptionalDouble value, Row row, String column) {
        assertClose(value.orElseThrow(), row, column);
    }

    private static void assertClose(double value, Row row, String column) {
        assertThat(value).as(column).isCloseTo(row.number(column), within(1e-6));
    }
}
