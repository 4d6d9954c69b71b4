package jarwise.render.label;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.sample.LabelCode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** Made-up jars, and what is on their sheets when these are read again. */
final class Sheets {

    /** What is read where nothing is printed. */
    static final String NO_CODE = "no QR code";

    private static final int DPI = 300;

    private Sheets() {}

    static List<JarLabel> jars(int number) {
        SplittableRandom random = new SplittableRandom(number);
        return IntStream.rangeClosed(1, number)
                .mapToObj(walk -> jar(random, walk, walk == number))
                .toList();
    }

    private static JarLabel jar(SplittableRandom random, int walk, boolean blank) {
        return new JarLabel(
                LabelCode.next(random::nextInt).sampleCode(),
                blank ? "blank" : "H2-B" + (walk % 6 + 1),
                blank ? "" : "Été à Señal ‘Pellam Pink’",
                blank ? 0 : 10,
                walk);
    }

    static LabelJob job(String sheet, double across, double down, int start) {
        Words words = Words.of(Language.ENGLISH);
        return new LabelJob(
                LabelGeometry.named(sheet),
                across,
                down,
                start,
                words,
                "Quillback Lane: labels of round 2026-05-11-a, Mon 11 May 2026",
                List.of(words.say("label.caution.entry"), words.say("label.caution.alcohol")));
    }

    static PDDocument read(byte[] pdf) {
        try {
            return Loader.loadPDF(pdf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(byte[] pdf) {
        try (PDDocument document = read(pdf)) {
            return new PDFTextStripper().getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return all rectangles of a page, as they were drawn, mm from its upper left corner} */
    static List<Box> rectangles(PDDocument document, int page) {
        try {
            double height = document.getPage(page).getMediaBox().getHeight();
            List<Box> boxes = new ArrayList<>();
            List<Double> numbers = new ArrayList<>();
            for (Object token : new PDFStreamParser(document.getPage(page)).parse()) {
                if (token instanceof COSNumber number) {
                    numbers.add((double) number.floatValue());
                } else if (token instanceof Operator operator) {
                    if (operator.getName().equals("re")) {
                        boxes.add(box(numbers, height));
                    }
                    numbers.clear();
                }
            }
            return boxes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Box box(List<Double> points, double height) {
        double mm = 25.4 / 72;
        return new Box(
                points.get(0) * mm,
                (height - points.get(1) - points.get(3)) * mm,
                points.get(2) * mm,
                points.get(3) * mm);
    }

    /** {@return a page as a printer of 300 dots an inch would show it} */
    static BufferedImage printed(PDDocument document, int page) {
        try {
            return new PDFRenderer(document).renderImageWithDPI(page, DPI, ImageType.GRAY);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return what a reader makes of the QR code in a part of a printed page} */
    static String decoded(BufferedImage page, Box part) {
        int x = (int) (part.x() * DPI / 25.4);
        int y = (int) (part.y() * DPI / 25.4);
        int width = (int) (part.width() * DPI / 25.4);
        int height = (int) (part.height() * DPI / 25.4);
        int[] pixels = page.getRGB(x, y, width, height, null, 0, width);
        var light = new RGBLuminanceSource(width, height, pixels);
        try {
            return new QRCodeReader()
                    .decode(
                            new BinaryBitmap(new HybridBinarizer(light)),
                            Map.of(DecodeHintType.TRY_HARDER, true))
                    .getText();
        } catch (NotFoundException e) {
            return NO_CODE;
        } catch (ReaderException e) {
            return "no QR code that can be read: " + e;
        }
    }
}
