package jarwise.render.chart;

import jarwise.render.words.Figures;
import java.util.OptionalDouble;

/**
 * A strip of shares: none at the left end, all at the right, the same scale in every row. A dot on
 * a bar is what was measured, an upright stroke the value that is in use.
 *
 * @param size measures for the desk or the phone
 * @param palette colours of the medium
 * @param figures writes the scale
 */
public record ShareStrip(Strip.Size size, Palette palette, Figures figures) {

    private static final double BAR = 10;
    private static final double STROKE = 26;
    private static final double[] TICKS = {0, 0.25, 0.5, 0.75, 1};

    /**
     * A share and its limits.
     *
     * @param estimate 0 to 1
     * @param lower 0 to {@code upper}
     * @param upper up to 1
     * @param inUse the value that corrects densities now
     */
    public record Share(double estimate, double lower, double upper, OptionalDouble inUse) {}

    /** {@return strips for a table at the desk} */
    public static ShareStrip desk(Figures figures) {
        return new ShareStrip(Strip.Size.DESK.withHeight(130), Palette.DESK, figures);
    }

    /** {@return strips for a phone} */
    public static ShareStrip phone(Figures figures) {
        return new ShareStrip(Strip.Size.PHONE, Palette.PHONE, figures);
    }

    /** {@return the head of the column: the scale with its figures} */
    public String head() {
        double width = size.width();
        double foot = size.headHeight();
        Svg svg =
                Svg.decoration(
                        width, foot, "0 0 %s %s".formatted(Svg.number(width), Svg.number(foot)));
        for (double tick : TICKS) {
            double x = at(tick);
            svg.open(
                    "g",
                    "font-size",
                    size.font(),
                    "text-anchor",
                    tick == 0 ? "start" : tick == 1 ? "end" : "middle");
            svg.text(x, foot - 8, figures.percent(tick), "fill", palette.quiet()).close();
            svg.line(x, foot - 4, x, foot, "stroke", palette.edge());
        }
        return svg.end();
    }

    /**
     * Draws one row.
     *
     * @param share what was measured
     * @param label what the row says to those who do not see it, and its tooltip
     * @return the picture
     */
    public String row(Share share, String label) {
        double y = size.height() / 2;
        Svg svg = Svg.picture(size.width(), size.height(), label);
        for (double tick : TICKS) {
            double x = at(tick);
            svg.line(x, 0, x, size.height(), "stroke", palette.pencil());
        }
        svg.group(label);
        double left = at(share.lower());
        svg.rect(
                left,
                y - BAR / 2,
                Math.max(0, at(share.upper()) - left),
                BAR,
                "fill",
                palette.ink(),
                "fill-opacity",
                ".26");
        share.inUse().ifPresent(value -> inUse(svg, at(value), y));
        svg.circle(at(share.estimate()), y, size.dot(), "fill", palette.ink());
        return svg.close().end();
    }

    private void inUse(Svg svg, double x, double y) {
        svg.line(
                x, y - STROKE / 2, x, y + STROKE / 2, "stroke", palette.ink(), "stroke-width", 2.4);
    }

    private double at(double share) {
        double margin = 2 + size.dot();
        return margin + share * (size.width() - 2 * margin);
    }
}
