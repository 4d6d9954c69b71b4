package jarwise.render.label;

import java.util.List;
import java.util.Locale;

/** The first sheet of labels in small, as SVG for a page: which labels are taken, and by what. */
public final class LabelPicture {

    private static final double MODULE = 0.6;

    private LabelPicture() {}

    /** {@return the drawing, one unit a mm; presentation attributes only} */
    public static String svg(List<JarLabel> jars, LabelJob job) {
        LabelGeometry geometry = job.geometry();
        double width = geometry.paper().widthMm();
        double height = geometry.paper().heightMm();
        StringBuilder out = new StringBuilder(8192);
        out.append(
                said(
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.1f %.1f\""
                                + " aria-hidden=\"true\" font-family=\"Liberation"
                                + " Sans,Arial,sans-serif\" fill=\"#17212b\">",
                        width, height));
        out.append(said("<path fill=\"#fff\" stroke=\"#85817a\" d=\"%s\"/>", whole(geometry)));
        for (int i = 0; i < geometry.size(); i++) {
            Box cell = job.cell(i);
            out.append(
                    said(
                            "<rect x=\"%.2f\" y=\"%.2f\" width=\"%.2f\" height=\"%.2f\" rx=\"1.5\""
                                    + " fill=\"none\" stroke=\"#bbb\" stroke-width=\".4\"/>",
                            cell.x(), cell.y(), cell.width(), cell.height()));
        }
        Places.of(jars, geometry, job.start()).stream()
                .filter(one -> one.cell() < geometry.size())
                .forEach(one -> sticker(out, job, one));
        return out.append("</svg>").toString();
    }

    private static String whole(LabelGeometry geometry) {
        return said("M0 0H%.1fV%.1fH0z", geometry.paper().widthMm(), geometry.paper().heightMm());
    }

    private static void sticker(StringBuilder out, LabelJob job, Places.Placed one) {
        Box cell = job.cell(one.cell());
        QrCode code = QrCode.of(one.jar().code().text());
        double module = Math.min(MODULE, (cell.height() - 0.5) / (code.size() + 2 * QrCode.QUIET));
        double across = cell.x() + 0.5 + QrCode.QUIET * module;
        double y = cell.y() + 0.25 + QrCode.QUIET * module;
        out.append(
                said(
                        "<path transform=\"translate(%.2f %.2f) scale(%.3f)\" d=\"%s\"/>",
                        across, y, module, code.svgPath()));
        double x = across + (code.size() + QrCode.QUIET) * module;
        double size = Math.min(5, cell.height() / 3.2);
        String part = job.words().say(one.part().key());
        text(out, new Box(x, y + size * 0.5, 0, size), one.jar().code().text(), "700");
        text(out, new Box(x, y + size * 1.6, 0, size * 0.85), part, "400");
    }

    private static void text(StringBuilder out, Box at, String text, String weight) {
        out.append(
                said(
                        "<text x=\"%.2f\" y=\"%.2f\" font-size=\"%.2f\""
                                + " font-weight=\"%s\">%s</text>",
                        at.x(), at.y(), at.height(), weight, escaped(text)));
    }

    private static String said(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
