package jarwise.render.round;

import jarwise.render.chart.Axis;
import java.util.List;
import java.util.Optional;

/**
 * Curves over one scale, each with its name.
 *
 * @param across what goes along the foot
 * @param up what goes up
 * @param lines at least one
 * @param at an upright rule, such as the density asked for; empty for none
 */
public record Curves(Scale across, Scale up, List<Line> lines, Optional<Axis.Tick> at) {

    public Curves {
        lines = List.copyOf(lines);
    }

    /**
     * One of the two scales.
     *
     * @param title what is measured, with its unit
     * @param from value at its start
     * @param to value at its end
     * @param byRatio whether equal ratios have equal lengths
     * @param ticks named values
     */
    public record Scale(
            String title, double from, double to, boolean byRatio, List<Axis.Tick> ticks) {

        public Scale {
            ticks = List.copyOf(ticks);
        }

        /** {@return where a value stands, as a share of the length; values off it at its ends} */
        double share(double value) {
            double share =
                    byRatio
                            ? Math.log(Math.max(value, from) / from) / Math.log(to / from)
                            : (value - from) / (to - from);
            return Math.min(1, Math.max(0, share));
        }
    }

    /** How a line is drawn, so that no colour is needed to tell them apart. */
    public enum Stroke {
        WHOLE("", 2.6),
        DASHED("9 5", 2),
        DOTTED("2 5", 2.2);

        private final String dashes;
        private final double width;

        Stroke(String dashes, double width) {
            this.dashes = dashes;
            this.width = width;
        }

        String dashes() {
            return dashes;
        }

        double width() {
            return width;
        }
    }

    /**
     * A curve.
     *
     * @param name beside it
     * @param stroke how it is drawn
     * @param points in order along the foot
     */
    public record Line(String name, Stroke stroke, List<Point> points) {

        public Line {
            points = List.copyOf(points);
        }
    }

    /**
     * A point of a curve.
     *
     * @param x along the foot
     * @param y up
     * @param tip its values in words; empty where it has no mark of its own
     */
    public record Point(double x, double y, String tip) {}
}
