package jarwise.render.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoundingPropertyTest {

    static LongStream seeds() {
        Long one = Long.getLong("seed");
        return one == null ? LongStream.rangeClosed(1, 200) : LongStream.of(one);
    }

    private static double someDensity(Random random) {
        return Math.exp(random.nextDouble(Math.log(1e-5), Math.log(2000)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aBoundIsNeverShownTighterThanItIs(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            double value = someDensity(random);
            assertThat(Rounding.up(value).doubleValue()).isGreaterThanOrEqualTo(value);
            assertThat(Rounding.down(value).doubleValue()).isLessThanOrEqualTo(value);
            assertThat(Rounding.up(value).doubleValue()).isLessThanOrEqualTo(value * 1.2);
            assertThat(Rounding.down(value).doubleValue()).isGreaterThanOrEqualTo(value * 0.8);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aBoundInWordsIsNeverTighterThanItIs(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            double value =
                    random.nextBoolean() ? someDensity(random) : 1.0 / random.nextInt(1, 999);
            if (value < 1) {
                assertThat(1.0 / Rounding.oneInAtLeast(value)).isGreaterThanOrEqualTo(value);
                assertThat(1.0 / Rounding.oneInAtMost(value)).isLessThanOrEqualTo(value);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSmallerOfTwoIsNeverShownAsTheGreater(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            double small = someDensity(random);
            double great = small * (1 + random.nextDouble() * random.nextDouble());
            assertThat(Rounding.up(small)).isLessThanOrEqualTo(Rounding.up(great));
            assertThat(Rounding.down(small)).isLessThanOrEqualTo(Rounding.down(great));
            assertThat(Rounding.nearest(small)).isLessThanOrEqualTo(Rounding.nearest(great));
            if (great < 1) {
                assertThat(Rounding.oneInAtLeast(small))
                        .isGreaterThanOrEqualTo(Rounding.oneInAtLeast(great));
                assertThat(Rounding.oneInNearest(small))
                        .isGreaterThanOrEqualTo(Rounding.oneInNearest(great));
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatWasRoundedOnceStaysAsItIs(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 50; i++) {
            double up = Rounding.up(someDensity(random)).doubleValue();
            assertThat(Rounding.up(up)).isEqualByComparingTo(Double.toString(up));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theLimitsOfAShareAreNeverShownTighterThanTheyAre(long seed) {
        Random random = new Random(seed);
        Figures figures = Figures.of(Language.ENGLISH);
        for (int i = 0; i < 20; i++) {
            double lower = 1 - Math.exp(random.nextDouble(-8, 1));
            double upper = lower + (1 - lower) * random.nextDouble();
            String[] shown =
                    figures.percentRange(lower, upper)
                            .replace("\u00A0%", "")
                            .replace('−', '-')
                            .split(" to ", -1);
            assertThat(Double.parseDouble(shown[0]) / 100).isLessThanOrEqualTo(lower + 1e-12);
            assertThat(Double.parseDouble(shown[1]) / 100).isGreaterThanOrEqualTo(upper - 1e-12);
        }
    }
}
