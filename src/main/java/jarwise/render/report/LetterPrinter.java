package jarwise.render.report;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Prints letters: as PDF on one sheet, or as HTML that stands alone (fonts and pictures inside, no
 * reference to anything outside), reads on a phone and prints on one sheet of either paper.
 */
public final class LetterPrinter {

    static {
        // The library tells of every font it loads; a scout has no use for that.
        XRLog.setLoggingEnabled(false);
    }

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);
    private final String style = new String(stylesheet(), StandardCharsets.UTF_8);

    /** {@return the letter as HTML} */
    public String html(Letter letter) {
        // What fits the lower of the two papers at full width fits both.
        Fit fit = fitting(letter, Paper.LETTER).fit();
        return html(letter, fit, Fonts.css() + style);
    }

    /** {@return the letter as PDF, one page} */
    public byte[] pdf(Letter letter, Paper paper) {
        return fitting(letter, paper).pdf().toByteArray();
    }

    private record Fitted(Fit fit, ByteArrayOutputStream pdf) {}

    /** Says less, step by step, until the letter is one page. */
    private Fitted fitting(Letter letter, Paper paper) {
        String css = paper.pageRule() + onlyPrinted(style);
        for (Fit fit : Fit.STEPS) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            if (print(html(letter, fit, css), out) == 1) {
                return new Fitted(fit, out);
            }
        }
        throw new IllegalStateException("The letter does not fit on one page of " + paper);
    }

    private static int print(String html, ByteArrayOutputStream out) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        Fonts.register(builder);
        try (BatikSVGDrawer svg = new BatikSVGDrawer()) {
            builder.useSVGDrawer(svg);
            // Nothing outside the letter is ever fetched.
            builder.useUriResolver((base, uri) -> null);
            builder.withHtmlContent(html, null);
            builder.withProducer("Jarwise");
            builder.toStream(out);
            try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
                renderer.createPDFWithoutClosing();
                try (PDDocument document = renderer.getPdfDocument()) {
                    document.save(out);
                    return document.getNumberOfPages();
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String html(Letter letter, Fit fit, String css) {
        StringOutput out = new StringOutput();
        engine.render("report/letter.jte", new LetterPage(letter, fit, css), out);
        return out.toString();
    }

    /** The PDF library takes a screen's rules for its own: they are cut off. */
    private static String onlyPrinted(String css) {
        int screen = css.indexOf("@media");
        return screen < 0 ? css : css.substring(0, screen);
    }

    private static byte[] stylesheet() {
        try (var in = LetterPrinter.class.getResourceAsStream("/report/letter.css")) {
            return java.util.Objects.requireNonNull(in).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
