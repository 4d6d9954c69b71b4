package jarwise.stats.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WorkloadTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 16);

    /** Frozen for a day, read within three. */
    private static final ReadingWindow WINDOW =
            new ReadingWindow(1, 3, EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY));

    @Test
    void addsUpMinutesAndFreezerPlaces() {
        Workload work = new Workload(3, 10, 25, 0.5);

        assertThat(work.minutes(12)).isEqualTo(12 * 38);
        assertThat(work.readingMinutes(12)).isEqualTo(300);
        assertThat(work.freezerPlaces(13)).isEqualTo(7);
        assertThat(work.minutes(0)).isZero();
    }

    @Test
    void mondayToWednesdayAreTheDaysToWash() {
        assertThat(WINDOW.workingDays(MONDAY)).hasSize(3).contains(MONDAY.plusDays(1));
        assertThat(WINDOW.workingDays(MONDAY.plusDays(1))).hasSize(3);
        assertThat(WINDOW.workingDays(MONDAY.plusDays(2))).hasSize(2);
        assertThat(WINDOW.workingDays(MONDAY.plusDays(3))).containsExactly(MONDAY.plusDays(4));
        assertThat(WINDOW.workingDays(MONDAY.plusDays(4))).containsExactly(MONDAY.plusDays(7));
    }

    @Test
    void tellsHowManyFiltersAreReadInTime() {
        assertThat(WINDOW.filtersInTime(MONDAY, 120, 25)).isEqualTo(12);
        assertThat(WINDOW.filtersInTime(MONDAY.plusDays(3), 120, 25)).isEqualTo(4);
        assertThat(new ReadingWindow(1, 2, Set.of(DayOfWeek.SUNDAY)).filtersInTime(MONDAY, 120, 25))
                .isZero();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new Workload(-1, 0, 0, 0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Workload(1, 1, Double.NaN, 0))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new ReadingWindow(3, 2, Set.of()))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> WINDOW.filtersInTime(MONDAY, 60, 0))
                .isInstanceOf(InvalidInput.class);
    }
}
