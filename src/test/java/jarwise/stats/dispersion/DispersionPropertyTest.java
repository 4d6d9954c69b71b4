package jarwise.stats.dispersion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import jarwise.Seeds;
import jarwise.base.InvalidInput;
import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.Samples;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DispersionPropertyTest {

    static LongStream seeds() {
        return Seeds.some();
    }

    private static List<Observation> drawn(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double mean = 0.2 + 10 * random.uniform();
        double k = 0.2 + 5 * random.uniform();
        return Samples.drawn(random, 5 + random.below(40), 10, new NegativeBinomial(mean, k));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void morisitasTestIsTheIndexOfDispersion(long seed) {
        List<Observation> samples = drawn(seed);
        CountDispersion indices = CountDispersion.of(samples);
        double n = samples.size();
        double individuals = samples.stream().mapToLong(Observation::individuals).sum();

        indices.morisita()
                .ifPresent(
                        morisita -> {
                            double statistic =
                                    morisita.index() * (individuals - 1) + n - individuals;
                            double dispersion =
                                    (n - 1) * indices.variance().orElseThrow() / indices.mean();
                            assertThat(statistic).isCloseTo(dispersion, within(1e-8));
                            assertThat(morisita.test().statistic())
                                    .isCloseTo(dispersion, within(1e-8));
                        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void orderOfSamplesChangesNoDigit(long seed) {
        List<Observation> samples = drawn(seed);
        List<Observation> shuffled = new ArrayList<>(samples);
        Collections.shuffle(shuffled, new Random(seed));

        assertThat(CountDispersion.of(shuffled)).isEqualTo(CountDispersion.of(samples));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void patchinessIsOneMoreThanOneOverKByMoments(long seed) {
        CountDispersion indices = CountDispersion.of(drawn(seed));

        indices.kMoments()
                .ifPresent(
                        k ->
                                assertThat(indices.patchiness().orElseThrow())
                                        .isCloseTo(1 + 1 / k, within(1e-9)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void zeroClassExpectsTheEmptySamples(long seed) {
        List<Observation> samples = drawn(seed);
        CountDispersion indices = CountDispersion.of(samples);
        long empty = samples.stream().filter(s -> s.individuals() == 0).count();

        indices.kZeroClass()
                .ifPresent(
                        k ->
                                assertThat(samples.size() * Math.pow(1 + indices.mean() / k, -k))
                                        .isCloseTo((double) empty, within(1e-6)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aPowerLawWithoutScatterIsFoundAgain(long seed) {
        SeededRandom random = new SeededRandom(seed);
        double a = 0.5 + 3 * random.uniform();
        double b = 0.8 + random.uniform();
        double alpha = random.uniform() - 0.3;
        double beta = 0.9 + random.uniform();
        List<MeanAndVariance> power = new ArrayList<>();
        List<MeanAndVariance> crowded = new ArrayList<>();
        for (int i = 0; i < 5 + random.below(6); i++) {
            double mean = 0.5 * (i + 1 + random.uniform());
            power.add(new MeanAndVariance("" + i, 20, mean, a * Math.pow(mean, b)));
            double variance = (alpha + 1) * mean + (beta - 1) * mean * mean;
            crowded.add(new MeanAndVariance("" + i, 20, mean, variance));
        }
        Collections.shuffle(power, new Random(seed));

        TaylorRegression taylor = TaylorRegression.of(power).orElseThrow();
        IwaoRegression iwao = IwaoRegression.of(crowded).orElseThrow();
        assertThat(taylor.a()).isCloseTo(a, withinPercentage(1e-7));
        assertThat(taylor.b().estimate()).isCloseTo(b, withinPercentage(1e-7));
        assertThat(iwao.alpha().estimate()).isCloseTo(alpha, within(1e-9));
        assertThat(iwao.beta().estimate()).isCloseTo(beta, within(1e-9));
    }

    @Test
    void underFiveGroupsThereIsNoLine() {
        List<MeanAndVariance> groups = new ArrayList<>();
        for (int i = 1; i <= 4; i++) {
            groups.add(new MeanAndVariance("g" + i, 20, i, 2.0 * i));
        }
        groups.add(new MeanAndVariance("still", 20, 1.5, 0));
        MeanVarianceLines four = MeanVarianceLines.of(groups);
        assertThat(four.taylor()).isEmpty();
        assertThat(four.iwao()).isPresent();
        assertThat(four.warnings())
                .anyMatch(warning -> warning.contains("mean or variance 0: still"))
                .anyMatch(warning -> warning.contains("4 groups can be used, and at least 5"));

        groups.add(new MeanAndVariance("g5", 20, 5, 10));
        assertThat(MeanVarianceLines.of(groups).taylor()).isPresent();
    }

    @Test
    void groupsOfOneMeanHaveNoLine() {
        List<MeanAndVariance> groups =
                Collections.nCopies(6, new MeanAndVariance("same", 20, 1.7, 3));

        assertThat(TaylorRegression.of(groups)).isEmpty();
        assertThat(MeanVarianceLines.of(groups).warnings())
                .anyMatch(warning -> warning.contains("all have the same mean"));
    }

    @Test
    void whatDoesNotExistIsEmpty() {
        CountDispersion one = CountDispersion.of(Samples.list("3"));
        assertThat(one.variance()).isEmpty();
        assertThat(one.test()).isEmpty();
        assertThat(one.morisita()).isEmpty();
        assertThat(one.warnings()).anyMatch(warning -> warning.contains("at least 2"));

        CountDispersion nothing = CountDispersion.of(Samples.list("0x6"));
        assertThat(nothing.variance()).hasValue(0);
        assertThat(nothing.varianceToMeanRatio()).isEmpty();
        assertThat(nothing.kZeroClass()).isEmpty();
        assertThat(nothing.meanCrowding()).isEmpty();
        assertThat(nothing.warnings()).anyMatch(warning -> warning.contains("No find"));

        CountDispersion even = CountDispersion.of(Samples.list("2x6"));
        assertThat(even.kMoments()).isEmpty();
        assertThat(even.kMaximumLikelihood()).isEmpty();
        assertThat(even.test().orElseThrow().pValue()).isEqualTo(1);
    }

    @Test
    void refusesSamplesOfDifferentSize() {
        assertThatThrownBy(() -> CountDispersion.of(Samples.list("3/10 4/12")))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("12.0")
                .hasMessageContaining("Maybe");
        assertThatThrownBy(() -> CountDispersion.of(List.of())).isInstanceOf(InvalidInput.class);
    }
}
