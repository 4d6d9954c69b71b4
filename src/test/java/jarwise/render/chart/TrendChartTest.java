package jarwise.render.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.render.words.Figures;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class TrendChartTest {

    private static final Words WORDS = Words.of(Language.ENGLISH);
    private static final Axis AXIS = Axis.density(0.1, new Figures(WORDS));

    private static Drawn desk(Trend trend) {
        return Drawn.of(TrendChart.desk(AXIS, WORDS).draw(trend, "Larvae on P1-B3"));
    }

    @Test
    void everyRoundCarriesItsValues() {
        Drawn drawn = desk(Examples.treated(Language.ENGLISH));
        assertThat(drawn.titles())
                .hasSize(10)
                .contains("P1-B3, 2 Mar: below 0.08", "P1-B3, 9 Mar: 0.10 (0.038 to 0.24)");
    }

    @Test
    void nothingIsDrawnBetweenRoundsButALineThatStopsAtAZero() {
        Drawn drawn = desk(Examples.treated(Language.ENGLISH));
        List<String> threads =
                drawn.every("path").stream()
                        .filter(path -> path.getAttribute("stroke-opacity").equals(".75"))
                        .map(path -> path.getAttribute("d"))
                        .toList();
        assertThat(threads)
                .singleElement()
                .satisfies(d -> assertThat(d.chars().filter(c -> c == 'L').count()).isEqualTo(7));
    }

    @Test
    void aZeroIsAnUprightOpenBarWithoutADot() {
        Drawn drawn = desk(Examples.treated(Language.ENGLISH));
        assertThat(drawn.every("circle")).hasSize(8);
        assertThat(drawn.every("rect")).hasSize(8);
    }

    @Test
    void datesNameTheMonthWhereItIsNew() {
        assertThat(desk(Examples.treated(Language.ENGLISH)).texts())
                .containsSubsequence("2 Mar", "9", "16", "23", "30", "6 Apr", "13", "4 May");
    }

    @Test
    void labelsOfNeighbouringTreatmentsTurnAwayFromEachOther() {
        Drawn drawn = desk(Examples.treated(Language.ENGLISH));
        List<String> anchors =
                drawn.every("text").stream()
                        .filter(text -> text.getTextContent().startsWith("group"))
                        .map(text -> ((Element) text.getParentNode()).getAttribute("text-anchor"))
                        .toList();
        assertThat(anchors).containsExactly("middle", "end", "start");
    }

    @Test
    void roundsNobodySampledAreHatchedWithTheWords() {
        Drawn drawn = desk(Examples.check(Language.ENGLISH));
        assertThat(drawn.texts()).contains("not sampled");
        assertThat(drawn.every("circle")).hasSize(8);
    }

    @Test
    void theLineIsNamedAtItsEnd() {
        assertThat(desk(Examples.check(Language.ENGLISH)).texts()).contains("the line, 1 in 10");
        Words words = Words.of(Language.FRENCH);
        String french =
                TrendChart.desk(Axis.density(0.1, new Figures(words)), words)
                        .draw(Examples.check(Language.FRENCH), "Larves");
        assertThat(Drawn.of(french).texts()).contains("la ligne, 1 sur 10");
    }

    @Test
    void aWholeYearOfRoundsKeepsItsLabelsApart() {
        int[] found = new int[52];
        java.util.Arrays.setAll(found, i -> i % 13);
        Trend year = Examples.trend(Language.ENGLISH, "P1-B3", "", found, List.of());
        for (TrendChart chart :
                List.of(TrendChart.desk(AXIS, WORDS), TrendChart.phone(AXIS, WORDS))) {
            Drawn drawn = Drawn.of(chart.draw(year, "A year"));
            List<Double> row =
                    drawn.every("text").stream()
                            .filter(text -> text.getAttribute("font-weight").equals("700"))
                            .filter(text -> text.getTextContent().matches("\\d+"))
                            .map(text -> Double.parseDouble(text.getAttribute("x")))
                            .toList();
            for (int i = 1; i < row.size(); i++) {
                assertThat(row.get(i) - row.get(i - 1)).isGreaterThanOrEqualTo(20 - 1e-6);
            }
        }
    }

    @Test
    void aSingleRoundStandsInTheMiddle() {
        Trend one = Examples.trend(Language.ENGLISH, "P1-B3", "", new int[] {3}, List.of());
        assertThat(desk(one).every("circle")).hasSize(1);
    }

    @Test
    void roundsOutOfOrderAreRefused() {
        Trend.Round later = Examples.treated(Language.ENGLISH).rounds().get(1);
        Trend.Round earlier = Examples.treated(Language.ENGLISH).rounds().get(0);
        assertThatThrownBy(
                        () ->
                                new Trend(
                                        "P1-B3",
                                        "",
                                        Optional.empty(),
                                        List.of(later, earlier),
                                        List.of(),
                                        List.of()))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("2026-03-02");
    }
}
