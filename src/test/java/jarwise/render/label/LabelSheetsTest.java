package jarwise.render.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.sample.SampleCode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("slow")
class LabelSheetsTest {

    static List<LabelGeometry> all() {
        return LabelGeometry.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void every_qr_code_of_a_printed_sheet_is_read_as_its_code(LabelGeometry sheet)
            throws IOException {
        List<JarLabel> jars = Sheets.jars(9);
        byte[] pdf = LabelSheets.pdf(jars, Sheets.job(sheet.name(), 0, 0, 1));
        try (PDDocument document = Sheets.read(pdf)) {
            BufferedImage[] pages = new BufferedImage[document.getNumberOfPages()];
            for (Places.Placed one : Places.of(jars, sheet, 1)) {
                int page = one.cell() / sheet.size();
                if (pages[page] == null) {
                    pages[page] = Sheets.printed(document, page);
                }
                Box cell = sheet.cell(one.cell() % sheet.size());
                assertThat(Sheets.decoded(pages[page], cell))
                        .as("%s of jar %d", one.part(), one.jar().walk())
                        .isEqualTo(one.jar().code().text());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void modules_are_six_tenths_of_a_mm_where_they_fit_and_four_tenths_of_a_mm_at_least(
            LabelGeometry sheet) throws IOException {
        byte[] pdf = LabelSheets.pdf(Sheets.jars(1), Sheets.job(sheet.name(), 0, 0, 1));
        try (PDDocument document = Sheets.read(pdf)) {
            // The first rectangle is the upper bar of the first corner mark: seven modules wide.
            Box bar = Sheets.rectangles(document, 0).get(0);
            double module = bar.height();
            double wanted = sheet.first().height() > 18 ? 0.6 : 0.42;
            assertThat(module).isCloseTo(wanted, within(0.005));
            assertThat(bar.width()).isCloseTo(7 * module, within(0.02));
            assertThat(bar.x() - sheet.first().x()).isGreaterThanOrEqualTo(4 * module - 0.01);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void nothing_of_a_sticker_leaves_its_label(LabelGeometry sheet) throws IOException {
        byte[] pdf = LabelSheets.pdf(Sheets.jars(1), Sheets.job(sheet.name(), 0, 0, 1));
        try (PDDocument document = Sheets.read(pdf)) {
            BufferedImage page = Sheets.printed(document, 0);
            double top = sheet.first().y();
            double bottom = sheet.first().bottom();
            for (double y = top; y < bottom; y += 0.05) {
                for (int column = 0; column < Math.min(3, sheet.columns()); column++) {
                    Box cell = sheet.cell(column);
                    assertThat(dark(page, cell.x() + 0.1, y)).as("left %s", y).isFalse();
                    assertThat(dark(page, cell.right() - 0.1, y)).as("right %s", y).isFalse();
                }
            }
        }
    }

    private static boolean dark(BufferedImage page, double x, double y) {
        int grey = page.getRGB((int) (x * 300 / 25.4), (int) (y * 300 / 25.4)) & 0xFF;
        return grey < 128;
    }

    @Test
    void code_place_and_cautions_can_be_read_in_clear_and_all_letters_are_embedded()
            throws IOException {
        List<JarLabel> jars = Sheets.jars(2);
        byte[] pdf = LabelSheets.pdf(jars, Sheets.job("a4-21", 0, 0, 1));
        assertThat(Sheets.text(pdf))
                .contains(jars.get(0).code().text(), "LID", "BASE", "VOUCHER")
                .contains("H2-B2, 10 growing points", "Été à Señal ‘Pellam Pink’", "blank")
                .contains("really cut", "freezer in")
                .contains("re-entry interval", "no flames or sparks", "sheet 1 of 1");
        try (PDDocument document = Sheets.read(pdf)) {
            var resources = document.getPage(0).getResources();
            for (COSName name : resources.getFontNames()) {
                assertThat(resources.getFont(name).isEmbedded()).isTrue();
            }
        }
    }

    @Test
    void the_same_labels_are_the_same_bytes() {
        LabelJob job = Sheets.job("letter-30", 1, -2, 4);
        assertThat(LabelSheets.pdf(Sheets.jars(5), job))
                .isEqualTo(LabelSheets.pdf(Sheets.jars(5), job));
    }

    @Test
    void letters_that_no_font_of_ours_has_are_a_question_mark() {
        JarLabel jar = new JarLabel(new SampleCode("A-1"), "温室", "薊馬", 3, 1);
        byte[] pdf = LabelSheets.pdf(List.of(jar), Sheets.job("a4-65", 0, 0, 1));
        assertThat(Sheets.text(pdf)).contains("??, 3 points");
    }

    @Test
    void a_first_label_that_the_sheet_has_not_is_refused() {
        assertThatThrownBy(() -> Sheets.job("a4-21", 0, 0, 22))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("1 to 21");
        assertThatThrownBy(() -> Sheets.job("a4-21", 10, 0, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Sheets.job("a4-21", 0, Double.NaN, 1))
                .isInstanceOf(InvalidInput.class);
    }
}
