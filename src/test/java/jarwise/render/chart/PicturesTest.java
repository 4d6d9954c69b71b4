package jarwise.render.chart;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.decision.Verdict;
import jarwise.pest.StageMark;
import jarwise.render.words.Figures;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PicturesTest {

    private static final Words WORDS = Words.of(Language.ENGLISH);

    @ParameterizedTest
    @EnumSource
    void everyStageHasItsOwnShape(StageMark mark) {
        String drawn = StageMarks.draw(mark);
        Drawn.of(drawn);
        String shape = drawn.replaceAll("#[0-9A-F]{6}", "");
        for (StageMark other : StageMark.values()) {
            if (other != mark) {
                assertThat(StageMarks.draw(other).replaceAll("#[0-9A-F]{6}", ""))
                        .isNotEqualTo(shape);
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyVerdictStandsAgainstItsLine(Verdict verdict) {
        Drawn drawn = Drawn.of(VerdictMarks.draw(verdict));
        String line = drawn.every("path").get(0).getAttribute("d");
        assertThat(line)
                .isEqualTo(
                        switch (verdict) {
                            case BELOW_THE_LINE -> "M1 5H25";
                            case ABOVE_THE_LINE -> "M1 15H25";
                            case CANNOT_TELL -> "M1 10H25";
                        });
    }

    @Test
    void stagesShareOneScaleAndPrintTheirCounts() {
        Drawn drawn = Drawn.of(StageBars.desk(WORDS).draw(Examples.mix(), "Stages on P1-B3"));
        List<Double> heights =
                drawn.every("rect").stream()
                        .filter(rect -> rect.hasAttribute("stroke"))
                        .map(rect -> drawn.number(rect, "height"))
                        .toList();
        assertThat(heights.stream().mapToDouble(h -> h).max()).hasValue(62);
        assertThat(drawn.texts()).contains("43", "40", "24", "0", "pupal stages");
    }

    @Test
    void aShareIsGivenFromTenAnimalsUp() {
        StageBars bars = StageBars.desk(WORDS);
        assertThat(bars.share(Examples.mix(), 1)).isEqualTo("–");
        assertThat(bars.share(Examples.mix(), 2)).isEqualTo("75\u00A0%");
    }

    @Test
    void aWindowEndsWhereItsHourStands() {
        DayBar day = new DayBar(LocalTime.of(7, 40), WORDS);
        Drawn drawn =
                Drawn.of(
                        day.row(
                                DayBar.Kind.DEADLINE,
                                Optional.of(day.now()),
                                LocalTime.NOON,
                                60,
                                "by 12:00"));
        double right =
                drawn.number(drawn.every("rect").get(0), "x")
                        + drawn.number(drawn.every("rect").get(0), "width");
        assertThat(right).isEqualTo(131.43, org.assertj.core.api.Assertions.within(0.02));
        assertThat(Drawn.of(day.head()).texts()).contains("now 07:40").doesNotContain("8");
    }

    @Test
    void smallPicturesAreWellFormed() {
        SmallTrend small = new SmallTrend(Axis.density(0.1, new Figures(WORDS)), WORDS);
        Drawn drawn =
                Drawn.of(small.draw(Examples.check(Language.ENGLISH), Examples.potsIn(), true));
        assertThat(drawn.texts()).contains("pots in", "15 + 6", "0.1", "2 Mar", "4 May");
        Drawn.of(FilterEmblem.draw(16, Palette.DESK));
        Drawn.of(FilterEmblem.unread(84, Palette.DARK));
    }
}
