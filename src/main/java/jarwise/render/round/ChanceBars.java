package jarwise.render.round;

import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;
import java.util.List;

/**
 * Chances as bars from one edge, each with its name and figure.
 *
 * @param width of the whole picture
 * @param palette colours of the medium
 */
public record ChanceBars(double width, Palette palette) {

    private static final double ROW = 46;
    private static final double FIGURE = 64;

    /**
     * One bar.
     *
     * @param name over it
     * @param share its length, 0 to 1
     * @param figure the share in words
     */
    public record Bar(String name, double share, String figure) {}

    /** {@return bars for the column of a desk page} */
    public static ChanceBars desk() {
        return new ChanceBars(620, Palette.DESK);
    }

    /** {@return bars for a phone} */
    public static ChanceBars phone() {
        return new ChanceBars(328, Palette.PHONE);
    }

    /** {@return the picture; {@code label} says what it shows to those who do not see it} */
    public String draw(List<Bar> bars, String label) {
        Svg svg = Svg.picture(width, bars.size() * ROW + 4, label);
        double longest = width - FIGURE;
        double y = 0;
        for (Bar bar : bars) {
            svg.group(bar.name() + ": " + bar.figure());
            svg.text(0, y + 15, bar.name(), "font-size", 15, "fill", palette.ink());
            svg.rect(0, y + 21, longest, 16, "fill", "none", "stroke", palette.edge());
            svg.rect(0, y + 21, longest * bar.share(), 16, "fill", palette.ink());
            svg.text(
                    width,
                    y + 34,
                    bar.figure(),
                    "font-size",
                    15,
                    "font-weight",
                    "700",
                    "fill",
                    palette.ink(),
                    "text-anchor",
                    "end");
            svg.close();
            y += ROW;
        }
        return svg.end();
    }
}
