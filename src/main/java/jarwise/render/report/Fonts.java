package jarwise.render.report;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;

/** The two voices of the letter, both open: a book face for sentences, a plain one for figures. */
public final class Fonts {

    private record Face(String family, int weight, String file) {}

    private static final List<Face> FACES =
            List.of(
                    new Face("Gentium Book Plus", 400, "gentium-book-plus-latin-400-normal.woff"),
                    new Face("Gentium Book Plus", 700, "gentium-book-plus-latin-700-normal.woff"),
                    new Face("Arimo", 400, "arimo-latin-400-normal.woff"),
                    new Face("Arimo", 700, "arimo-latin-700-normal.woff"),
                    // Charts name the metric twin of Arimo, which is on most computers.
                    new Face("Liberation Sans", 400, "arimo-latin-400-normal.woff"),
                    new Face("Liberation Sans", 700, "arimo-latin-700-normal.woff"));

    private Fonts() {}

    /** {@return the plain face, regular or bold, as the PDF library reads it} */
    public static byte[] plain(boolean bold) {
        return Woff.unpacked(read(FACES.get(bold ? 3 : 2).file));
    }

    /** Embeds what the letter uses of each face into a PDF. */
    static void register(PdfRendererBuilder builder) {
        for (Face face : FACES) {
            byte[] font = Woff.unpacked(read(face.file));
            builder.useFont(
                    () -> new ByteArrayInputStream(font),
                    face.family,
                    face.weight,
                    FontStyle.NORMAL,
                    true,
                    EnumSet.of(FSFontUseCase.DOCUMENT, FSFontUseCase.SVG));
        }
    }

    /** {@return rules that carry the fonts inside the page} */
    static String css() {
        StringBuilder css = new StringBuilder();
        for (Face face : FACES.subList(0, 4)) {
            css.append("@font-face{font-family:\"").append(face.family);
            css.append("\";font-weight:").append(face.weight);
            css.append(";src:url(data:font/woff;base64,");
            css.append(Base64.getEncoder().encodeToString(read(face.file)));
            css.append(") format(\"woff\")}\n");
        }
        return css.toString();
    }

    static byte[] read(String file) {
        try (InputStream in = Fonts.class.getResourceAsStream("/fonts/" + file)) {
            return Objects.requireNonNull(in, file).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
