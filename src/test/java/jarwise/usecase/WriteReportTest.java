package jarwise.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.render.report.Letter;
import jarwise.render.report.LetterPrinter;
import jarwise.render.report.Paper;
import jarwise.render.words.Language;
import jarwise.usecase.findings.Story;
import jarwise.usecase.findings.TestSite;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WriteReportTest {

    @TempDir private Path folder;
    private TestSite site;

    @BeforeEach
    void openSite() {
        site = new TestSite(folder.resolve("data"));
    }

    @AfterEach
    void closeSite() {
        site.close();
    }

    @Test
    void writesNothingWhereNothingIsOnRecord() {
        assertThat(letter(Language.ENGLISH)).isEmpty();
    }

    @Test
    void saysWhatToDoWhereAndWhatMustNotBeDone() {
        Story.toldTo(site);

        Letter letter = letter(Language.ENGLISH).orElseThrow();

        assertThat(letter.answer())
                .contains("Decide today: ‘Cloudmarsh’, P1-B5.")
                .contains("Below your line: ‘Rubia Tarn’, P1-B3.");
        assertThat(letter.rows().get(0).place()).isEqualTo("‘Cloudmarsh’, P1-B5");
        assertThat(letter.rows()).noneMatch(row -> row.place().contains("P1-D1"));
        assertThat(letter.warnings().get(0).lead())
                .isEqualTo("No entry to P1-B4 until Thu 19 Mar, 18:30.");
        assertThat(letter.recentTreatment()).isTrue();
        assertThat(letter.head().about()).contains("58 of 61 jars read");
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void carriesTheCautionsInEveryLanguage(Language language) {
        Story.toldTo(site);

        String html = new LetterPrinter().html(letter(language).orElseThrow());

        for (String key : new String[] {"caution.label", "caution.adviser", "caution.zero"}) {
            assertThat(html)
                    .contains(
                            jarwise.render.words.Words.of(language).say(key).replace("'", "&#39;"));
        }
        assertThat(html).doesNotContain("src=", "href=", "url(http", "@import");
    }

    @Test
    @Tag("slow")
    void isOnePageOfEitherPaper() throws Exception {
        Story.toldTo(site);
        for (Paper paper : Paper.values()) {
            byte[] pdf = new LetterPrinter().pdf(letter(Language.FRENCH).orElseThrow(), paper);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).isEqualTo(1);
                assertThat(new PDFTextStripper().getText(document))
                        .contains("Cloudmarsh", "L’étiquette du produit fait loi.");
            }
        }
    }

    @Test
    @Tag("slow")
    void savesTheLetterFromTheCommandLine() throws Exception {
        Story.toldTo(site);
        Path file = folder.resolve("letter.html");

        String answer =
                new SaveReport(InstantSource.fixed(Story.NOW))
                        .run(
                                folder.resolve("data").toString(),
                                file,
                                new SaveReport.Wanted(
                                        Optional.empty(),
                                        Optional.of("FRANOC"),
                                        Optional.of("larva"),
                                        Optional.of("es"),
                                        Paper.A4));

        assertThat(answer).startsWith("Decidir hoy");
        assertThat(Files.readString(file, StandardCharsets.UTF_8).toLowerCase(Locale.ROOT))
                .startsWith("<!doctype html>");
    }

    private Optional<Letter> letter(Language language) {
        return site.writeReport()
                .run(
                        new WriteReport.Request(
                                site.nursery,
                                Optional.empty(),
                                language,
                                Optional.empty(),
                                Story.NOW.atZone(ZoneOffset.UTC)));
    }
}
