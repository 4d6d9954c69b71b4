package jarwise.stats.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AgreementPropertyTest {

    private static List<CountPair> recounts(Random random) {
        List<CountPair> pairs = new ArrayList<>();
        for (int i = 3 + random.nextInt(20); i > 0; i--) {
            pairs.add(new CountPair(random.nextInt(60), random.nextInt(60)));
        }
        return pairs;
    }

    private static List<CountPair> swapped(List<CountPair> pairs) {
        return pairs.stream().map(pair -> new CountPair(pair.second(), pair.first())).toList();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void swappingTheReadersFlipsTheSign(long seed) {
        List<CountPair> pairs = recounts(new Random(seed));
        for (AgreementScale scale : AgreementScale.values()) {
            LimitsOfAgreement there = LimitsOfAgreement.of(pairs, scale, 0.95);
            LimitsOfAgreement back = LimitsOfAgreement.of(swapped(pairs), scale, 0.95);
            assertThat(back.bias()).isCloseTo(-there.bias(), within(1e-12));
            assertThat(back.lowerLimit()).isCloseTo(-there.upperLimit(), within(1e-12));
            assertThat(back.standardDeviation())
                    .isCloseTo(there.standardDeviation(), within(1e-12));
            Concordance first = Concordance.of(pairs, scale, 0.95).orElseThrow();
            Concordance second = Concordance.of(swapped(pairs), scale, 0.95).orElseThrow();
            assertThat(second.estimate()).isCloseTo(first.estimate(), within(1e-12));
            assertThat(second.locationShift()).isCloseTo(-first.locationShift(), within(1e-12));
            assertThat(second.scaleShift()).isCloseTo(1 / first.scaleShift(), within(1e-9));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void concordanceIsNoMoreThanCorrelationAndOrderIsNoMatter(long seed) {
        Random random = new Random(seed);
        List<CountPair> pairs = recounts(random);
        Concordance concordance = Concordance.of(pairs, AgreementScale.SQRT, 0.95).orElseThrow();
        List<CountPair> shuffled = new ArrayList<>(pairs);
        Collections.shuffle(shuffled, random);

        assertThat(Math.abs(concordance.estimate()))
                .isLessThanOrEqualTo(Math.abs(concordance.correlation()) + 1e-12);
        assertThat(concordance.estimate())
                .isCloseTo(concordance.correlation() * concordance.biasCorrection(), within(1e-12));
        assertThat(concordance.lower().orElseThrow()).isLessThanOrEqualTo(concordance.estimate());
        assertThat(concordance.upper().orElseThrow())
                .isGreaterThanOrEqualTo(concordance.estimate());
        assertThat(Concordance.of(shuffled, AgreementScale.SQRT, 0.95).orElseThrow().estimate())
                .isCloseTo(concordance.estimate(), within(1e-12));
    }

    @Test
    void whatAgreesWhollyHasNoLimitsToItsConcordance() {
        List<CountPair> same =
                List.of(new CountPair(3, 3), new CountPair(8, 8), new CountPair(1, 1));

        Concordance concordance = Concordance.of(same, AgreementScale.SQRT, 0.95).orElseThrow();

        assertThat(concordance.estimate()).isCloseTo(1, within(1e-12));
        assertThat(concordance.lower()).isEmpty();
        assertThat(LimitsOfAgreement.of(same, AgreementScale.SQRT, 0.95).upperLimit()).isZero();
        List<CountPair> flat =
                List.of(new CountPair(3, 3), new CountPair(8, 3), new CountPair(1, 3));
        assertThat(Concordance.of(flat, AgreementScale.SQRT, 0.95)).isEmpty();
    }

    @Test
    void onePairIsRefused() {
        List<CountPair> one = List.of(new CountPair(3, 4));

        assertThatThrownBy(() -> LimitsOfAgreement.of(one, AgreementScale.SQRT, 0.95))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Concordance.of(one, AgreementScale.SQRT, 0.95))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new CountPair(-1, 4)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new CountingBand(true, 0, 1)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void readersOfOneFilterWhoMissNothingMayNotDiffer() {
        CountingBand band = new CountingBand(true, 1, 1);

        assertThat(band.upper(100, AgreementScale.SQRT)).isZero();
        assertThat(band.lower(100, AgreementScale.IDENTITY)).isZero();
        assertThat(
                        band.outside(
                                List.of(new CountPair(9, 9), new CountPair(9, 8)),
                                AgreementScale.SQRT))
                .isEqualTo(1);
        CountingBand two = new CountingBand(false, 1, 1);
        // both Poisson: 1.96 times the root of half
        assertThat(two.upper(100, AgreementScale.SQRT)).isCloseTo(1.38593, within(1e-5));
        assertThat(two.upper(100, AgreementScale.IDENTITY))
                .isCloseTo(1.96 * Math.sqrt(200), within(1e-9));
    }

    /** Insects found or missed one by one, and Poisson numbers on two filters. */
    @ParameterizedTest
    @CsvSource({"true,0.9,0.8", "true,0.6,0.6", "false,0.9,0.7", "false,1,1"})
    void bandHolds95OfAHundredSimulatedPairs(boolean same, double first, double second) {
        SeededRandom random = new SeededRandom(7);
        CountingBand band = new CountingBand(same, first, second);
        List<CountPair> pairs = new ArrayList<>();
        for (int i = 0; i < 4000; i++) {
            long there = random.poisson(80);
            long other = same ? there : random.poisson(80);
            pairs.add(new CountPair(seen(random, there, first), seen(random, other, second)));
        }

        for (AgreementScale scale : AgreementScale.values()) {
            assertThat(band.outside(pairs, scale) / 4000.0).isBetween(0.035, 0.06);
        }
    }

    private static long seen(SeededRandom random, long there, double share) {
        long seen = 0;
        for (long i = 0; i < there; i++) {
            seen += random.uniform() < share ? 1 : 0;
        }
        return seen;
    }
}
