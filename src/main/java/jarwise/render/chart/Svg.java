package jarwise.render.chart;

import jarwise.base.InvalidInput;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes one picture. Everything that goes in is escaped; numbers are written with one decimal, or
 * two below a length of 10 in drawings with small units; there are presentation attributes only, so
 * that a page may forbid inline styles.
 */
public final class Svg {

    private final StringBuilder out = new StringBuilder(1024);
    private final Deque<String> open = new ArrayDeque<>();

    private Svg(double width, double height, String viewBox) {
        out.append("<svg");
        attributes(
                "xmlns", "http://www.w3.org/2000/svg",
                "width", width,
                "height", height,
                "viewBox", viewBox,
                "font-family", "Liberation Sans,Arial,Helvetica,sans-serif");
    }

    /** A picture that says something: {@code label} is what it says to those who do not see it. */
    public static Svg picture(double width, double height, String label) {
        Svg svg = new Svg(width, height, "0 0 %s %s".formatted(number(width), number(height)));
        svg.attributes("role", "img", "aria-label", label);
        svg.out.append('>');
        return svg;
    }

    /** A picture in which single parts can be reached; {@code label} says what it is. */
    public static Svg stage(double width, double height, String label) {
        Svg svg = new Svg(width, height, "0 0 %s %s".formatted(number(width), number(height)));
        svg.attributes("role", "group", "aria-label", label);
        svg.out.append('>');
        return svg;
    }

    /** A drawing beside words that say the same. */
    public static Svg decoration(double width, double height, String viewBox) {
        Svg svg = new Svg(width, height, viewBox);
        svg.attributes("aria-hidden", "true");
        svg.out.append('>');
        return svg;
    }

    public Svg open(String name, Object... attributes) {
        out.append('<').append(name);
        attributes(attributes);
        out.append('>');
        open.push(name);
        return this;
    }

    public Svg close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    public Svg element(String name, Object... attributes) {
        out.append('<').append(name);
        attributes(attributes);
        out.append("/>");
        return this;
    }

    /** A group that shows {@code title} as its tooltip. */
    public Svg group(String title, Object... attributes) {
        open("g", attributes);
        return open("title").write(title).close();
    }

    public Svg path(String d, Object... attributes) {
        out.append("<path");
        attributes("d", d);
        attributes(attributes);
        out.append("/>");
        return this;
    }

    public Svg line(double x1, double y1, double x2, double y2, Object... attributes) {
        String end = x1 == x2 ? "V" + number(y2) : y1 == y2 ? "H" + number(x2) : "L" + at(x2, y2);
        return path("M" + at(x1, y1) + end, attributes);
    }

    public Svg rect(double x, double y, double width, double height, Object... attributes) {
        out.append("<rect");
        attributes("x", x, "y", y, "width", width, "height", height);
        attributes(attributes);
        out.append("/>");
        return this;
    }

    public Svg circle(double x, double y, double radius, Object... attributes) {
        out.append("<circle");
        attributes("cx", x, "cy", y, "r", radius);
        attributes(attributes);
        out.append("/>");
        return this;
    }

    public Svg text(double x, double y, String text, Object... attributes) {
        out.append("<text");
        attributes("x", x, "y", y);
        attributes(attributes);
        out.append('>');
        write(text);
        out.append("</text>");
        return this;
    }

    public Svg write(String text) {
        out.append(escaped(text));
        return this;
    }

    /** Puts in a finished drawing of this writer as it is. */
    public Svg drawing(String finished) {
        out.append(finished);
        return this;
    }

    /** {@return the finished text} */
    public String end() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("Not closed: " + open);
        }
        return out.append("</svg>").toString();
    }

    private void attributes(Object... pairs) {
        for (int i = 0; i < pairs.length; i += 2) {
            Object value = pairs[i + 1];
            String text = value instanceof Number n ? number(n.doubleValue()) : value.toString();
            out.append(' ').append(pairs[i]).append("=\"").append(escaped(text)).append('"');
        }
    }

    /** {@return a pair of numbers for a path} */
    public static String at(double x, double y) {
        return number(x) + " " + number(y);
    }

    /** {@return a length with at most two decimals, without trailing zeros, never in a locale} */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new InvalidInput("A length in a picture is %s.".formatted(value));
        }
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\t', '\n', '\r' -> safe.append(' ');
                default -> {
                    // The rest of the control characters may not stand in XML at all.
                    if (c >= 0x20 && c != 0xFFFE && c != 0xFFFF) {
                        safe.append(c);
                    }
                }
            }
        }
        return safe.toString();
    }
}
