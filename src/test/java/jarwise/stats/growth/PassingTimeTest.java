package jarwise.stats.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PassingTimeTest {

    /** 10, 20, 40, 80 individuals on 10 growing points, a week apart: 8 a growing point at last. */
    private static GrowthTrend doubling() {
        List<TimedCount> samples = new ArrayList<>();
        for (int week = 0; week < 4; week++) {
            samples.add(new TimedCount(Observation.of(10L << week, 10), 7 * week));
        }
        return GrowthTrend.of(samples, 0.95);
    }

    @Test
    void theLineIsPassedWhenTheTrendHasReachedIt() {
        GrowthTrend trend = doubling();

        assertThat(trend.probabilityAbove(16, 7)).isCloseTo(0.5, within(1e-6));
        double day = trend.passes(16, 0.5, 0.5, 40).orElseThrow();
        assertThat(day).isBetween(7.0, 7.5);
        assertThat(trend.probabilityAbove(16, day)).isGreaterThanOrEqualTo(0.5);
        assertThat(trend.probabilityAbove(16, day - 0.5)).isLessThan(0.5);
    }

    @Test
    void aSurerAnswerComesLater() {
        GrowthTrend trend = doubling();
        double half = trend.passes(16, 0.5, 0.25, 400).orElseThrow();
        double sure = trend.passes(16, 0.95, 0.25, 400).orElseThrow();

        assertThat(sure).isGreaterThan(half);
        assertThat(trend.probabilityAbove(16, sure)).isGreaterThanOrEqualTo(0.95);
        assertThat(trend.probabilityAbove(16, sure - 0.25)).isLessThan(0.95);
    }

    @Test
    void theLastStepCountsAndNoneBeyondIt() {
        GrowthTrend trend = doubling();
        double day = trend.passes(16, 0.95, 0.25, 400).orElseThrow();
        int steps = (int) Math.round(day / 0.25);

        assertThat(trend.passes(16, 0.95, 0.25, steps)).hasValue(day);
        assertThat(trend.passes(16, 0.95, 0.25, steps - 1)).isEmpty();
        assertThat(trend.passes(0.01, 0.95, 1, 0)).hasValue(0);
    }
}
