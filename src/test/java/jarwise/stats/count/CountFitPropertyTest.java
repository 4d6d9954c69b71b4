package jarwise.stats.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CountFitPropertyTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    private static List<Observation> drawn(long seed) {
        SeededRandom random = new SeededRandom(seed);
        int jars = 2 + random.below(20);
        double density = Math.exp(-3 + 5 * random.uniform());
        double k = Math.exp(-2 + 4 * random.uniform());
        boolean equal = random.uniform() < 0.4;
        List<Observation> jarList = new ArrayList<>();
        for (int i = 0; i < jars; i++) {
            double units = equal ? 10 : 5 + random.below(10);
            double share = equal ? 1 : 0.25 + 0.75 * random.uniform();
            long count = random.count(new NegativeBinomial(density * units * share, k));
            jarList.add(new Observation(count, units, share));
        }
        jarList.set(0, new Observation(1 + jarList.get(0).individuals(), 10, 1));
        return jarList;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void likelihoodIsTheSumOfLogProbabilities(long seed) {
        List<Observation> jars = drawn(seed);
        CountLikelihood likelihood = new CountLikelihood(CountData.of(jars));

        for (double k : new double[] {0.1, 2, 300, Double.POSITIVE_INFINITY}) {
            double sum = 0;
            for (Observation jar : jars) {
                sum +=
                        new NegativeBinomial(0.4 * jar.exposure(), k)
                                .logProbability(jar.individuals());
            }
            assertThat(likelihood.at(Math.log(0.4), k)).isCloseTo(sum, within(1e-10 * (1 - sum)));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void slopesAreFiniteDifferences(long seed) {
        CountLikelihood likelihood = new CountLikelihood(CountData.of(drawn(seed)));
        double t = -0.7;
        double x = 0.3;
        double h = 1e-5;

        double inK =
                (likelihood.at(t, Math.exp(x + h)) - likelihood.at(t, Math.exp(x - h))) / (2 * h);
        double inDensity =
                (likelihood.at(t + h, Math.exp(x)) - likelihood.at(t - h, Math.exp(x))) / (2 * h);
        double flat = 1e-7;
        double atPoisson =
                (likelihood.at(t, 1 / flat) - likelihood.at(t, Double.POSITIVE_INFINITY)) / flat;

        assertThat(likelihood.slopeInLogK(t, Math.exp(x))).isCloseTo(inK, within(1e-5));
        assertThat(likelihood.slopeInLogDensity(t, Math.exp(x))).isCloseTo(inDensity, within(1e-4));
        double slope = likelihood.slopeAtPoisson(t);
        assertThat(slope).isCloseTo(atPoisson, within(1e-2 * (1 + Math.abs(slope))));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void findsTheTrueMaximum(long seed) {
        CountLikelihood likelihood = new CountLikelihood(CountData.of(drawn(seed)));
        CountFit fit = CountFit.of(likelihood.data());
        double top = Math.log(fit.density());

        assertThat(likelihood.slopeInLogDensity(top, fit.kOrInfinity())).isCloseTo(0, within(1e-7));
        if (!fit.isPoisson()) {
            assertThat(likelihood.slopeInLogK(top, fit.kOrInfinity())).isCloseTo(0, within(1e-7));
        }
        for (double x = -8; x < 12; x += 0.37) {
            for (double t = top - 4; t < top + 4; t += 0.21) {
                assertThat(likelihood.at(t, Math.exp(x)))
                        .isLessThanOrEqualTo(fit.logLikelihood() + 1e-9);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void orderAndWritingEqualSamplesTogetherChangeNoDigit(long seed) {
        List<Observation> jars = drawn(seed);
        jars.addAll(List.copyOf(jars));
        List<Observation> shuffled = new ArrayList<>(jars);
        Collections.shuffle(shuffled, new Random(seed));
        Map<Observation, Long> together = new HashMap<>();
        jars.forEach(jar -> together.merge(jar, 1L, Long::sum));

        CountFit fit = CountFit.of(CountData.of(jars));

        assertThat(CountFit.of(CountData.of(shuffled))).isEqualTo(fit);
        assertThat(CountFit.of(CountData.ofFrequencies(together))).isEqualTo(fit);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void asManySamplesAgainAreTheSamplesTwice(long seed) {
        List<Observation> jars = drawn(seed);
        List<Observation> twice = new ArrayList<>(jars);
        twice.addAll(jars);

        CountFit repeated = CountFit.of(CountData.of(jars).repeated(2));
        CountFit written = CountFit.of(CountData.of(twice));

        assertThat(repeated.logLikelihood()).isCloseTo(written.logLikelihood(), within(1e-8));
        assertThat(repeated.density()).isCloseTo(written.density(), within(1e-9));
    }

    @Test
    void isPoissonWhereCountsScatterNoMoreThanPoissonCountsDo() {
        List<Observation> even = List.of(Observation.of(3, 1), Observation.of(4, 1));

        CountFit fit = CountFit.of(CountData.of(even));

        assertThat(fit.isPoisson()).isTrue();
        assertThat(fit.density()).isEqualTo(3.5);
        assertThat(fit.standardErrorOfLog().orElseThrow())
                .isCloseTo(1 / Math.sqrt(7), within(1e-12));
    }

    @Test
    void limitsOfKReachPoissonWhereItIsNotContradicted() {
        List<Observation> jars = List.of(Observation.of(3, 1), Observation.of(9, 1));

        assertThat(KProfile.of(CountData.of(jars), 3.841459).upper()).isEmpty();
    }

    @Test
    void groupsWithoutAFindDoNoHarmToACommonK() {
        CountData clumped = CountData.of(List.of(Observation.of(0, 1), Observation.of(9, 1)));
        CountData empty = CountData.of(List.of(Observation.of(0, 1), Observation.of(0, 1)));

        CommonKFit alone = CommonKFit.of(List.of(clumped));
        CommonKFit together = CommonKFit.of(List.of(clumped, empty));

        assertThat(together.k()).isEqualTo(alone.k());
        assertThat(together.densities().get(1)).isZero();
    }

    @Test
    void refusesWhatIsNoSample() {
        assertThatThrownBy(() -> CountData.of(List.of())).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Observation(-1, 1, 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("individuals is -1");
        assertThatThrownBy(() -> new Observation(1, Double.NaN, 1))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Observation(1, 1, 60))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("per cent");
    }
}
