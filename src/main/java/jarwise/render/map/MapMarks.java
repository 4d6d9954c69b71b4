package jarwise.render.map;

import jarwise.render.chart.Lettering;
import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;

/** What lies over the benches: hot spots, moves, the bar of the scale. */
final class MapMarks {

    private static final double RING = 8;

    private final Svg svg;
    private final MapSize size;
    private final Palette palette;

    MapMarks(Svg svg, MapSize size, Palette palette) {
        this.svg = svg;
        this.size = size;
        this.palette = palette;
    }

    /** A dot in a ring, with its name on the side where there is room. */
    void hotSpot(Box at, Box house, String name) {
        double x = at.x();
        double y = at.y();
        svg.circle(x, y, RING, "fill", "#FFFFFF", "stroke", palette.ink(), "stroke-width", 1.8);
        svg.circle(x, y, 3, "fill", palette.ink());
        boolean left = x + RING + Lettering.width(name, size.font()) > house.right();
        words(left ? x - RING - 4 : x + RING + 4, y + 4.5, name, left ? "end" : "start");
    }

    /** A dashed way from bench to bench, with what was carried in words. */
    void arrow(Box from, Box to, String words) {
        boolean down = to.y() >= from.bottom();
        double startX = from.middle() + Math.min(6, from.width() / 4);
        double startY = down ? from.bottom() : from.y();
        double endX = to.middle();
        double endY = down ? to.y() : to.bottom();
        double turn = down ? startY + 34 : startY - 34;
        double tip = endY - (down ? 9 : -9);
        String d =
                "M%sV%sH%sV%s"
                        .formatted(
                                Svg.at(startX, startY),
                                Svg.number(turn),
                                Svg.number(endX),
                                Svg.number(tip));
        svg.path(d, "fill", "none", "stroke", "#FFFFFF", "stroke-width", 5);
        svg.path(
                d,
                "fill",
                "none",
                "stroke",
                palette.ink(),
                "stroke-width",
                2,
                "stroke-dasharray",
                "6 4");
        double side = down ? -8 : 8;
        svg.path(
                "M%sl-5 %sh10z".formatted(Svg.at(endX, endY - (down ? 1 : -1)), Svg.number(side)),
                "fill",
                palette.ink());
        double room = Lettering.width(words, size.font());
        boolean before = Math.max(startX, endX) + 8 + room > size.width();
        words(
                before ? Math.min(startX, endX) - 8 : Math.max(startX, endX) + 8,
                turn + 4,
                words,
                before ? "end" : "start");
    }

    void scale(MapPicture.ScaleBar bar, double pxPerMetre, double foot) {
        double length = bar.metres() * pxPerMetre;
        svg.path(
                "M%sv8M%sh%sM%sv8"
                        .formatted(
                                Svg.at(1, foot - 8),
                                Svg.at(1, foot - 4),
                                Svg.number(length),
                                Svg.at(1 + length, foot - 8)),
                "fill",
                "none",
                "stroke",
                palette.ink(),
                "stroke-width",
                1.6);
        words(length + 10, foot, bar.words(), "start");
    }

    private void words(double x, double y, String text, String anchor) {
        svg.open("g", "text-anchor", anchor);
        svg.text(
                        x,
                        y,
                        text,
                        "font-size",
                        size.font(),
                        "fill",
                        palette.ink(),
                        "paint-order",
                        "stroke",
                        "stroke",
                        "#FFFFFF",
                        "stroke-width",
                        4)
                .close();
    }
}
