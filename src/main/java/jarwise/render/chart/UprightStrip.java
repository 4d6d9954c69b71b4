package jarwise.render.chart;

import jarwise.pest.StageMark;
import jarwise.render.words.Interval;
import java.util.Optional;

/**
 * A strip stood on end, for trends: the same bar, dot and open bar with a cap.
 *
 * @param axis the upright axis
 * @param top y of the upper end
 * @param foot y of the lower end
 * @param bar width of the bar
 * @param dot radius of the dot
 * @param palette colours of the medium
 */
record UprightStrip(Axis axis, double top, double foot, double bar, double dot, Palette palette) {

    double at(double value) {
        return axis.scale(foot, top).at(axis.amount(value));
    }

    /** Whether the estimate has a place on the axis. */
    boolean holds(double value) {
        double amount = axis.amount(value);
        LogScale scale = axis.scale(foot, top);
        return !scale.pastEnd(amount) && !scale.beforeStart(amount);
    }

    void draw(Svg svg, double x, Interval interval, Optional<StageMark> mark) {
        if (interval instanceof Interval.Found found) {
            found(svg, x, found, mark);
        } else if (interval instanceof Interval.NoneFound none) {
            boolean bounded = none.upper().isPresent() && holds(none.upper().getAsDouble());
            open(svg, x, bounded ? at(none.upper().getAsDouble()) : top, foot, bounded);
        } else if (interval instanceof Interval.AtLeast atLeast) {
            open(svg, x, at(atLeast.lower()), top, true);
        }
    }

    private void found(Svg svg, double x, Interval.Found found, Optional<StageMark> mark) {
        boolean pastTop = found.upper().isEmpty() || !(found.upper().getAsDouble() <= axis.to());
        double high = pastTop ? top + 8 : at(found.upper().getAsDouble());
        svg.rect(
                x - bar / 2,
                high,
                bar,
                Math.max(0, at(found.lower()) - high),
                "fill",
                palette.ink(),
                "fill-opacity",
                ".24");
        if (pastTop) {
            svg.path(
                    "M%sl%s 7h%sz"
                            .formatted(
                                    Svg.at(x, top), Svg.number(bar * 0.45), Svg.number(-bar * 0.9)),
                    "fill",
                    palette.ink());
        }
        if (holds(found.estimate())) {
            StageMarks.point(svg, mark, x, at(found.estimate()), dot, palette);
        }
    }

    /** Two rails from the cap to the edge; a bound off the axis has no cap. */
    private void open(Svg svg, double x, double cap, double edge, boolean capped) {
        double half = bar * 0.43;
        svg.path(
                "M%sV%sM%sV%s"
                        .formatted(
                                Svg.at(x - half, edge), Svg.number(cap),
                                Svg.at(x + half, edge), Svg.number(cap)),
                "stroke",
                palette.ink(),
                "stroke-width",
                1.3,
                "fill",
                "none");
        if (!capped) {
            return;
        }
        double reach = bar * 0.75;
        svg.line(x - reach, cap, x + reach, cap, "stroke", palette.ink(), "stroke-width", 2.6);
        double way = Math.signum(edge - cap);
        double wing = bar * 0.26;
        if (Math.abs(edge - cap) > 14 && bar > 6) {
            svg.path(
                    "M%sh%sl%s %sz"
                            .formatted(
                                    Svg.at(x - wing, cap + way * 5),
                                    Svg.number(2 * wing),
                                    Svg.number(-wing),
                                    Svg.number(way * wing * 1.9)),
                    "fill",
                    palette.inside(),
                    "stroke",
                    palette.ink(),
                    "stroke-width",
                    1.2,
                    "stroke-linejoin",
                    "round");
        }
    }
}
