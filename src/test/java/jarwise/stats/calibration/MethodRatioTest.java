package jarwise.stats.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MethodRatioTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    private static PairedCount sample(String pair, boolean first, long individuals, double units) {
        return new PairedCount(pair, first, Observation.of(individuals, units));
    }

    private static List<PairedCount> drawn(long seed) {
        SeededRandom random = new SeededRandom(seed);
        List<PairedCount> samples = new ArrayList<>();
        for (int pair = 0; pair < 5; pair++) {
            double density = 0.2 + random.uniform();
            for (int i = 0; i < 6; i++) {
                long jar = random.count(new NegativeBinomial(10 * density, 1.5));
                long tap = random.count(new NegativeBinomial(3 * 0.5 * density, 1.5));
                samples.add(sample("bench " + pair, false, jar, 10));
                samples.add(sample("bench " + pair, true, tap, 3));
            }
        }
        return samples;
    }

    private static List<PairedCount> swapped(List<PairedCount> samples) {
        return samples.stream()
                .map(s -> new PairedCount(s.pair(), !s.first(), s.observation()))
                .toList();
    }

    static List<Row> own() {
        return ReferenceTable.read("calibration/own.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("own")
    void ratioIsThatOfOurOwnArithmetic(Row row) {
        List<PairedCount> samples = new ArrayList<>();
        for (String word : row.text("samples").split(" ", -1)) {
            String[] parts = word.split("/", -1);
            double units = Double.parseDouble(parts[2]);
            samples.add(sample(parts[0], parts[1].equals("t"), Long.parseLong(parts[3]), units));
        }
        MethodRatio ratio = MethodRatio.of(samples, 0.95);

        assertThat(ratio.ratio().orElseThrow()).isCloseTo(row.number("ratio"), within(1e-6));
        assertThat(ratio.lower().orElseThrow()).isCloseTo(row.number("lower"), within(1e-5));
        assertThat(ratio.upper().orElseThrow()).isCloseTo(row.number("upper"), within(1e-5));
        assertThat(ratio.k().orElseThrow()).isCloseTo(row.number("k"), within(1e-2));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void swappingTheMethodsInvertsTheRatio(long seed) {
        MethodRatio ratio = MethodRatio.of(drawn(seed), 0.95);
        MethodRatio inverse = MethodRatio.of(swapped(drawn(seed)), 0.95);

        assertInverse(inverse.ratio(), ratio.ratio());
        assertInverse(inverse.lower(), ratio.upper());
        assertInverse(inverse.upper(), ratio.lower());
        assertThat(inverse.k().orElse(0)).isCloseTo(ratio.k().orElse(0), within(1e-4));
    }

    private static void assertInverse(OptionalDouble one, OptionalDouble other) {
        assertThat(one.orElseThrow() * other.orElseThrow()).isCloseTo(1, within(1e-5));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void orderDoesNotMatterAndUnitsScale(long seed) {
        List<PairedCount> other = new ArrayList<>();
        for (PairedCount s : drawn(seed)) {
            Observation o = s.observation();
            double units = o.samplingUnits() * (s.first() ? 4 : 1);
            other.add(sample(s.pair(), s.first(), o.individuals(), units));
        }
        Collections.shuffle(other, new Random(seed));

        assertThat(4 * MethodRatio.of(other, 0.95).ratio().orElseThrow())
                .isCloseTo(MethodRatio.of(drawn(seed), 0.95).ratio().orElseThrow(), within(1e-6));
    }

    @Test
    void countsThatScatterByChanceOnlyGiveTheRatioOfTheirSums() {
        // Poisson counts of the same units: sum of the firsts over sum of the seconds, by hand
        List<PairedCount> samples =
                List.of(
                        sample("A", true, 2, 1),
                        sample("A", false, 4, 1),
                        sample("B", true, 3, 1),
                        sample("B", false, 7, 1),
                        sample("C", true, 5, 1),
                        sample("C", false, 9, 1));
        MethodRatio ratio = MethodRatio.of(samples, 0.95);

        assertThat(ratio.k()).isEmpty();
        assertThat(ratio.ratio().orElseThrow()).isCloseTo(0.5, within(1e-7));
        assertThat(ratio.pairs()).isEqualTo(3);
        // by hand: at a density of 5 a tap of 2 units finds 5, a jar of 4 finds 20; 8 x (1/5) /
        // (1/20)
        assertThat(ratio.equivalentSamples(8, 5, 2, 4).orElseThrow()).isCloseTo(32, within(1e-6));
    }

    @Test
    void pairsThatSayNothingAreLeftOut() {
        List<PairedCount> samples = new ArrayList<>(drawn(1));
        MethodRatio before = MethodRatio.of(samples, 0.95);
        samples.add(sample("lonely", true, 9, 3));
        samples.add(sample("empty", true, 0, 3));
        samples.add(sample("empty", false, 0, 10));

        assertThat(MethodRatio.of(samples, 0.95)).isEqualTo(before);
    }

    @Test
    void aMethodThatFindsNothingHasRatioZeroAndAnUpperLimit() {
        List<PairedCount> samples =
                List.of(
                        sample("A", true, 0, 5),
                        sample("A", false, 4, 5),
                        sample("B", true, 0, 5),
                        sample("B", false, 6, 5));
        MethodRatio none = MethodRatio.of(samples, 0.95);

        assertThat(none.ratio()).hasValue(0);
        assertThat(none.lower()).hasValue(0);
        assertThat(none.upper().orElseThrow()).isBetween(0.0, 1.0);
        assertThat(none.equivalentSamples(8, 1, 5, 5)).isEmpty();
        MethodRatio other = MethodRatio.of(swapped(samples), 0.95);
        assertThat(other.ratio()).isEmpty();
        assertThat(other.upper()).isEmpty();
        assertThat(other.lower().orElseThrow()).isGreaterThan(1);
    }

    @Test
    void refusesWhatSaysNothing() {
        assertThatThrownBy(() -> MethodRatio.of(List.of(sample("A", true, 3, 1)), 0.95))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("at least 1");
        assertThatThrownBy(() -> MethodRatio.of(drawn(1), 1.5)).isInstanceOf(InvalidInput.class);
    }
}
