package jarwise.render.map;

import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;

/** Slanted lines over a whole rectangle: nobody looked there. */
final class Hatch {

    private static final double APART = 8;

    private Hatch() {}

    static void draw(Svg svg, Box box, Palette palette) {
        svg.rect(box.x(), box.y(), box.width(), box.height(), "fill", palette.paper());
        StringBuilder d = new StringBuilder();
        double height = box.height();
        for (double start = APART - height; start < box.width(); start += APART) {
            double from = Math.max(0, start);
            double to = Math.min(box.width(), start + height);
            if (to > from) {
                d.append('M')
                        .append(Svg.at(box.x() + from, box.bottom() - (from - start)))
                        .append('L')
                        .append(Svg.at(box.x() + to, box.bottom() - (to - start)));
            }
        }
        if (d.length() > 0) {
            svg.path(d.toString(), "stroke", palette.edge(), "stroke-width", 1.1, "fill", "none");
        }
    }
}
