package jarwise.render.report;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.render.words.Language;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Letters as they come out of the printer. */
@Tag("slow")
class LetterPrinterTest {

    private final LetterPrinter printer = new LetterPrinter();

    @ParameterizedTest
    @EnumSource
    void aUsualLetterIsOneSheetThatSaysItsDecisionAndTheLaw(Paper paper) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(printer.pdf(Letters.usual(Language.ENGLISH), paper))) {
            String text = new PDFTextStripper().getText(pdf);

            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            assertThat(text)
                    .contains(
                            "Western flower thrips",
                            "Decide on ‘Cloudmarsh’ today.",
                            "cannot tell",
                            "20 more jars")
                    .contains("The product label is the law. Jarwise does not replace it.");
            assertThat(pdf.getPage(0).getMediaBox().getWidth())
                    .as("width of the sheet in points")
                    .isBetween(
                            paper == Paper.A4 ? 595f : 611.9f, paper == Paper.A4 ? 596f : 612.1f);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aLetterWithFarTooMuchToSayStillFitsAndSaysHowMuchItLeftOut(Paper paper)
            throws IOException {
        byte[] printed = printer.pdf(Letters.farTooLong(Language.ENGLISH), paper);

        try (PDDocument pdf = Loader.loadPDF(printed)) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(pdf)).contains("more on the Findings page");
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyFontIsInsideThePdf(Language language) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(printer.pdf(Letters.usual(language), Paper.A4))) {
            List<String> strangers = new ArrayList<>();
            List<String> all = new ArrayList<>();
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    all.add(font.getName());
                    if (!font.isEmbedded()) {
                        strangers.add(font.getName());
                    }
                }
            }
            assertThat(all).isNotEmpty();
            assertThat(strangers).isEmpty();
        }
    }

    @Test
    void thePageStandsAlone() {
        String html = printer.html(Letters.usual(Language.FRENCH));

        assertThat(html).startsWith("<!DOCTYPE html>").contains("@font-face", "data:font/woff");
        assertThat(html.replaceAll("xmlns(:\\w+)?=\"[^\"]*\"", ""))
                .as("nothing is fetched from elsewhere")
                .doesNotContain("http://", "https://", "<script", "<link");
    }
}
