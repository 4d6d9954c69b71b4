package jarwise.usecase.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;

/**
 * When the work of a round was done. Rounds are walked on Monday, washed the same morning and read
 * on Tuesday and Wednesday; the third was walked on Thursday afternoon, so that only late Friday is
 * inside both the reading window and the working week.
 *
 * @param round 1 to 10
 */
public record WorkWeek(int round) {

    public static final int ROUNDS = 10;
    private static final LocalDate FIRST_MONDAY = LocalDate.of(2026, 3, 2);
    private static final int OF_THURSDAY = 3;

    public LocalDate monday() {
        return FIRST_MONDAY.plusWeeks(round - 1L);
    }

    public boolean lateInTheWeek() {
        return round == OF_THURSDAY;
    }

    public LocalDate cutOn() {
        return lateInTheWeek() ? monday().plusDays(3) : monday();
    }

    public Instant labelsPrinted() {
        return at(monday().minusDays(3), 15, 30);
    }

    public Instant walkStarts() {
        return lateInTheWeek() ? at(cutOn(), 12, 30) : at(cutOn(), 7, 30);
    }

    /** Three jars are shaken and filtered together, every six minutes. */
    public Instant washed(int jar) {
        Instant first = lateInTheWeek() ? at(cutOn(), 14, 32) : at(cutOn(), 10, 2);
        return first.plusSeconds(360L * (jar / 3));
    }

    /** First and second sitting at the microscope. */
    public Instant sitting(String reader, int number) {
        boolean second = reader.equals(Cast.READER_B);
        if (lateInTheWeek()) {
            return at(cutOn().plusDays(1), 15, second ? 30 : 5);
        }
        LocalDate day = monday().plusDays(number);
        if (number == 1) {
            return at(day, 13, second ? 30 : 0);
        }
        return at(day, second ? 9 : 8, 30);
    }

    public Instant recountsStart(String reader) {
        int minute = reader.equals(Cast.READER_B) ? 0 : 20;
        return lateInTheWeek()
                ? at(cutOn().plusDays(1), 17, 20 + minute)
                : at(monday().plusDays(2), 14, minute);
    }

    /** Cards are changed on Fridays. */
    public LocalDate cardsChanged() {
        return monday().plusDays(4);
    }

    public static Instant at(LocalDate day, int hour, int minute) {
        return day.atTime(LocalTime.of(hour, minute)).atZone(DemoClock.ZONE).toInstant();
    }
}
