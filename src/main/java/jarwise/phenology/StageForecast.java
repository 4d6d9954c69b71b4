package jarwise.phenology;

import jarwise.base.Require;
import jarwise.stats.thermal.StageCohort;
import jarwise.stats.thermal.StageDelay;
import jarwise.stats.thermal.TemperatureLimits;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * What becomes of those who are there now, day by day. Eggs laid later are not in it, nor deaths.
 *
 * @param egg from laying to hatching
 * @param larva the larval stage
 * @param pupa from the end of the larva to the adult
 */
public record StageForecast(StageDelay egg, StageDelay larva, StageDelay pupa) {

    /**
     * Those who are there at the beginning, in sampling units or in all.
     *
     * @param eggs eggs
     * @param larvae larvae
     * @param pupae pupae
     */
    public record Present(double eggs, double larvae, double pupae) {}

    /**
     * How many of a stage there are, with the numbers of a log one degree warmer and cooler.
     *
     * @param expected by the log as it is
     * @param lower the smallest of the three
     * @param upper the largest of the three
     */
    public record Band(double expected, double lower, double upper) {

        private static Band of(double expected, double warmer, double cooler) {
            return new Band(
                    expected,
                    Math.min(expected, Math.min(warmer, cooler)),
                    Math.max(expected, Math.max(warmer, cooler)));
        }
    }

    /**
     * The stages at the end of a day.
     *
     * @param day the day
     * @param eggs not hatched
     * @param larvae on the plant
     * @param pupae in the soil or on the plant
     * @param adults new ones since the beginning
     */
    public record Day(LocalDate day, Band eggs, Band larvae, Band pupae, Band adults) {}

    private List<StageDelay> stages() {
        return List.of(egg, larva, pupa);
    }

    /**
     * What a wash does not show, from what it shows: eggs laid within the time that an egg takes,
     * and pupae in proportion to larvae, as if numbers had long been steady.
     *
     * @param larvae counted, 0 or more
     * @param adults counted, 0 or more
     * @param eggsPerAdultAndDay mean of all adults, males too, 0 or more
     * @param celsius mean temperature of the days before, in °C
     * @return eggs, larvae, pupae; no eggs or pupae if it is too cool for them to develop
     */
    public Present inferred(
            double larvae, double adults, double eggsPerAdultAndDay, double celsius) {
        Require.notNegative("the larvae", larvae);
        Require.notNegative("the adults", adults);
        Require.notNegative("the eggs per adult and day", eggsPerAdultAndDay);
        double eggDays = egg.constants().days(celsius).orElse(0);
        double larvaDays = larva.constants().days(celsius).orElse(Double.POSITIVE_INFINITY);
        double pupaDays = pupa.constants().days(celsius).orElse(0);
        return new Present(
                adults * eggsPerAdultAndDay * eggDays, larvae, larvae * pupaDays / larvaDays);
    }

    /**
     * {@return the stages at the end of each day that the course reaches}
     *
     * @param course temperature, without holes
     * @param from beginning, not before that of the course
     * @param present who is there then
     */
    public List<Day> days(TemperatureCourse course, LocalDateTime from, Present present) {
        List<StageCohort> expected = cohorts(course, from, present);
        List<StageCohort> warmer = cohorts(course.warmedBy(1), from, present);
        List<StageCohort> cooler = cohorts(course.warmedBy(-1), from, present);
        List<Day> days = new ArrayList<>();
        for (int i = 0; i < expected.size(); i++) {
            StageCohort[] three = {expected.get(i), warmer.get(i), cooler.get(i)};
            days.add(
                    new Day(
                            from.toLocalDate().plusDays(i),
                            band(three, 0),
                            band(three, 1),
                            band(three, 2),
                            Band.of(three[0].grown(), three[1].grown(), three[2].grown())));
        }
        return days;
    }

    private static Band band(StageCohort[] three, int stage) {
        return Band.of(three[0].inStage(stage), three[1].inStage(stage), three[2].inStage(stage));
    }

    private List<StageCohort> cohorts(
            TemperatureCourse course, LocalDateTime from, Present present) {
        StageCohort cohort =
                StageCohort.of(stages())
                        .ofAllAges(0, present.eggs())
                        .ofAllAges(1, present.larvae())
                        .ofAllAges(2, present.pupae());
        List<StageCohort> ends = new ArrayList<>();
        LocalDateTime start = from;
        LocalDateTime end = from.toLocalDate().plusDays(1).atStartOfDay();
        while (!end.isAfter(course.to())) {
            cohort = cohort.after(warmth(course, start, end));
            ends.add(cohort);
            start = end;
            end = end.plusDays(1);
        }
        return ends;
    }

    private double[] warmth(TemperatureCourse course, LocalDateTime start, LocalDateTime end) {
        return stages().stream()
                .map(stage -> stage.constants().limits())
                .mapToDouble(limits -> sum(course, limits, start, end))
                .toArray();
    }

    private static double sum(
            TemperatureCourse course,
            TemperatureLimits limits,
            LocalDateTime start,
            LocalDateTime end) {
        double sum = 0;
        for (TemperatureSpan span : course.spans()) {
            LocalDateTime a = span.from().isBefore(start) ? start : span.from();
            LocalDateTime b = span.to().isAfter(end) ? end : span.to();
            sum += a.isBefore(b) ? span.degreeDays(limits, a, b) : 0;
        }
        return sum;
    }
}
