package jarwise.render.chart;

import jarwise.decision.Verdict;

/**
 * Marks of a verdict. Each carries the line, and its place against the line is the meaning: a
 * hollow triangle hangs under it, a solid one stands on it, a lozenge sits across it. Never without
 * words.
 */
public final class VerdictMarks {

    private VerdictMarks() {}

    /** {@return the mark of a verdict, 29 px wide, for the desk} */
    public static String draw(Verdict verdict) {
        return draw(verdict, 29, Palette.DESK);
    }

    /** {@return the mark of a verdict} */
    public static String draw(Verdict verdict, double width, Palette palette) {
        Svg svg = start(width);
        double line =
                switch (verdict) {
                    case BELOW_THE_LINE -> 5;
                    case ABOVE_THE_LINE -> 15;
                    case CANNOT_TELL -> 10;
                };
        svg.line(1, line, 25, line, "stroke", palette.ink(), "stroke-width", 1.8);
        switch (verdict) {
            case BELOW_THE_LINE -> outlined(svg, "M7.5 8.6H18.5L13 17.6Z", "none", palette);
            case ABOVE_THE_LINE ->
                    svg.path(
                            "M7 11.8H19L13 1.8Z",
                            "fill",
                            palette.ink(),
                            "stroke",
                            palette.ink(),
                            "stroke-linejoin",
                            "round");
            case CANNOT_TELL -> {
                outlined(svg, "M13 2.6L20 10L13 17.4L6 10Z", palette.inside(), palette);
                svg.line(6, 10, 20, 10, "stroke", palette.ink(), "stroke-width", 1.8);
            }
        }
        return svg.end();
    }

    /** {@return the hatch: not sampled or not read, no line} */
    public static String unknown(double width, Palette palette) {
        return start(width)
                .path(
                        "M1 18L9 2M7 18L15 2M13 18L21 2M19 18L25 6",
                        "stroke",
                        palette.ink(),
                        "stroke-width",
                        1.5,
                        "fill",
                        "none")
                .end();
    }

    /** {@return the tick of a treatment that did what it was for} */
    public static String worked(double width, Palette palette) {
        return stroke(width, palette, "M5 10.5L11 16.5L22 3.5");
    }

    /** {@return the cross of a treatment that did not} */
    public static String failed(double width, Palette palette) {
        return stroke(width, palette, "M6.5 3.5L19.5 16.5M19.5 3.5L6.5 16.5");
    }

    /** {@return the angle that opens to the smaller: the first of a pair carries more} */
    public static String more(double width, Palette palette) {
        return stroke(width, palette, "M8 3L15 10L8 17");
    }

    /** {@return the angle that opens to the greater: the first of a pair carries fewer} */
    public static String fewer(double width, Palette palette) {
        return stroke(width, palette, "M18 3L11 10L18 17");
    }

    private static String stroke(double width, Palette palette, String d) {
        return start(width)
                .path(
                        d,
                        "fill",
                        "none",
                        "stroke",
                        palette.ink(),
                        "stroke-width",
                        2.6,
                        "stroke-linecap",
                        "round",
                        "stroke-linejoin",
                        "round")
                .end();
    }

    private static Svg start(double width) {
        return Svg.decoration(width, Math.rint(width * 20 / 26), "0 0 26 20");
    }

    private static void outlined(Svg svg, String d, String fill, Palette palette) {
        svg.path(
                d,
                "fill",
                fill,
                "stroke",
                palette.ink(),
                "stroke-width",
                1.8,
                "stroke-linejoin",
                "round");
    }
}
