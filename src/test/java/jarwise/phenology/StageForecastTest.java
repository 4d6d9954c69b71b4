package jarwise.phenology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.phenology.StageForecast.Band;
import jarwise.phenology.StageForecast.Day;
import jarwise.phenology.StageForecast.Present;
import jarwise.stats.thermal.StageDelay;
import jarwise.stats.thermal.ThermalConstants;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class StageForecastTest {

    private static final LocalDate START = LocalDate.of(2026, 5, 4);
    private static final LocalDateTime NOON = START.atTime(12, 0);
    private static final ThermalConstants WHOLE = new ThermalConstants(9.5, 194);
    private static final StageForecast FORECAST =
            new StageForecast(delay(0.22), delay(0.35), delay(0.43));

    @Test
    void keepsEverybodyInOneOfTheStages() {
        for (Day day : FORECAST.days(constant(22), NOON, new Present(40, 25, 10))) {
            assertThat(bands(day).mapToDouble(Band::expected).sum()).isCloseTo(75, within(1e-9));
        }
    }

    @Test
    void holdsEachNumberWithinItsBandAndWarmthBringsAdultsForward() {
        List<Day> days = FORECAST.days(constant(22), NOON, new Present(40, 25, 10));
        List<Day> warmer = FORECAST.days(constant(23), NOON, new Present(40, 25, 10));
        List<Day> cooler = FORECAST.days(constant(21), NOON, new Present(40, 25, 10));
        for (int i = 0; i < days.size(); i++) {
            assertThat(bands(days.get(i)))
                    .allMatch(b -> b.lower() <= b.expected() && b.expected() <= b.upper());
            Band adults = days.get(i).adults();
            assertThat(adults.lower()).isCloseTo(cooler.get(i).adults().expected(), within(1e-9));
            assertThat(adults.upper()).isCloseTo(warmer.get(i).adults().expected(), within(1e-9));
        }
    }

    @Test
    void endsDaysAtMidnightAndTheFirstOneCountsFromItsHour() {
        List<Day> fromNoon = FORECAST.days(constant(22), NOON, new Present(40, 25, 10));
        List<Day> fromMorning =
                FORECAST.days(constant(22), START.atStartOfDay(), new Present(40, 25, 10));

        assertThat(fromNoon).hasSize(30);
        assertThat(fromNoon.get(0).day()).isEqualTo(START);
        assertThat(fromNoon.get(29).day()).isEqualTo(START.plusDays(29));
        assertThat(fromMorning.get(0).eggs().expected())
                .isLessThan(fromNoon.get(0).eggs().expected());
    }

    @Test
    void agesThatAreAllAlikeLeaveAStageAtAnEvenRate() {
        List<Day> days =
                FORECAST.days(constant(19.5), START.atStartOfDay(), new Present(100, 0, 0));

        assertThat(days.get(0).eggs().expected())
                .isCloseTo(100 * (1 - 10 / (0.22 * 194)), within(0.5));
    }

    @Test
    void nothingMovesBelowTheLowerLimit() {
        List<Day> days = FORECAST.days(constant(5), NOON, new Present(40, 25, 10));

        assertThat(days.get(29).eggs()).isEqualTo(new Band(40, 40, 40));
        assertThat(days.get(29).adults()).isEqualTo(new Band(0, 0, 0));
    }

    @Test
    void infersEggsFromTheDaysAnEggTakesAndPupaeFromTheLarvae() {
        Present present = FORECAST.inferred(35, 4, 2.5, 19.5);

        assertThat(present.eggs()).isCloseTo(4 * 2.5 * 0.22 * 19.4, within(1e-9));
        assertThat(present.larvae()).isEqualTo(35);
        assertThat(present.pupae()).isCloseTo(43, within(1e-9));
        assertThat(FORECAST.inferred(35, 4, 2.5, 9)).isEqualTo(new Present(0, 35, 0));
    }

    @Test
    void isTheSameEachTime() {
        assertThat(FORECAST.days(constant(22), NOON, new Present(40, 25, 10)))
                .isEqualTo(FORECAST.days(constant(22), NOON, new Present(40, 25, 10)));
    }

    @Test
    void refusesNumbersThatCannotBe() {
        assertThatThrownBy(() -> FORECAST.inferred(-1, 4, 2.5, 20))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> FORECAST.inferred(1, Double.NaN, 2.5, 20))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> FORECAST.inferred(1, 4, -2.5, 20))
                .isInstanceOf(InvalidInput.class);
    }

    private static StageDelay delay(double share) {
        return StageDelay.of(WHOLE.part(share));
    }

    private static Stream<Band> bands(Day day) {
        return Stream.of(day.eggs(), day.larvae(), day.pupae(), day.adults());
    }

    private static TemperatureCourse constant(double celsius) {
        return new TemperatureCourse(
                List.of(
                        LineSpan.constant(
                                START.atStartOfDay(), START.plusDays(30).atStartOfDay(), celsius)),
                List.of());
    }
}
