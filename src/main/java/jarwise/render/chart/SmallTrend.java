package jarwise.render.chart;

import jarwise.render.chart.Trend.Round;
import jarwise.render.chart.Trend.Treatment;
import jarwise.render.words.Days;
import jarwise.render.words.Interval;
import jarwise.render.words.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The trend of one place for the letter: the first and the last day, the line, treatments by their
 * group. Up to three stand beside each other; only the first carries the scale.
 *
 * @param axis shared by all of a letter
 * @param words the language of what is written on it
 */
public record SmallTrend(Axis axis, Words words) {

    private static final Palette PALETTE = Palette.PRINT;
    private static final double TOP = 30;
    private static final double FOOT = 126;
    private static final double HEIGHT = 148;

    /**
     * Something that happened here, such as pots set in.
     *
     * @param day when
     * @param name in two words
     */
    public record Happening(LocalDate day, String name) {}

    /**
     * Draws one.
     *
     * @param trend the place
     * @param happening what happened there, if anything
     * @param withScale whether the figures of the axis stand on the left
     * @return the picture
     */
    public String draw(Trend trend, Optional<Happening> happening, boolean withScale) {
        double left = withScale ? 34 : 6;
        double width = left + 200;
        double right = width - 2;
        String label =
                (trend.place() + " " + trend.note()).trim()
                        + ". "
                        + trend.rounds().get(trend.rounds().size() - 1).tip();
        Svg svg = Svg.picture(width, HEIGHT, label);
        title(svg, trend, left);
        TimeAxis time =
                new TimeAxis(trend.rounds().stream().map(Round::day).toList(), left + 9, right - 8);
        double bar = Math.min(7, time.step() * 0.6);
        UprightStrip strip =
                new UprightStrip(axis, TOP, FOOT, bar, Math.min(3, bar * 0.45), PALETTE);
        grid(svg, strip, left, right, withScale);
        for (Treatment treatment : trend.treatments()) {
            treatment(svg, treatment, time.at(treatment.at()));
        }
        thread(svg, trend.rounds(), time, strip);
        for (Round round : trend.rounds()) {
            strip.draw(svg, time.at(round.day()), round.interval(), Optional.empty());
            if (round.interval() instanceof Interval.NotSampled
                    || round.interval() instanceof Interval.NotRead) {
                double x = time.at(round.day());
                svg.line(x - 3, FOOT - 2, x + 3, FOOT - 11, "stroke", PALETTE.edge());
            }
        }
        days(svg, time, left, right);
        happening.ifPresent(h -> happening(svg, h, time));
        return svg.end();
    }

    private static void title(Svg svg, Trend trend, double left) {
        svg.text(
                left,
                12,
                trend.place(),
                "font-size",
                12.5,
                "font-weight",
                "700",
                "fill",
                PALETTE.ink());
        svg.text(
                left + Lettering.width(trend.place(), 12.5) * 1.08 + 4,
                12,
                trend.note(),
                "font-size",
                12.5,
                "fill",
                PALETTE.ink());
    }

    private void grid(Svg svg, UprightStrip strip, double left, double right, boolean withScale) {
        for (Axis.Tick tick : axis.ticks()) {
            double y = strip.at(tick.value());
            boolean nearLine =
                    axis.line().isPresent()
                            && Math.abs(strip.at(axis.line().get().value()) - y) < 12;
            if (!nearLine) {
                svg.line(left, y, right, y, "stroke", PALETTE.pencil(), "stroke-width", 0.8);
                figure(svg, left - 5, y + 4, withScale ? tick.text() : "", PALETTE.quiet(), "400");
            }
        }
        axis.line()
                .ifPresent(
                        line -> {
                            double y = strip.at(line.value());
                            svg.line(
                                    left,
                                    y,
                                    right,
                                    y,
                                    "stroke",
                                    PALETTE.ink(),
                                    "stroke-width",
                                    1.1,
                                    "stroke-dasharray",
                                    "4 3");
                            String text = withScale ? line.text() : "";
                            figure(svg, left - 5, y + 4, text, PALETTE.ink(), "700");
                        });
        svg.line(left, FOOT, right, FOOT, "stroke", PALETTE.edge(), "stroke-width", 0.8);
    }

    private static void figure(
            Svg svg, double x, double y, String text, String fill, String weight) {
        svg.open("g", "font-size", 11.5, "font-weight", weight, "fill", fill);
        svg.text(x, y, text, "text-anchor", "end").close();
    }

    private static void treatment(Svg svg, Treatment treatment, double x) {
        svg.line(
                x,
                TOP,
                x,
                FOOT,
                "stroke",
                PALETTE.ink(),
                "stroke-width",
                1.3,
                "stroke-dasharray",
                "1.3 3",
                "stroke-linecap",
                "round");
        svg.text(
                x,
                TOP - 3,
                treatment.group(),
                "font-size",
                11.5,
                "fill",
                PALETTE.ink(),
                "text-anchor",
                "middle");
    }

    private static void thread(Svg svg, List<Round> rounds, TimeAxis time, UprightStrip strip) {
        for (int i = 1; i < rounds.size(); i++) {
            if (rounds.get(i - 1).interval() instanceof Interval.Found before
                    && rounds.get(i).interval() instanceof Interval.Found after) {
                svg.line(
                        time.at(rounds.get(i - 1).day()),
                        strip.at(before.estimate()),
                        time.at(rounds.get(i).day()),
                        strip.at(after.estimate()),
                        "stroke",
                        PALETTE.ink(),
                        "stroke-width",
                        0.9);
            }
        }
    }

    private void days(Svg svg, TimeAxis time, double left, double right) {
        Days days = new Days(words);
        svg.open("g", "font-size", 11.5, "fill", PALETTE.quiet());
        svg.text(left + 1, FOOT + 16, days.brief(time.first()));
        if (time.days().size() > 1) {
            svg.text(right, FOOT + 16, days.brief(time.last()), "text-anchor", "end");
        }
        svg.close();
    }

    private static void happening(Svg svg, Happening happening, TimeAxis time) {
        double x = time.at(happening.day());
        svg.path("M%sl-4 7h8z".formatted(Svg.at(x, FOOT)), "fill", PALETTE.ink());
        svg.text(
                x,
                FOOT + 18,
                happening.name(),
                "font-size",
                11.5,
                "fill",
                PALETTE.ink(),
                "text-anchor",
                "middle");
    }
}
