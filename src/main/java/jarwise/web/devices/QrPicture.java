package jarwise.web.devices;

import jarwise.render.label.QrCode;

/** An address as a square that a phone's camera reads, for a page. */
final class QrPicture {

    private QrPicture() {}

    /**
     * {@return the picture as SVG}
     *
     * @param text what the phone reads
     * @param module side of one little square, pixels
     * @param label what it says to those who do not see it
     */
    static String of(String text, int module, String label) {
        QrCode code = QrCode.of(text);
        int modules = code.size() + 2 * QrCode.QUIET;
        return """
        <svg xmlns="http://www.w3.org/2000/svg" width="%1$d" height="%1$d" viewBox="0 0 %2$d %2$d" \
        role="img" aria-label="%4$s"><rect width="%2$d" height="%2$d" fill="#fff"/>\
        <path transform="translate(%3$d %3$d)" shape-rendering="crispEdges" d="%5$s"/></svg>\
        """
                .formatted(modules * module, modules, QrCode.QUIET, escaped(label), code.svgPath());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
    }
}
