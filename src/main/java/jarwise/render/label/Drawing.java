package jarwise.render.label;

import static jarwise.render.label.Pdf.POINTS_PER_MM;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** One page to draw on, in mm from its upper left corner. Ink is black, or grey for fine rules. */
final class Drawing implements AutoCloseable {

    /** Where the control points of a quarter circle lie, as a share of its radius. */
    private static final double QUARTER = 0.5522847498;

    private final Pdf pdf;
    private final double height;
    private final PDPageContentStream out;

    /** A call of the library that may fail to write. */
    private interface Step {
        void run() throws IOException;
    }

    Drawing(Pdf pdf, PDPage page, double height) {
        this.pdf = pdf;
        this.height = height;
        try {
            this.out = new PDPageContentStream(pdf.document(), page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void doing(Step step) {
        try {
            step.run();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static float across(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    private float down(double mm) {
        return (float) ((height - mm) * POINTS_PER_MM);
    }

    double width(String text, Type type) {
        return pdf.width(text, type);
    }

    /** Writes from {@code x} on, on the line at {@code baseline}. */
    void text(double x, double baseline, Type type, String text) {
        doing(
                () -> {
                    out.beginText();
                    out.setFont(pdf.font(type), (float) type.points());
                    out.newLineAtOffset(across(x), down(baseline));
                    out.showText(pdf.writable(text, type));
                    out.endText();
                });
    }

    void textTo(double right, double baseline, Type type, String text) {
        text(right - width(text, type), baseline, type, text);
    }

    void textAt(double middle, double baseline, Type type, String text) {
        text(middle - width(text, type) / 2, baseline, type, text);
    }

    /** Writes into a width: a little smaller where it must, cut off where that is not enough. */
    void fitted(Box line, Type type, String text) {
        Type smaller = type;
        while (width(text, smaller) > line.width() && smaller.points() > type.points() * 0.75) {
            smaller = smaller.times(0.96);
        }
        String shown = text;
        while (width(shown, smaller) > line.width() && shown.length() > 1) {
            shown = shown.substring(0, shown.length() - 2).stripTrailing() + "…";
        }
        text(line.x(), line.bottom(), smaller, shown);
    }

    /** {@return the baseline below the last line of a paragraph, written within a width} */
    double paragraph(Box first, Type type, String text) {
        double baseline = first.y();
        for (String line : lines(text, type, first.width())) {
            text(first.x(), baseline, type, line);
            baseline += first.height();
        }
        return baseline;
    }

    private List<String> lines(String text, Type type, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && width(line + " " + word, type) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    void pen(double widthMm) {
        doing(() -> out.setLineWidth(across(widthMm)));
    }

    void dashed(double... lengths) {
        float[] pattern = new float[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            pattern[i] = across(lengths[i]);
        }
        doing(() -> out.setLineDashPattern(pattern, 0));
    }

    /** Ink for lines: 0 is black, 1 is white. */
    void ink(double grey) {
        doing(() -> out.setStrokingColor((float) grey));
    }

    /** Ink for areas and letters. */
    void fillInk(double grey) {
        doing(() -> out.setNonStrokingColor((float) grey));
    }

    void line(double x1, double y1, double x2, double y2) {
        doing(
                () -> {
                    out.moveTo(across(x1), down(y1));
                    out.lineTo(across(x2), down(y2));
                    out.stroke();
                });
    }

    void frame(Box box) {
        doing(
                () -> {
                    add(box);
                    out.stroke();
                });
    }

    void fill(Box box) {
        fillAll(List.of(box));
    }

    /** Fills rectangles as one path, so that no hair lines stand between neighbours. */
    void fillAll(List<Box> boxes) {
        doing(
                () -> {
                    for (Box box : boxes) {
                        add(box);
                    }
                    out.fill();
                });
    }

    private void add(Box box) throws IOException {
        out.addRect(across(box.x()), down(box.bottom()), across(box.width()), across(box.height()));
    }

    void polygon(boolean filled, double... points) {
        doing(
                () -> {
                    out.moveTo(across(points[0]), down(points[1]));
                    for (int i = 2; i < points.length; i += 2) {
                        out.lineTo(across(points[i]), down(points[i + 1]));
                    }
                    out.closePath();
                    paint(filled);
                });
    }

    void circle(boolean filled, double x, double y, double radius) {
        double c = QUARTER * radius;
        doing(
                () -> {
                    out.moveTo(across(x + radius), down(y));
                    curve(x + radius, y + c, x + c, y + radius, x, y + radius);
                    curve(x - c, y + radius, x - radius, y + c, x - radius, y);
                    curve(x - radius, y - c, x - c, y - radius, x, y - radius);
                    curve(x + c, y - radius, x + radius, y - c, x + radius, y);
                    out.closePath();
                    paint(filled);
                });
    }

    private void curve(double x1, double y1, double x2, double y2, double x, double y)
            throws IOException {
        out.curveTo(across(x1), down(y1), across(x2), down(y2), across(x), down(y));
    }

    private void paint(boolean filled) throws IOException {
        if (filled) {
            out.fillAndStroke();
        } else {
            out.stroke();
        }
    }

    @Override
    public void close() {
        doing(out::close);
    }
}
