package jarwise.stats.growth;

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
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GrowthTrendTest {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    private static TimedCount sample(long individuals, double units, double time) {
        return new TimedCount(Observation.of(individuals, units), time);
    }

    /** Doubles every week; twice the growing points hold twice as many. */
    private static List<TimedCount> doubling() {
        List<TimedCount> samples = new ArrayList<>();
        for (int week = 0; week < 4; week++) {
            samples.add(sample(10L << week, 10, 7 * week));
            samples.add(sample(20L << week, 20, 7 * week));
        }
        return samples;
    }

    private static List<TimedCount> drawn(long seed) {
        SeededRandom random = new SeededRandom(seed);
        List<TimedCount> samples = new ArrayList<>();
        for (int day = 0; day <= 21; day += 7) {
            for (int jar = 0; jar < 8; jar++) {
                double mean = 3 * Math.exp(0.06 * day);
                samples.add(sample(random.count(new NegativeBinomial(mean, 2)), 10, day));
            }
        }
        return samples;
    }

    static List<Row> own() {
        return ReferenceTable.read("growth/own.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("own")
    void trendIsThatOfOurOwnArithmetic(Row row) {
        List<TimedCount> samples = new ArrayList<>();
        for (String word : row.text("samples").split(" ", -1)) {
            String[] parts = word.split("@", -1);
            samples.add(sample(Long.parseLong(parts[0]), 10, Double.parseDouble(parts[1])));
        }
        GrowthTrend trend = GrowthTrend.of(samples, 0.95);

        assertThat(trend.rate().estimate().orElseThrow())
                .isCloseTo(row.number("rate"), within(1e-6));
        assertThat(trend.rate().lower().orElseThrow()).isCloseTo(row.number("lower"), within(1e-5));
        assertThat(trend.rate().upper().orElseThrow()).isCloseTo(row.number("upper"), within(1e-5));
        assertThat(trend.logDensity(0).estimate().orElseThrow())
                .isCloseTo(row.number("logDensity"), within(1e-5));
        assertThat(trend.fit().logLikelihood())
                .isCloseTo(row.number("logLikelihood"), within(1e-7));
        assertThat(trend.probabilityAbove(1, 5)).isCloseTo(row.number("above"), within(1e-5));
    }

    @Test
    void exactExponentialDataGiveTheirRateBack() {
        GrowthTrend trend = GrowthTrend.of(doubling(), 0.95);

        assertThat(trend.rate().estimate().orElseThrow()).isCloseTo(Math.log(2) / 7, within(1e-8));
        assertThat(trend.fit().k()).isEmpty();
        assertThat(trend.logDensity(0).estimate().orElseThrow())
                .isCloseTo(Math.log(8), within(1e-7));
        // at a density of 16, twice the last, the chance is one half a week later
        assertThat(trend.passes(16, 0.499, 1, 30)).hasValue(7);
        assertThat(trend.passes(16, 0.9, 1, 30).orElseThrow()).isGreaterThan(7);
        assertThat(trend.passes(1, 0.9, 1, 30)).hasValue(0);
        assertThat(trend.passes(1e6, 0.5, 1, 30)).isEmpty();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void orderAndStartOfTimeDoNotMatterAndUnitsScale(long seed) {
        List<TimedCount> samples = drawn(seed);
        List<TimedCount> other = new ArrayList<>();
        for (TimedCount sample : samples) {
            Observation observation = sample.observation();
            other.add(
                    sample(
                            observation.individuals(),
                            2 * observation.samplingUnits(),
                            1000 + 2 * sample.time()));
        }
        Collections.shuffle(other, new Random(seed));

        TrendFigure rate = GrowthTrend.of(samples, 0.95).rate();
        TrendFigure half = GrowthTrend.of(other, 0.95).rate();
        assertThat(2 * half.estimate().orElseThrow())
                .isCloseTo(rate.estimate().orElseThrow(), within(1e-7));
        assertThat(2 * half.upper().orElseThrow())
                .isCloseTo(rate.upper().orElseThrow(), within(1e-5));
        assertThat(half.pValue()).isCloseTo(rate.pValue(), within(1e-6));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void chanceAtALimitOfTheDensityIsThatOfTheLimit(long seed) {
        GrowthTrend trend = GrowthTrend.of(drawn(seed), 0.8);
        TrendFigure later = trend.logDensity(5);

        assertThat(trend.probabilityAbove(Math.exp(later.lower().orElseThrow()), 5))
                .isCloseTo(0.9, within(1e-4));
        assertThat(trend.probabilityAbove(Math.exp(later.upper().orElseThrow()), 5))
                .isCloseTo(0.1, within(1e-4));
        assertThat(trend.probabilityAbove(Math.exp(later.estimate().orElseThrow()), 5))
                .isCloseTo(0.5, within(1e-3));
    }

    @Test
    void roundsWithoutAFindBeforeOneWithHaveNoRate() {
        List<TimedCount> samples =
                List.of(sample(0, 10, 0), sample(0, 10, 0), sample(3, 10, 7), sample(5, 10, 7));

        TrendFigure rate = GrowthTrend.of(samples, 0.95).rate();
        assertThat(rate.estimate()).isEmpty();
        assertThat(rate.upper()).isEmpty();
        assertThat(rate.lower().orElseThrow()).isPositive();
    }

    @Test
    void refusesOneRound() {
        List<TimedCount> one = List.of(sample(1, 10, 0), sample(2, 10, 0));

        assertThatThrownBy(() -> GrowthTrend.of(one, 0.95)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> GrowthTrend.of(doubling(), Double.NaN))
                .isInstanceOf(InvalidInput.class);
        GrowthTrend trend = GrowthTrend.of(doubling(), 0.95);
        assertThatThrownBy(() -> trend.passes(-1, 0.5, 1, 30)).isInstanceOf(InvalidInput.class);
    }
}
