package jarwise.render.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundPlans;
import jarwise.render.report.Paper;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.sample.SampleCode;
import java.io.IOException;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaperSheetsTest {

    private static final String NO_BREAK = "\u00a0";
    private static final Words ENGLISH = Words.of(Language.ENGLISH);

    @ParameterizedTest
    @EnumSource(Paper.class)
    void a_filter_has_forty_cells_of_ten_mm_within_its_circle(Paper paper) throws IOException {
        try (PDDocument document = Sheets.read(FilterTemplate.pdf(paper, ENGLISH))) {
            List<Box> cells = Sheets.rectangles(document, 0).subList(0, 40);
            assertThat(cells)
                    .allSatisfy(
                            cell -> {
                                assertThat(cell.width()).isCloseTo(10, within(0.1));
                                assertThat(cell.height()).isCloseTo(10, within(0.1));
                            });
            assertThat(
                            cells.stream()
                                    .collect(
                                            Collectors.groupingBy(
                                                    cell -> Math.round(cell.y()),
                                                    TreeMap::new,
                                                    Collectors.counting()))
                                    .values())
                    .containsExactly(4L, 6L, 6L, 8L, 6L, 6L, 4L);
            double x = cells.stream().mapToDouble(cell -> cell.x() + 5).average().orElseThrow();
            double y = cells.stream().mapToDouble(cell -> cell.y() + 5).average().orElseThrow();
            double farthest =
                    cells.stream()
                            .mapToDouble(
                                    cell ->
                                            Math.hypot(
                                                    Math.abs(cell.x() + 5 - x) + 5,
                                                    Math.abs(cell.y() + 5 - y) + 5))
                            .max()
                            .orElseThrow();
            assertThat(farthest).isBetween(40.2, 40.5);
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void the_round_on_paper_has_a_row_for_every_jar_and_the_cautions_on_every_page(
            Language language) throws IOException {
        Words words = Words.of(language);
        RoundPlan plan = RoundPlans.small("2026-05-11-a", "A-");
        byte[] pdf =
                RoundSheet.pdf(
                        plan,
                        words.say("sheet.round.head", "Lane", plan.id(), "11"),
                        List.of(words.say("label.caution.alcohol")),
                        Paper.A4,
                        words);
        String text = Sheets.text(pdf);
        for (PlannedJar jar : plan.jars()) {
            assertThat(text).containsOnlyOnce(jar.code().text());
        }
        assertThat(text)
                .contains("P1-B3", "Rubia Tarn", words.say("sheet.round.soap"))
                .contains(words.say("label.caution.alcohol").replace(NO_BREAK, " "))
                .contains(words.say("sheet.round.spot", 30, 100));
    }

    @Test
    void a_long_round_goes_on_over_pages_and_loses_no_jar() throws IOException {
        List<PlannedJar> jars = RoundPlans.small("2026-05-11-a", "A-").jars();
        RoundPlan small = RoundPlans.small("2026-05-11-a", "A-");
        List<PlannedJar> many =
                IntStream.rangeClosed(1, 40).mapToObj(walk -> numbered(jars.get(0), walk)).toList();
        RoundPlan plan =
                new RoundPlan(
                        small.id(),
                        small.day(),
                        small.method(),
                        small.question(),
                        1,
                        small.numbers(),
                        many,
                        "SC-1",
                        small.plannedAt());
        byte[] pdf = RoundSheet.pdf(plan, "head", List.of("caution"), Paper.LETTER, ENGLISH);
        try (PDDocument document = Sheets.read(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(3);
        }
        String text = Sheets.text(pdf);
        for (PlannedJar jar : many) {
            assertThat(text).contains(jar.code().text());
        }
    }

    private static PlannedJar numbered(PlannedJar jar, int walk) {
        return new PlannedJar(
                new SampleCode("Z-" + (100 + walk)),
                walk,
                jar.house(),
                jar.bench(),
                jar.cropLot(),
                jar.variety(),
                jar.purpose(),
                jar.role(),
                jar.spot(),
                jar.growingPoints());
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void the_keypad_card_names_every_key(Language language) {
        Words words = Words.of(language);
        String text = Sheets.text(KeypadCard.pdf(Paper.LETTER, words));
        assertThat(text.replaceAll("\\s+", " "))
                .contains(words.say("card.larva-2"), words.say("card.obscured"), "Enter")
                .contains(words.say("card.undo"), words.say("card.title"))
                .contains("A3", "G6");
    }
}
