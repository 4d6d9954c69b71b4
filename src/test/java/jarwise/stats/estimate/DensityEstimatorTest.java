package jarwise.stats.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.Samples;
import jarwise.stats.count.Observation;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class DensityEstimatorTest {

    private static final DensityEstimator STANDARD = DensityEstimator.standard();

    @Test
    void oneSampleSetsNoUpperLimitUnlessKIsGiven() {
        List<Observation> one = Samples.list("4/10");

        DensityEstimate open = STANDARD.withActionThreshold(0.2).estimate(one);
        DensityEstimate given = STANDARD.withGivenK(0.5).estimate(one);

        assertThat(open.estimate()).isCloseTo(0.4, within(1e-12));
        assertThat(open.upper()).isEmpty();
        assertThat(open.largestDensityConsidered()).isEmpty();
        assertThat(open.probabilityAboveThreshold()).isEmpty();
        assertThat(open.warnings()).singleElement().asString().contains("One sample");
        assertThat(given.upper()).isPresent();
    }

    @Test
    void oneEmptySampleSetsNoBoundUnlessKIsGiven() {
        List<Observation> one = Samples.list("0/10");

        assertThat(STANDARD.estimate(one).upper()).isEmpty();
        assertThat(STANDARD.estimate(one).warnings()).isNotEmpty();
        assertThat(STANDARD.withGivenK(0.5).estimate(one).upper()).isPresent();
    }

    @ParameterizedTest
    @EnumSource
    void nothingFoundIsZeroWithAOneSidedBoundWhateverTheMethod(IntervalMethod method) {
        DensityEstimate estimate =
                STANDARD.withMethod(method).withGivenK(0.5).estimate(Samples.list("0/10x8"));

        assertThat(estimate.estimate()).isZero();
        assertThat(estimate.lower()).isZero();
        assertThat(estimate.standardError()).isEmpty();
        assertThat(estimate.k()).hasValue(0.5);
        assertThat(estimate.upper().orElseThrow()).isCloseTo(0.0557, within(5e-5));
        assertThat(estimate.logLikelihood()).isZero();
    }

    @Test
    void saysWhenEmptyJarsHardlyLimitWithKUnknown() {
        DensityEstimate few = STANDARD.estimate(Samples.list("0/10x8"));
        DensityEstimate many = STANDARD.estimate(Samples.list("0/10x40"));

        assertThat(few.warnings()).hasSize(2);
        assertThat(few.warnings().get(0)).contains("hardly limit");
        assertThat(few.warnings().get(1)).contains("0.500").contains("0.0557");
        assertThat(many.warnings()).isEmpty();
    }

    @Test
    void warnsWhenHalvingTheLargestDensityMovesTheLimitAndSaysWhatWouldHelp() {
        DensityEstimate few = STANDARD.estimate(Samples.list("2/10 5/10"));
        int more = firstNumber(few.warnings().get(0));

        assertThat(few.warnings()).hasSize(1);
        // the number is found on the likelihood to a power; written out, whole times the samples
        double times = 1 + more / 2.0;
        int enough = (int) Math.ceil(times) + 1;
        assertThat(STANDARD.estimate(times(few, enough)).warnings()).isEmpty();
    }

    private static List<Observation> times(DensityEstimate estimate, int times) {
        assertThat(estimate.sampleSize()).isEqualTo(2);
        return Samples.list("2/10x%d 5/10x%d".formatted(times, times));
    }

    private static int firstNumber(String text) {
        return Integer.parseInt(text.replaceAll("^\\D*(\\d+).*$", "$1"));
    }

    @Test
    void manyJarsNeedNoWarning() {
        String jars = "0/10x5 3/10 1/10x2 12/10 2/10 5/10";

        assertThat(STANDARD.estimate(Samples.list(jars + " " + jars)).warnings()).isEmpty();
    }

    @Test
    void profileSaysWhereThereIsNoUpperLimit() {
        DensityEstimate estimate =
                STANDARD.withMethod(IntervalMethod.PROFILE)
                        .withConfidenceLevel(0.999)
                        .estimate(Samples.list("1/10"));

        assertThat(estimate.upper()).isEmpty();
        assertThat(estimate.warnings()).hasSize(2);
        assertThat(estimate.largestDensityConsidered()).isEmpty();
    }

    @Test
    void anInfiniteKIsPoisson() {
        DensityEstimate estimate =
                STANDARD.withGivenK(Double.POSITIVE_INFINITY).estimate(Samples.list("3/10 9/10"));

        assertThat(estimate.k()).isEmpty();
        assertThat(estimate.standardError().orElseThrow())
                .isCloseTo(0.6 / Math.sqrt(12), within(1e-12));
    }

    @Test
    void aNarrowPriorIsAsGoodAsAGivenK() {
        List<Observation> jars = Samples.list("0/10x4 2/10x3 7/10");
        double given = STANDARD.withGivenK(0.8).estimate(jars).upper().orElseThrow();
        double narrow =
                STANDARD.withPrior(new KPrior(0.8, 0.001)).estimate(jars).upper().orElseThrow();

        assertThat(narrow).isCloseTo(given, within(1e-4 * given));
    }

    @Test
    void countsOfABillionAreNoTrouble() {
        DensityEstimate estimate =
                STANDARD.estimate(List.of(Observation.of(1_000_000_000, 1), Observation.of(7, 1)));

        assertThat(estimate.lower()).isPositive();
        assertThat(estimate.upper().orElseThrow()).isFinite();
    }

    @Test
    void tenThousandEqualCountsAreNoTroubleEither() {
        DensityEstimate estimate =
                STANDARD.estimate(Collections.nCopies(10_000, Observation.of(1000, 1)));

        assertThat(estimate.k()).isEmpty();
        assertThat(estimate.lower()).isBetween(999.0, 1000.0);
        assertThat(estimate.upper().orElseThrow()).isBetween(1000.0, 1001.0);
    }

    @ParameterizedTest(name = "k {0}")
    @ValueSource(doubles = {0, -0.5, Double.NaN})
    void refusesAKThatIsNone(double k) {
        assertThatThrownBy(() -> STANDARD.withGivenK(k)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void refusesOptionsOutOfRange() {
        assertThatThrownBy(() -> STANDARD.withConfidenceLevel(95)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> STANDARD.withActionThreshold(0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> STANDARD.estimate(List.of())).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> DetectionShare.known(60))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("per cent");
        assertThatThrownBy(() -> DetectionShare.measured(24, 18))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("wrong way round");
    }

    @Test
    void warningsAreTheSameInEveryCountry() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.FRANCE);
            assertThat(STANDARD.estimate(Samples.list("0/10x8")).warnings().get(1))
                    .contains("0.0557");
        } finally {
            Locale.setDefault(before);
        }
    }
}
