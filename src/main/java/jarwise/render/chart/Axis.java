package jarwise.render.chart;

import jarwise.base.Require;
import jarwise.render.words.Figures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a strip or a trend is drawn against: the values at its two ends, the values that are named,
 * and the line to judge by. All rows of a table share one.
 *
 * @param from value at the left or lower end
 * @param to value at the right or upper end
 * @param measure how a value is placed
 * @param ticks named values
 * @param line the value to judge by with its figure; none where there is no threshold
 * @param lineName what that line is called, such as "the line" or "target"
 */
public record Axis(
        double from,
        double to,
        Measure measure,
        List<Tick> ticks,
        Optional<Tick> line,
        String lineName) {

    /** How a value gets its place. */
    public enum Measure {
        /** A density or a ratio: by its logarithm. */
        RATIO,
        /** A share that was taken away: by the logarithm of what is left, so that more is right. */
        SHARE_TAKEN
    }

    /** A value and how it is written. */
    public record Tick(double value, String text) {}

    public Axis {
        ticks = List.copyOf(ticks);
    }

    /**
     * Three decades around an action threshold, so that the line of every pest stands in one place.
     *
     * @param threshold the site's own line, individuals per sampling unit
     * @param figures writes the ticks
     * @return the axis
     */
    public static Axis density(double threshold, Figures figures) {
        Require.positive("action threshold", threshold);
        return density(0.06 * threshold, 60 * threshold, figures)
                .judgedBy(
                        new Tick(threshold, figures.plain(threshold)),
                        figures.words().say("chart.line"));
    }

    /** {@return densities between two ends, with no line to judge by} */
    public static Axis density(double from, double to, Figures figures) {
        List<Tick> ticks = new ArrayList<>();
        for (int power = -6; power <= 6; power++) {
            double value = power < 0 ? 1 / Math.pow(10, -power) : Math.pow(10, power);
            if (value > from && value < to) {
                ticks.add(new Tick(value, figures.plain(value)));
            }
        }
        return new Axis(from, to, Measure.RATIO, ticks, Optional.empty(), "");
    }

    /**
     * Densities divided by each row's own line, for tables of several pests: 1 is the line.
     *
     * @param figures writes the words
     * @return the axis
     */
    public static Axis relativeToTheLine(Figures figures) {
        return new Axis(
                0.006,
                18,
                Measure.RATIO,
                List.of(
                        new Tick(0.01, "1/100"),
                        new Tick(0.1, "1/10"),
                        new Tick(10, figures.words().say("chart.times", "10"))),
                Optional.of(new Tick(1, "1")),
                figures.words().say("chart.line"));
    }

    /** {@return how many times as many: 1 is equal} */
    public static Axis timesAsMany(Figures figures) {
        return new Axis(
                0.08,
                60,
                Measure.RATIO,
                List.of(
                        new Tick(0.1, figures.plain(0.1)),
                        new Tick(10, figures.words().say("chart.times", "10"))),
                Optional.of(new Tick(1, "1")),
                figures.words().say("chart.equal"));
    }

    /**
     * Efficacy as the share taken away, from −200 % to 97 %.
     *
     * @param target the site's target as a share, such as 0.6
     * @param figures writes the ticks
     * @return the axis
     */
    public static Axis efficacy(double target, Figures figures) {
        Require.between("efficacy target", target, 0, 1);
        return new Axis(
                -2,
                0.97,
                Measure.SHARE_TAKEN,
                List.of(
                        new Tick(-1, figures.plain(-100)),
                        new Tick(0, figures.plain(0)),
                        new Tick(0.9, figures.percent(0.9))),
                Optional.of(new Tick(target, figures.plain(100 * target))),
                figures.words().say("chart.target"));
    }

    /** {@return this axis, with a line to judge by} */
    public Axis judgedBy(Tick lineTick, String name) {
        return new Axis(from, to, measure, ticks, Optional.of(lineTick), name);
    }

    /**
     * Makes room for estimates that lie off this axis, by whole decades; limits may run off it.
     *
     * @param figures writes the new ticks
     * @param densities estimates of all rows
     * @return an axis that holds them all
     */
    public Axis including(Figures figures, double... densities) {
        double lowest = from;
        double highest = to;
        for (double density : Arrays.stream(densities).filter(d -> d > 0).toArray()) {
            while (density < lowest * 1.2) {
                lowest /= 10;
            }
            while (density > highest / 1.2) {
                highest *= 10;
            }
        }
        Axis wider = density(lowest, highest, figures);
        return new Axis(lowest, highest, measure, wider.ticks, line, lineName);
    }

    LogScale scale(double start, double end) {
        return new LogScale(amount(from), amount(to), start, end);
    }

    /** What is placed by its logarithm. */
    double amount(double value) {
        return measure == Measure.SHARE_TAKEN ? 1 - value : value;
    }
}
