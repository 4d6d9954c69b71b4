package jarwise.render.round;

import jarwise.render.chart.Axis;
import jarwise.render.chart.Lettering;
import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;
import jarwise.render.round.Curves.Line;
import jarwise.render.round.Curves.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Draws curves: names stand beside their ends at the desk and under the plot on the phone.
 *
 * @param width of the whole picture
 * @param narrow whether names stand under the plot
 * @param palette colours of the medium
 */
public record CurveChart(double width, boolean narrow, Palette palette) {

    private static final double PLOT = 250;
    private static final double NAMES = 176;
    private static final double LINE = 20;
    private static final double LETTERS = 14;

    /** {@return curves for the column of a desk page} */
    public static CurveChart desk() {
        return new CurveChart(760, false, Palette.DESK);
    }

    /** {@return curves for a phone} */
    public static CurveChart phone() {
        return new CurveChart(328, true, Palette.PHONE);
    }

    /**
     * Draws.
     *
     * @param curves what to draw
     * @param label what the picture shows, for those who do not see it
     * @return the picture
     */
    public String draw(Curves curves, String label) {
        double left = 52;
        double right = width - (narrow ? 12 : NAMES);
        double top = curves.at().isPresent() ? 56 : 36;
        double foot = top + PLOT;
        double legend = narrow ? curves.lines().size() * LINE + 8 : 0;
        Frame frame = new Frame(left, right, top, foot);
        Svg svg = Svg.picture(width, foot + 50 + legend, label);
        text(svg, 0, 15, curves.up().title(), palette.quiet(), "start");
        grid(svg, curves, frame);
        curves.at().ifPresent(tick -> upright(svg, curves, frame, tick));
        curves.lines().forEach(line -> curve(svg, curves, frame, line));
        if (narrow) {
            legend(svg, curves.lines(), foot + 62);
        } else {
            names(svg, curves, frame);
        }
        return svg.end();
    }

    /** The plot inside the picture. */
    private record Frame(double left, double right, double top, double foot) {

        double x(Curves curves, double value) {
            return left + (right - left) * curves.across().share(value);
        }

        double y(Curves curves, double value) {
            return foot - (foot - top) * curves.up().share(value);
        }
    }

    private void grid(Svg svg, Curves curves, Frame frame) {
        for (Axis.Tick tick : curves.up().ticks()) {
            double y = frame.y(curves, tick.value());
            svg.line(frame.left, y, frame.right, y, "stroke", palette.pencil());
            text(svg, frame.left - 8, y + 5, tick.text(), palette.quiet(), "end");
        }
        double free = Double.NEGATIVE_INFINITY;
        for (Axis.Tick tick : curves.across().ticks()) {
            double x = frame.x(curves, tick.value());
            svg.line(x, frame.top, x, frame.foot, "stroke", palette.pencil());
            double half = Lettering.width(tick.text(), LETTERS) / 2;
            if (x - half > free) {
                text(svg, x, frame.foot + 20, tick.text(), palette.quiet(), "middle");
                free = x + half + 6;
            }
        }
        svg.line(frame.left, frame.foot, frame.right, frame.foot, "stroke", palette.edge());
        text(svg, frame.left, frame.foot + 42, curves.across().title(), palette.quiet(), "start");
    }

    private void upright(Svg svg, Curves curves, Frame frame, Axis.Tick tick) {
        double x = frame.x(curves, tick.value());
        svg.line(
                x,
                frame.top - 12,
                x,
                frame.foot,
                "stroke",
                palette.ink(),
                "stroke-width",
                1.4,
                "stroke-dasharray",
                "6 4");
        double half = Lettering.width(tick.text(), LETTERS) / 2;
        double middle = Math.min(width - half, Math.max(half, x));
        text(svg, middle, frame.top - 18, tick.text(), palette.ink(), "middle");
    }

    private void curve(Svg svg, Curves curves, Frame frame, Line line) {
        StringBuilder d = new StringBuilder();
        for (Point point : line.points()) {
            d.append(d.length() == 0 ? 'M' : 'L')
                    .append(Svg.at(frame.x(curves, point.x()), frame.y(curves, point.y())));
        }
        List<Object> stroke = stroke(line);
        svg.path(d.toString(), stroke.toArray());
        for (Point point : line.points()) {
            if (!point.tip().isEmpty()) {
                svg.group(point.tip());
                svg.circle(
                        frame.x(curves, point.x()),
                        frame.y(curves, point.y()),
                        5,
                        "fill",
                        palette.ink(),
                        "stroke",
                        palette.paper(),
                        "stroke-width",
                        1.5);
                svg.close();
            }
        }
    }

    private List<Object> stroke(Line line) {
        List<Object> stroke = new ArrayList<>();
        stroke.addAll(List.of("fill", "none", "stroke", palette.ink()));
        stroke.addAll(List.of("stroke-width", line.stroke().width()));
        if (!line.stroke().dashes().isEmpty()) {
            stroke.addAll(List.of("stroke-dasharray", line.stroke().dashes()));
        }
        return stroke;
    }

    /** Names beside the ends of their lines, pushed apart where ends lie together. */
    private void names(Svg svg, Curves curves, Frame frame) {
        List<Line> byHeight = new ArrayList<>(curves.lines());
        byHeight.sort(Comparator.comparingDouble(line -> frame.y(curves, last(line).y())));
        double free = frame.top - LINE;
        for (Line line : byHeight) {
            double y = Math.max(free + LINE, frame.y(curves, last(line).y()) + 5);
            text(svg, frame.right + 10, y, line.name(), palette.ink(), "start");
            free = y;
        }
    }

    private static Point last(Line line) {
        return line.points().get(line.points().size() - 1);
    }

    private void legend(Svg svg, List<Line> lines, double from) {
        double y = from;
        for (Line line : lines) {
            svg.path("M0 " + Svg.number(y - 5) + "H40", stroke(line).toArray());
            text(svg, 50, y, line.name(), palette.ink(), "start");
            y += LINE;
        }
    }

    private static void text(Svg svg, double x, double y, String text, String ink, String anchor) {
        svg.text(x, y, text, "font-size", LETTERS, "fill", ink, "text-anchor", anchor);
    }
}
