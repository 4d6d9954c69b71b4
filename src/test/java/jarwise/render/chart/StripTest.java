package jarwise.render.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.pest.StageMark;
import jarwise.render.words.Figures;
import jarwise.render.words.Interval;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StripTest {

    private static final Words WORDS = Words.of(Language.ENGLISH);
    private static final Figures FIGURES = new Figures(WORDS);
    private static final Strip STRIP = Strip.desk(Axis.density(0.1, FIGURES), WORDS);

    private static Drawn row(Interval interval) {
        return Drawn.of(STRIP.row(interval, "a row"));
    }

    @Test
    void theLineStandsAtTheSamePlaceInEveryRow() {
        List<String> first = row(Interval.found(0.31, 0.13, 0.86)).dashedLines();
        assertThat(first).hasSize(1);
        for (Interval interval :
                List.of(
                        Interval.found(0.02, 0.01, 0.06),
                        Interval.noneFound(0.08),
                        new Interval.AtLeast(0.4),
                        new Interval.NoneFound(OptionalDouble.empty()))) {
            assertThat(row(interval).dashedLines()).isEqualTo(first);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 0.5, 1, 12})
    void theLineOfEveryPestStandsInOnePlaceOfItsOwnTable(double threshold) {
        Strip strip = Strip.desk(Axis.density(threshold, FIGURES), WORDS);
        Interval onTheLine = Interval.found(threshold, threshold / 2, threshold * 2);
        Drawn drawn = Drawn.of(strip.row(onTheLine, "on the line"));
        assertThat(drawn.dashedLines()).isEqualTo(row(Interval.noneFound(0.08)).dashedLines());
    }

    @Test
    void aValueStandsAtTheSamePlaceInEveryRow() {
        Drawn wide = row(Interval.found(0.2, 0.01, 2));
        Drawn narrow = row(Interval.found(0.2, 0.19, 0.21));
        assertThat(wide.every("circle").get(0).getAttribute("cx"))
                .isEqualTo(narrow.every("circle").get(0).getAttribute("cx"));
    }

    @Test
    void equalRatiosHaveEqualLengths() {
        double one = x(0.02);
        assertThat(x(0.2) - one).isCloseTo(x(2) - x(0.2), within(0.02));
    }

    private static double x(double value) {
        Drawn drawn = row(Interval.found(value, value / 2, value * 2));
        return drawn.number(drawn.every("circle").get(0), "cx");
    }

    @Test
    void theBarRunsFromLimitToLimit() {
        Drawn drawn = row(Interval.found(0.31, 0.13, 0.86));
        double left = drawn.number(drawn.every("rect").get(0), "x");
        double width = drawn.number(drawn.every("rect").get(0), "width");
        assertThat(left).isCloseTo(x(0.13), within(0.02));
        assertThat(left + width).isCloseTo(x(0.86), within(0.02));
    }

    @Test
    void aZeroIsAnOpenBarWithACapAndNoDot() {
        Drawn zero = row(Interval.noneFound(0.08));
        assertThat(zero.every("circle")).isEmpty();
        assertThat(zero.every("rect")).isEmpty();
        assertThat(zero.every("path"))
                .filteredOn(path -> path.getAttribute("stroke-width").equals("2.6"))
                .singleElement()
                .satisfies(
                        cap ->
                                assertThat(cap.getAttribute("d"))
                                        .startsWith("M" + Svg.number(x(0.08)) + " "));
    }

    @Test
    void aZeroWithoutABoundSaysSoAndHasNoCap() {
        Drawn zero = row(new Interval.NoneFound(OptionalDouble.empty()));
        assertThat(zero.texts()).containsExactly("no upper limit");
        assertThat(zero.every("path"))
                .noneMatch(path -> path.getAttribute("stroke-width").equals("2.6"));
    }

    @Test
    void anEstimateWithoutAnUpperLimitRunsToTheEdgeWithAnArrowAndTheWord() {
        Drawn open = row(new Interval.Found(0.3, 0.1, OptionalDouble.empty()));
        assertThat(open.texts()).containsExactly("no upper limit");
        double end =
                open.number(open.every("rect").get(0), "x")
                        + open.number(open.every("rect").get(0), "width");
        assertThat(end).isCloseTo(308, within(0.02));
    }

    @Test
    void whatNobodyLookedAtIsHatchedWithWordsAndHasNoLine() {
        Drawn unsampled = row(new Interval.NotSampled());
        Drawn unread = row(new Interval.NotRead());
        assertThat(unsampled.texts()).containsExactly("not sampled");
        assertThat(unread.texts()).containsExactly("not read yet");
        assertThat(unsampled.dashedLines()).isEmpty();
        assertThat(unsampled.every("circle")).isEmpty();
    }

    @Test
    void everyRowSaysWhatItShows() {
        Drawn drawn =
                Drawn.of(
                        STRIP.row(
                                Interval.found(0.31, 0.13, 0.86),
                                "0.31 (0.13 to 0.86), <P1-B5> & \"more\"",
                                Optional.of(StageMark.ADULT)));
        assertThat(drawn.root().getAttribute("aria-label"))
                .isEqualTo("0.31 (0.13 to 0.86), <P1-B5> & \"more\"");
        assertThat(drawn.titles()).containsExactly("0.31 (0.13 to 0.86), <P1-B5> & \"more\"");
    }

    @Test
    void moreTakenAwayStandsFurtherRight() {
        Strip strip = Strip.desk(Axis.efficacy(0.6, FIGURES), WORDS);
        double worse = centre(strip, 0.14);
        double better = centre(strip, 0.85);
        assertThat(better).isGreaterThan(worse);
    }

    private static double centre(Strip strip, double efficacy) {
        Interval interval = Interval.found(efficacy, efficacy - 0.1, efficacy + 0.05);
        Drawn drawn = Drawn.of(strip.row(interval, "efficacy"));
        return drawn.number(drawn.every("circle").get(0), "cx");
    }

    @Test
    void theHeadNamesTheLineAndLeavesOutATickThatWouldCoverIt() {
        assertThat(Drawn.of(STRIP.head()).texts()).containsExactly("0.01", "1", "the line", "0.1");
        Strip near = Strip.desk(Axis.density(0.9, FIGURES), WORDS);
        assertThat(Drawn.of(near.head()).texts()).contains("0.9").doesNotContain("1");
    }
}
