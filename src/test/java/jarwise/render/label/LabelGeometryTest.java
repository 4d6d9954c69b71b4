package jarwise.render.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LabelGeometryTest {

    private static final double A_TENTH = 0.1;

    static List<LabelGeometry> all() {
        return LabelGeometry.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void labels_lie_on_the_paper_and_beside_each_other(LabelGeometry sheet) {
        Box last = sheet.cell(sheet.size() - 1);
        assertThat(last.right()).isLessThan(sheet.paper().widthMm());
        assertThat(last.bottom()).isLessThan(sheet.paper().heightMm());
        assertThat(sheet.stepAcross()).isGreaterThanOrEqualTo(sheet.first().width());
        assertThat(sheet.stepDown()).isGreaterThanOrEqualTo(sheet.first().height());
        // Sheets are cut alike on both sides; a label's margin is known to half a mm at best.
        double right = sheet.paper().widthMm() - last.right();
        double below = sheet.paper().heightMm() - last.bottom();
        assertThat(right).isCloseTo(sheet.first().x(), within(0.5));
        assertThat(below).isCloseTo(sheet.first().y(), within(0.5));
        assertThat(sheet.name())
                .startsWith(sheet.paper().name().toLowerCase(java.util.Locale.ROOT));
        assertThat(sheet.name()).endsWith("-" + sheet.size());
    }

    @ParameterizedTest
    @MethodSource("all")
    void the_test_page_outlines_every_label_where_it_lies(LabelGeometry sheet) throws Exception {
        byte[] pdf = TestPage.pdf(Sheets.job(sheet.name(), 0.5, -1.3, 1));
        try (PDDocument document = Sheets.read(pdf)) {
            var paper = document.getPage(0).getMediaBox();
            assertThat(paper.getWidth() * 25.4 / 72)
                    .isCloseTo(sheet.paper().widthMm(), within(A_TENTH));
            assertThat(paper.getHeight() * 25.4 / 72)
                    .isCloseTo(sheet.paper().heightMm(), within(A_TENTH));
            List<Box> drawn = Sheets.rectangles(document, 0);
            for (int i = 0; i < sheet.size(); i++) {
                Box cell = sheet.cell(i);
                assertThat(drawn.get(i).x()).isCloseTo(cell.x() + 0.5, within(A_TENTH));
                assertThat(drawn.get(i).y()).isCloseTo(cell.y() - 1.3, within(A_TENTH));
                assertThat(drawn.get(i).width()).isCloseTo(cell.width(), within(A_TENTH));
                assertThat(drawn.get(i).height()).isCloseTo(cell.height(), within(A_TENTH));
            }
        }
    }

    @Test
    void the_first_label_of_21_lies_where_a_ruler_says() {
        Box first = LabelGeometry.named("a4-21").cell(0);
        Box fifth = LabelGeometry.named("a4-21").cell(4);
        assertThat(first).isEqualTo(new Box(7.21, 15.15, 63.5, 38.1));
        assertThat(fifth.x()).isCloseTo(73.25, within(1e-9));
        assertThat(fifth.y()).isCloseTo(53.25, within(1e-9));
    }

    @Test
    void an_unknown_sheet_is_told_which_there_are() {
        assertThatThrownBy(() -> LabelGeometry.named("a4-99"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("a4-21, a4-24, a4-65, letter-30");
    }
}
