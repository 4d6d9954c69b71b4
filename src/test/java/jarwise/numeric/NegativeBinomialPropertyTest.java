package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class NegativeBinomialPropertyTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static NegativeBinomial drawn(SeededRandom random) {
        double mean = Math.exp(-4 + 9 * random.uniform());
        double k = Math.exp(-3 + 8 * random.uniform());
        return new NegativeBinomial(mean, k);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void probabilitiesSumToOne(long seed) {
        NegativeBinomial distribution = drawn(new SeededRandom(seed));

        double sum = 0;
        double moment = 0;
        long end = distribution.quantile(1 - 1e-12);
        for (long y = 0; y <= end; y++) {
            double p = distribution.probability(y);
            sum += p;
            moment += y * p;
        }

        assertThat(sum).isCloseTo(1, within(2e-11));
        assertThat(moment).isCloseTo(distribution.mean(), within(1e-7 * distribution.mean()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void quantileInvertsTheCumulativeProbability(long seed) {
        SeededRandom random = new SeededRandom(seed);
        NegativeBinomial distribution = drawn(random);

        for (int i = 0; i < 20; i++) {
            double p = random.uniform();
            long y = distribution.quantile(p);
            assertThat(distribution.cumulativeProbability(y)).isGreaterThanOrEqualTo(p - 1e-12);
            if (y > 0) {
                assertThat(distribution.cumulativeProbability(y - 1)).isLessThan(p);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void bothTailsAddUpToOne(long seed) {
        SeededRandom random = new SeededRandom(seed);
        NegativeBinomial distribution = drawn(random);
        long y = distribution.quantile(random.uniform());

        assertThat(distribution.cumulativeProbability(y) + distribution.exceedanceProbability(y))
                .isCloseTo(1, within(1e-13));
    }

    @ParameterizedTest(name = "mean {0}")
    @ValueSource(doubles = {0.001, 0.3, 2, 40, 900, 10_000})
    void becomesPoissonAsKGrows(double mean) {
        NegativeBinomial poisson = new NegativeBinomial(mean, Double.POSITIVE_INFINITY);
        NegativeBinomial nearly = new NegativeBinomial(mean, 1e14);

        for (long y : new long[] {0, 1, Math.round(mean), Math.round(mean * 1.05) + 2}) {
            assertThat(nearly.logProbability(y)).isCloseTo(poisson.logProbability(y), within(1e-6));
            assertThat(nearly.cumulativeProbability(y))
                    .isCloseTo(poisson.cumulativeProbability(y), within(1e-6));
        }
    }

    @Test
    void countsNothingWhereTheMeanIsZero() {
        NegativeBinomial nothing = new NegativeBinomial(0, 0.5);

        assertThat(nothing.probability(0)).isEqualTo(1);
        assertThat(nothing.probability(3)).isZero();
        assertThat(nothing.quantile(0.99)).isZero();
    }

    @ParameterizedTest(name = "k {0}")
    @ValueSource(doubles = {0, -1, Double.NaN})
    void refusesAKThatIsNone(double k) {
        assertThatThrownBy(() -> new NegativeBinomial(1, k))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("k is");
    }

    @Test
    void drawsCountsWithTheirMeanAndVariance() {
        SeededRandom random = new SeededRandom(20240517);
        NegativeBinomial distribution = new NegativeBinomial(3, 0.8);
        int draws = 200_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < draws; i++) {
            double y = random.count(distribution);
            sum += y;
            squares += y * y;
        }
        double mean = sum / draws;

        // standard error of the mean 0.0085, of the variance about 0.13
        assertThat(mean).isCloseTo(3, within(0.035));
        assertThat(squares / draws - mean * mean).isCloseTo(14.25, within(0.55));
    }

    @Test
    void drawsTheSameCountsFromTheSameSeed() {
        NegativeBinomial distribution = new NegativeBinomial(3, 0.8);
        SeededRandom one = new SeededRandom(7);
        SeededRandom two = new SeededRandom(7);
        SeededRandom other = new SeededRandom(8);

        long[] first = LongStream.range(0, 50).map(i -> one.count(distribution)).toArray();

        assertThat(LongStream.range(0, 50).map(i -> two.count(distribution)).toArray())
                .isEqualTo(first);
        assertThat(LongStream.range(0, 50).map(i -> other.count(distribution)).toArray())
                .isNotEqualTo(first);
    }

    /** R 4.2.2: qnbinom(p, size = 0.8, mu = 3, lower.tail = FALSE). */
    @Test
    void theUpperQuantileIsThatOfGeneralStatisticsSoftware() {
        NegativeBinomial counts = new NegativeBinomial(3, 0.8);
        double[] above = {0.9, 0.5, 0.1, 0.01, 1e-6, 1e-15, 1e-40};
        long[] expected = {0, 2, 8, 17, 55, 142, 385};

        for (int i = 0; i < above.length; i++) {
            assertThat(counts.quantileAbove(above[i])).as("%s", above[i]).isEqualTo(expected[i]);
        }
    }

    @Test
    void theUpperQuantileIsTheLeastCountThatIsRarelyExceeded() {
        for (double k : new double[] {0.3, 2, Double.POSITIVE_INFINITY}) {
            NegativeBinomial counts = new NegativeBinomial(4, k);
            for (double above : new double[] {1e-30, 1e-12, 0.01, 0.3}) {
                long y = counts.quantileAbove(above);
                assertThat(counts.exceedanceProbability(y)).isLessThanOrEqualTo(above);
                assertThat(counts.exceedanceProbability(y - 1)).isGreaterThan(above);
            }
            assertThat(counts.quantileAbove(1)).isZero();
        }
    }
}
