package jarwise.render.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

    private static final Figures EN = Figures.of(Language.ENGLISH);
    private static final Figures ES = Figures.of(Language.SPANISH);
    private static final Figures FR = Figures.of(Language.FRENCH);

    @ParameterizedTest
    @CsvSource({
        "0.31, about 1 in 3",
        "0.16, about 1 in 6",
        "0.0483, about 1 in 21",
        "0.93, about 1 on each",
        "2.2, about 2 on each",
        "0.0112, about 1 in 90"
    })
    void aDensityIsSaidAsOneInSomething(double density, String said) {
        assertThat(EN.about(density)).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "0.093, fewer than 1 in 10",
        "0.0788, fewer than 1 in 12",
        "0.1, fewer than 1 in 10",
        "0.5, fewer than 1 in 2",
        "0.7, fewer than 1 on each",
        "1.2, fewer than 2 on each",
        "0.0123, fewer than 1 in 80"
    })
    void aBoundInWordsIsRoundedOutward(double upper, String said) {
        assertThat(EN.fewerThan(upper)).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "0.093, below 0.1",
        "0.0788, below 0.08",
        "0.1, below 0.1",
        "0.101, below 0.11",
        "3.21, below 3.3",
        "123.4, below 124"
    })
    void aBoundInFiguresIsRoundedOutward(double upper, String said) {
        assertThat(EN.below(upper)).isEqualTo(said);
    }

    @Test
    void limitsAreRoundedAwayFromTheEstimate() {
        assertThat(EN.interval(Interval.found(0.3149, 0.139, 0.851)))
                .isEqualTo("0.31 (0.13 to 0.86)");
        assertThat(EN.interval(Interval.found(0.93, 0.4, 3.11))).isEqualTo("0.93 (0.40 to 3.2)");
        assertThat(EN.interval(new Interval.Found(0.3, 0.1, OptionalDouble.empty())))
                .isEqualTo("0.30 (0.10 or more)");
        assertThat(EN.interval(new Interval.AtLeast(1.99))).isEqualTo("at least 1.9");
    }

    @Test
    void numbersFollowTheLanguage() {
        assertThat(ES.interval(Interval.found(0.3149, 0.139, 0.851)))
                .isEqualTo("0,31 (0,13 a 0,86)");
        assertThat(FR.below(0.0788)).isEqualTo("moins de 0,08");
        assertThat(FR.about(0.31)).isEqualTo("environ 1 sur 3");
        assertThat(ES.fewerThan(0.0788)).isEqualTo("menos de 1 de cada 12");
        assertThat(FR.whole(12345)).isEqualTo("12\u00A0345");
        assertThat(EN.percentRange(-1.13, 0.65)).isEqualTo("−113 to 65\u00A0%");
    }

    @Test
    void nobodyIsEverWhollySure() {
        assertThat(EN.sure(1)).isEqualTo("more than 99\u00A0% sure");
        assertThat(EN.sure(0.9999)).isEqualTo("more than 99\u00A0% sure");
        assertThat(EN.sure(0.9599)).isEqualTo("95\u00A0% sure");
        assertThat(EN.likelyAbove(0.001)).isEqualTo("1\u00A0% likely above");
        assertThat(EN.likelyAbove(0.999)).isEqualTo("99\u00A0% likely above");
    }

    @Test
    void aShareThatIsNotQuiteAllKeepsTheDigitsThatSaySo() {
        assertThat(EN.percent(0.85)).isEqualTo("85\u00A0%");
        assertThat(EN.percent(0.9996)).isEqualTo("99.96\u00A0%");
        assertThat(EN.percent(1)).isEqualTo("100\u00A0%");
        assertThat(EN.percentRange(0.613, 0.997)).isEqualTo("61 to 99.7\u00A0%");
    }

    @Test
    void stretchesOfTimeAreHoursAndMinutes() {
        assertThat(EN.minutes(140)).isEqualTo("2\u00A0h 20\u00A0min");
        assertThat(EN.minutes(35)).isEqualTo("35\u00A0min");
        assertThat(EN.minutes(180)).isEqualTo("3\u00A0h");
        assertThat(EN.minutes(0)).isEqualTo("less than 1\u00A0min");
    }

    @Test
    void oneAndManyAreTold() {
        assertThat(EN.jars(1)).isEqualTo("1 jar");
        assertThat(EN.noneIn(8)).isEqualTo("none in 8 jars");
        assertThat(ES.jars(8)).isEqualTo("8 frascos");
        assertThat(FR.jars(2)).isEqualTo("2 bocaux");
        assertThat(FR.jars(0)).isEqualTo("aucun bocal");
    }

    @Test
    void aLineIsSaidAsItIs() {
        assertThat(EN.exactly(0.1)).isEqualTo("1 in 10");
        assertThat(EN.exactly(0.15)).isEqualTo("0.15");
        assertThat(EN.exactly(1)).isEqualTo("1 on each");
        assertThat(EN.exactly(2.5)).isEqualTo("2.5 on each");
    }

    @Test
    void daysFollowTheLanguage() {
        LocalDate day = LocalDate.of(2026, 5, 7);
        assertThat(Days.of(Language.ENGLISH).full(day)).isEqualTo("Thursday 7 May 2026");
        assertThat(Days.of(Language.SPANISH).full(day)).isEqualTo("jueves 7 de mayo de 2026");
        assertThat(Days.of(Language.FRENCH).full(day)).isEqualTo("jeudi 7 mai 2026");
        assertThat(Days.of(Language.FRENCH).brief(LocalDate.of(2026, 4, 8))).isEqualTo("8 avr");
        assertThat(Days.of(Language.ENGLISH).time(LocalTime.of(7, 40))).isEqualTo("07:40");
    }
}
