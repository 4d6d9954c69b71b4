package jarwise.phenology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.thermal.TemperatureLimits;
import jarwise.stats.thermal.ThermalConstants;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TemperatureCourseTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final TemperatureLimits LIMITS = new TemperatureLimits(9.5, 30);

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("thermal/single-sine.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void eachMethodOfDaysEqualsTheReference(ReferenceTable.Row row) {
        DailyLog log = days(row.number("lowest"), row.number("highest"));
        double upper = row.has("upper") ? row.number("upper") : Double.POSITIVE_INFINITY;
        TemperatureLimits limits = new TemperatureLimits(row.number("lower"), upper);

        if (row.has("sine")) {
            assertThat(total(log.course(DegreeDayMethod.SINGLE_SINE), limits))
                    .isCloseTo(row.number("sine"), within(row.printedDigits("sine")));
        }
        if (row.has("average")) {
            assertThat(total(log.course(DegreeDayMethod.AVERAGE), limits))
                    .isCloseTo(row.number("average"), within(1e-12));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void daysAddUpToTheTrapezoidOfAllReadings(long seed) {
        List<LoggedTemperature> readings = readings(new Random(seed));
        double sum = 0;
        for (int i = 1; i < readings.size(); i++) {
            LoggedTemperature a = readings.get(i - 1);
            LoggedTemperature b = readings.get(i);
            double heights = LIMITS.degreesAbove(a.celsius()) + LIMITS.degreesAbove(b.celsius());
            sum += TemperatureSpan.days(a.at(), b.at()) * heights / 2;
        }

        assertThat(total(new ReadingLog(readings).course(DegreeDayMethod.HOURLY), LIMITS))
                .isCloseTo(sum, within(1e-9));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void twoPartsOfALogBringAsMuchAsTheWhole(long seed) {
        Random random = new Random(seed);
        List<LoggedTemperature> readings = readings(random);
        int cut = 1 + random.nextInt(readings.size() - 2);
        double parts =
                hourly(readings.subList(0, cut + 1))
                        + hourly(readings.subList(cut, readings.size()));

        assertThat(parts).isCloseTo(hourly(readings), within(1e-9));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void aDevelopmentEndsWhenItsHeatHasComeTogether(long seed) {
        Random random = new Random(seed);
        TemperatureCourse course =
                seed % 2 == 0
                        ? new ReadingLog(readings(random)).course(DegreeDayMethod.HOURLY)
                        : manyDays(random).course(DegreeDayMethod.SINGLE_SINE);
        LocalDateTime start = course.from().plusMinutes(random.nextInt(1000));
        ThermalConstants development = new ThermalConstants(8, 3 + random.nextDouble());
        LocalDateTime end = course.end(development, start).orElseThrow();
        double gathered = 0;
        for (TemperatureSpan span : course.spans()) {
            LocalDateTime from = span.from().isBefore(start) ? start : span.from();
            LocalDateTime to = span.to().isAfter(end) ? end : span.to();
            if (from.isBefore(to)) {
                gathered += span.degreeDays(development.limits(), from, to);
            }
        }

        // a second at 30 degrees above the limit is 0.00035 degree-days
        assertThat(gathered)
                .isBetween(development.degreeDays() - 1e-9, development.degreeDays() + 4e-4);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void warmerIsNeverLater(long seed) {
        TemperatureCourse course =
                new ReadingLog(readings(new Random(seed))).course(DegreeDayMethod.HOURLY);
        ThermalConstants development = new ThermalConstants(8, 4);
        LocalDateTime end = course.end(development, course.from()).orElseThrow();

        assertThat(course.warmedBy(1).end(development, course.from()).orElseThrow())
                .isBeforeOrEqualTo(end);
        assertThat(course.warmedBy(1).daily(LIMITS).get(0).degreeDays())
                .isGreaterThanOrEqualTo(course.daily(LIMITS).get(0).degreeDays());
    }

    @Test
    void aGapOfSixHoursIsFilledAndALongerOneLeftOut() {
        LocalDateTime start = DAY.atStartOfDay();
        List<LoggedTemperature> readings =
                List.of(
                        new LoggedTemperature(start, 19.5),
                        new LoggedTemperature(start.plusHours(2), 19.5),
                        new LoggedTemperature(start.plusHours(8), 19.5),
                        new LoggedTemperature(start.plusHours(15), 19.5),
                        new LoggedTemperature(start.plusHours(16), 19.5));
        TemperatureCourse course = new ReadingLog(readings).course(DegreeDayMethod.HOURLY);

        assertThat(course.gaps())
                .containsExactly(
                        new LogGap(start.plusHours(2), start.plusHours(8), true),
                        new LogGap(start.plusHours(8), start.plusHours(15), false));
        assertThat(total(course, LIMITS)).isCloseTo(10 * 9 / 24.0, within(1e-12));
        assertThat(course.daily(LIMITS).get(0).hours()).isCloseTo(9, within(1e-9));
    }

    @Test
    void aDayWithAHoleHasNoLowestAndHighestTemperature() {
        List<LoggedTemperature> readings = new ArrayList<>();
        for (int hour = 0; hour < 72; hour++) {
            if (hour < 30 || hour > 40) {
                readings.add(new LoggedTemperature(DAY.atStartOfDay().plusHours(hour), 10 + hour));
            }
        }
        TemperatureCourse course = new ReadingLog(readings).course(DegreeDayMethod.AVERAGE);

        assertThat(course.daily(TemperatureLimits.above(10)))
                .containsExactly(
                        new DayDegreeDays(DAY, 11.5, 24),
                        new DayDegreeDays(DAY.plusDays(2), 59.5, 24));
        assertThat(course.gaps()).hasSize(1);
    }

    @Test
    void aStuckSensorAndAJumpAreNoticed() {
        List<LoggedTemperature> readings = new ArrayList<>();
        for (int hour = 0; hour <= 30; hour++) {
            readings.add(
                    new LoggedTemperature(
                            DAY.atStartOfDay().plusHours(hour), hour <= 25 ? 20 : 20 + hour));
        }

        assertThat(new ReadingLog(readings).doubts())
                .extracting(TemperatureLog.SensorDoubt::kind)
                .containsExactly(
                        TemperatureLog.SensorDoubt.Kind.STUCK,
                        TemperatureLog.SensorDoubt.Kind.JUMP);
        assertThat(new ReadingLog(readings.subList(0, 25)).doubts()).isEmpty();
    }

    @Test
    void daysCannotBeReadHourByHour() {
        assertThatThrownBy(() -> days(10, 20).course(DegreeDayMethod.HOURLY))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("single-sine");
    }

    private static double hourly(List<LoggedTemperature> readings) {
        return total(new ReadingLog(readings).course(DegreeDayMethod.HOURLY), LIMITS);
    }

    private static double total(TemperatureCourse course, TemperatureLimits limits) {
        return course.daily(limits).stream().mapToDouble(DayDegreeDays::degreeDays).sum();
    }

    private static DailyLog days(double lowest, double highest) {
        return new DailyLog(List.of(new DailyRange(DAY, lowest, highest)));
    }

    private static DailyLog manyDays(Random random) {
        List<DailyRange> days = new ArrayList<>();
        for (int day = 0; day < 8; day++) {
            double lowest = 5 + 10 * random.nextDouble();
            days.add(new DailyRange(DAY.plusDays(day), lowest, lowest + 12 * random.nextDouble()));
        }
        return new DailyLog(days);
    }

    private static List<LoggedTemperature> readings(Random random) {
        List<LoggedTemperature> readings = new ArrayList<>();
        LocalDateTime at = DAY.atStartOfDay().plusMinutes(random.nextInt(1440));
        for (int i = 0; i < 120; i++) {
            readings.add(new LoggedTemperature(at, 4 + 30 * random.nextDouble()));
            at = at.plusMinutes(1 + random.nextInt(180));
        }
        return readings;
    }
}
