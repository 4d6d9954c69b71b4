package jarwise.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Every kind of deviate has the mean and the variance it says, within five standard errors. */
class SeededRandomTest {

    private static final int DRAWS = 20_000;

    private static void moments(ToDoubleFunction<SeededRandom> draw, double mean, double variance) {
        SeededRandom random = new SeededRandom(7);
        double[] drawn = draws(() -> draw.applyAsDouble(random));
        double average = Arrays.stream(drawn).average().orElseThrow();
        double spread =
                Arrays.stream(drawn).map(x -> (x - average) * (x - average)).sum() / (DRAWS - 1);

        assertThat(average).isCloseTo(mean, within(5 * Math.sqrt(variance / DRAWS)));
        assertThat(spread).isCloseTo(variance, within(0.15 * variance));
    }

    private static double[] draws(DoubleSupplier draw) {
        double[] drawn = new double[DRAWS];
        Arrays.setAll(drawn, i -> draw.getAsDouble());
        return drawn;
    }

    @Test
    void uniform() {
        moments(SeededRandom::uniform, 0.5, 1.0 / 12);
    }

    @Test
    void wholeNumbersBelowABound() {
        moments(random -> random.below(6), 2.5, 35.0 / 12);
        SeededRandom random = new SeededRandom(3);
        assertThat(draws(() -> random.below(4))).contains(0, 1, 2, 3).doesNotContain(4);
    }

    @Test
    void normal() {
        moments(SeededRandom::normal, 0, 1);
    }

    @Test
    void gamma() {
        moments(random -> random.gamma(2, 3), 3, 4.5);
    }

    @Test
    void poisson() {
        moments(random -> random.poisson(2.5), 2.5, 2.5);
        assertThat(new SeededRandom(1).poisson(0)).isZero();
    }

    @Test
    void beta() {
        moments(random -> random.beta(3, 2), 0.6, 0.04);
    }

    @Test
    void negativeBinomialAndPoissonCounts() {
        NegativeBinomial clumped = new NegativeBinomial(4, 0.8);
        moments(random -> random.count(clumped), 4, clumped.variance());
        NegativeBinomial poisson = new NegativeBinomial(4, Double.POSITIVE_INFINITY);
        moments(random -> random.count(poisson), 4, 4);
        assertThat(new SeededRandom(1).count(new NegativeBinomial(0, 0.8))).isZero();
    }

    @Test
    void theSameSeedGivesTheSameSequence() {
        SeededRandom one = new SeededRandom(5);
        SeededRandom same = new SeededRandom(5);
        SeededRandom other = new SeededRandom(6);

        double first = one.uniform();
        assertThat(same.uniform()).isEqualTo(first);
        assertThat(other.uniform()).isNotEqualTo(first);
    }
}
