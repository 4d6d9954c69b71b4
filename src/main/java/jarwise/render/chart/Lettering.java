package jarwise.render.chart;

/** Room that words take, guessed without a font, and the hatch that stands where nobody looked. */
public final class Lettering {

    private Lettering() {}

    /** {@return the width of a text in a plain sans, px; rather too wide than too narrow} */
    public static double width(String text, double fontSize) {
        double units = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if ("ijl.,:;'‘’|!I".indexOf(c) >= 0) {
                units += 0.26;
            } else if ("mwMW%".indexOf(c) >= 0) {
                units += 0.86;
            } else if (Character.isUpperCase(c)) {
                units += 0.7;
            } else {
                units += Character.isWhitespace(c) || "ftr-()/".indexOf(c) >= 0 ? 0.34 : 0.56;
            }
        }
        return units * fontSize;
    }

    /** Slanted strokes, 9 px apart and 14 px high, standing on {@code foot}. */
    public static void hatch(Svg svg, double from, double to, double foot, Palette palette) {
        StringBuilder d = new StringBuilder();
        for (double x = from; x + 8 <= to; x += 9) {
            d.append('M').append(Svg.at(x, foot)).append("l8 -14");
        }
        if (d.length() > 0) {
            svg.path(d.toString(), "stroke", palette.edge(), "stroke-width", 1.1, "fill", "none");
        }
    }
}
