package jarwise.render.label;

import jarwise.render.report.Fonts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A document under construction with two embedded fonts. The same calls give the same bytes. */
final class Pdf implements AutoCloseable {

    static final double POINTS_PER_MM = 72 / 25.4;

    private final PDDocument document = new PDDocument();
    private final Face plain = new Face(false);
    private final Face bold = new Face(true);

    Pdf(String title) {
        document.setDocumentId(0L);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setProducer("Jarwise");
    }

    /** One weight: what it can write, and its embedded form. */
    private final class Face {
        private final CmapLookup characters;
        private final PDType0Font font;

        Face(boolean heavy) {
            try {
                TrueTypeFont read =
                        new TTFParser().parse(new RandomAccessReadBuffer(Fonts.plain(heavy)));
                characters = read.getUnicodeCmapLookup();
                font = PDType0Font.load(document, read, true);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Begins a page; the one before is finished. */
    Drawing page(double widthMm, double heightMm) {
        PDPage page =
                new PDPage(
                        new PDRectangle(
                                (float) (widthMm * POINTS_PER_MM),
                                (float) (heightMm * POINTS_PER_MM)));
        document.addPage(page);
        return new Drawing(this, page, heightMm);
    }

    PDDocument document() {
        return document;
    }

    PDType0Font font(Type type) {
        return face(type).font;
    }

    private Face face(Type type) {
        return type.bold() ? bold : plain;
    }

    /** {@return the text with a question mark for what the font cannot write} */
    String writable(String text, Type type) {
        StringBuilder kept = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .map(Pdf::plainSpace)
                .map(c -> face(type).characters.getGlyphId(c) > 0 ? c : '?')
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static int plainSpace(int character) {
        return Character.isWhitespace(character) || Character.isSpaceChar(character)
                ? ' '
                : character;
    }

    /** {@return width of a text, mm} */
    double width(String text, Type type) {
        try {
            float units = font(type).getStringWidth(writable(text, type));
            return units / 1000 * type.points() / POINTS_PER_MM;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    byte[] bytes() {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
