package jarwise.stats.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DailySineTest {

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("thermal/single-sine.csv").stream()
                .filter(row -> row.has("sine"))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsTheReference(ReferenceTable.Row row) {
        DailySine day = new DailySine(row.number("lowest"), row.number("highest"));
        double upper = row.has("upper") ? row.number("upper") : Double.POSITIVE_INFINITY;

        assertThat(day.degreeDays(new TemperatureLimits(row.number("lower"), upper)))
                .isCloseTo(row.number("sine"), within(row.printedDigits("sine")));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void equalsTheSumOverAFineGridForAnyPartOfTheDay(long seed) {
        Random random = new Random(seed);
        DailySine day = day(random);
        TemperatureLimits limits = limits(random);
        double from = random.nextDouble();
        double to = from + (1 - from) * random.nextDouble();
        int steps = 20_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double share = from + (to - from) * (i + 0.5) / steps;
            double wave = Math.sin(2 * Math.PI * share) * (day.highest() - day.lowest()) / 2;
            sum += limits.degreesAbove(day.mean() + wave);
        }

        assertThat(day.degreeDays(limits, from, to))
                .isCloseTo(sum * (to - from) / steps, within(1e-5));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void bringsLessAboveAHigherLowerLimitAndMoreBelowAHigherUpperOne(long seed) {
        Random random = new Random(seed);
        DailySine day = day(random);
        TemperatureLimits limits = limits(random);
        double degrees = day.degreeDays(limits);

        assertThat(day.degreeDays(new TemperatureLimits(limits.lower() + 0.5, limits.upper() + 1)))
                .isLessThanOrEqualTo(
                        day.degreeDays(new TemperatureLimits(limits.lower(), limits.upper() + 1))
                                + 1e-12);
        assertThat(day.degreeDays(new TemperatureLimits(limits.lower(), limits.upper() + 1)))
                .isGreaterThanOrEqualTo(degrees - 1e-12);
        assertThat(degrees).isBetween(-1e-12, limits.upper() - limits.lower() + 1e-12);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void isNeverBelowTheAverageMethod(long seed) {
        Random random = new Random(seed);
        DailySine day = day(random);
        TemperatureLimits limits = TemperatureLimits.above(limits(random).lower());

        assertThat(day.degreeDays(limits))
                .isGreaterThanOrEqualTo(limits.degreesAbove(day.mean()) - 1e-12);
    }

    private static DailySine day(Random random) {
        double lowest = -5 + 25 * random.nextDouble();
        return new DailySine(lowest, lowest + 20 * random.nextDouble());
    }

    private static TemperatureLimits limits(Random random) {
        double lower = 2 + 14 * random.nextDouble();
        return new TemperatureLimits(lower, lower + 1 + 20 * random.nextDouble());
    }

    @Test
    void refusesLimitsAndDaysThatCannotBe() {
        assertThatThrownBy(() -> new DailySine(12, 11))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("swapped");
        assertThatThrownBy(() -> new DailySine(Double.NaN, 11)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new TemperatureLimits(10, 10)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new TemperatureLimits(Double.NaN, 10))
                .isInstanceOf(InvalidInput.class);
    }
}
