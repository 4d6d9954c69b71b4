package jarwise.render.chart;

import jarwise.render.chart.Trend.Round;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.render.words.Interval;
import jarwise.render.words.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * A trend: strips stood on end, one a round, with the line to judge by. Nothing is drawn between
 * rounds, when nobody sampled, but a thin line for the eye, which stops at a zero.
 *
 * @param axis shared by all panels that stand under each other
 * @param size measures for the desk or the phone
 * @param palette colours of the medium
 * @param words the language of what is written on it
 */
public record TrendChart(Axis axis, Size size, Palette palette, Words words) {

    /**
     * Measures in px.
     *
     * @param width whole width
     * @param right end of the plot
     * @param bar width of a bar
     * @param dot radius of a dot
     * @param phone whether names stand under each other rather than beside the plot
     */
    public record Size(double width, double right, double bar, double dot, boolean phone) {
        /** The column of a desk page. */
        public static final Size DESK = new Size(1040, 890, 14, 5.5, false);

        /** The width of a phone. */
        public static final Size PHONE = new Size(328, 316, 12, 5, true);
    }

    private static final double PLOT = 228;
    private static final double LINE = 19;

    /** {@return trends for the desk} */
    public static TrendChart desk(Axis axis, Words words) {
        return new TrendChart(axis, Size.DESK, Palette.DESK, words);
    }

    /** {@return trends for a phone} */
    public static TrendChart phone(Axis axis, Words words) {
        return new TrendChart(axis, Size.PHONE, Palette.PHONE, words);
    }

    /**
     * Draws one panel.
     *
     * @param trend its rounds
     * @param label what the picture shows, for those who do not see it
     * @return the picture
     */
    public String draw(Trend trend, String label) {
        double left = left(trend);
        TimeAxis time =
                new TimeAxis(
                        trend.rounds().stream().map(Round::day).toList(),
                        left + (size.phone ? 14 : 28),
                        size.right - (size.phone ? 12 : 14));
        TreatmentLabels labels =
                TreatmentLabels.place(trend.treatments(), time, !size.phone, words);
        double top = top(trend, labels, left);
        double foot = top + PLOT;
        double rowsFrom = foot + (size.phone ? 36 : LINE + 1);
        double height = rowsFrom + trend.rows().size() * LINE + 8;
        Svg svg = Svg.picture(size.width, height, label);
        title(svg, trend, left);
        double room = Math.min(size.bar, time.step() * 0.6);
        UprightStrip strip =
                new UprightStrip(
                        axis, top, foot, room, Math.min(size.dot, room * 0.45 + 1), palette);
        grid(svg, strip, left);
        labels.draw(svg, top, foot, palette);
        thread(svg, trend, time, strip);
        for (Round round : trend.rounds()) {
            svg.group(round.tip());
            strip.draw(svg, time.at(round.day()), round.interval(), trend.mark());
            svg.close();
        }
        gaps(svg, trend, time, foot);
        foot(svg, trend, time, foot, left);
        return svg.end();
    }

    /** Room for the names of the rows, which are longer in some languages. */
    private double left(Trend trend) {
        double longest =
                trend.rows().stream()
                        .mapToDouble(row -> Lettering.width(name(row), 14))
                        .max()
                        .orElse(0);
        return size.phone ? Math.max(50, longest + 8) : Math.max(128, longest + 12);
    }

    private String name(Trend.Row row) {
        return size.phone ? row.brief() : row.name();
    }

    /** The plot starts lower where a treatment's label would run into the title. */
    private double top(Trend trend, TreatmentLabels labels, double left) {
        if (size.phone) {
            return trend.treatments().isEmpty() ? 32 : 58;
        }
        double title =
                Math.max(
                        Lettering.width(trend.place(), 17) * 1.08,
                        Lettering.width(trend.note(), 14));
        return labels.leftMost() < left + title + 10 ? 90 : 50;
    }

    private void title(Svg svg, Trend trend, double left) {
        if (size.phone) {
            svg.open("text", "x", 0, "y", 17, "font-size", 18, "fill", palette.ink());
            svg.open("tspan", "font-weight", "700").write(trend.place()).close();
            svg.write(trend.note().isEmpty() ? "" : ", " + trend.note()).close();
            return;
        }
        svg.text(
                left,
                26,
                trend.place(),
                "font-size",
                17,
                "font-weight",
                "700",
                "fill",
                palette.ink());
        svg.text(left, 45, trend.note(), "font-size", 14, "fill", palette.quiet());
    }

    private void grid(Svg svg, UprightStrip strip, double left) {
        Figures figures = new Figures(words);
        for (Axis.Tick tick : axis.ticks()) {
            double y = strip.at(tick.value());
            boolean underLine =
                    axis.line().isPresent()
                            && Math.abs(strip.at(axis.line().get().value()) - y) < 18;
            if (!underLine) {
                svg.line(left, y, size.right, y, "stroke", palette.pencil());
                scaleText(svg, left, y, tick.text(), figures.exactly(tick.value()), false);
            }
        }
        svg.line(left, strip.foot(), size.right, strip.foot(), "stroke", palette.edge());
        axis.line().ifPresent(line -> judgingLine(svg, line, strip.at(line.value()), left));
    }

    private void judgingLine(Svg svg, Axis.Tick line, double y, double left) {
        svg.line(
                left,
                y,
                size.right,
                y,
                "stroke",
                palette.ink(),
                "stroke-width",
                1.4,
                "stroke-dasharray",
                "6 4");
        String inWords = new Figures(words).exactly(line.value());
        scaleText(
                svg,
                left,
                y,
                line.text(),
                words.say("chart.line.value", axis.lineName(), inWords),
                true);
        if (size.phone) {
            svg.text(
                    left - 8,
                    y + 21,
                    words.say("chart.line.short"),
                    "font-size",
                    14,
                    "font-weight",
                    "700",
                    "fill",
                    palette.ink(),
                    "text-anchor",
                    "end");
        }
    }

    private void scaleText(
            Svg svg, double left, double y, String figure, String inWords, boolean strong) {
        svg.open(
                "g",
                "font-size",
                14,
                "fill",
                strong ? palette.ink() : palette.quiet(),
                "font-weight",
                strong ? "700" : "400");
        svg.text(left - 8, y + 5, figure, "text-anchor", "end");
        if (!size.phone) {
            svg.text(size.right + 10, y + 5, inWords);
        }
        svg.close();
    }

    /** The thin line for the eye, only between neighbours that both have an estimate. */
    private void thread(Svg svg, Trend trend, TimeAxis time, UprightStrip strip) {
        StringBuilder d = new StringBuilder();
        boolean joined = false;
        for (Round round : trend.rounds()) {
            if (round.interval() instanceof Interval.Found found && strip.holds(found.estimate())) {
                d.append(joined ? 'L' : 'M')
                        .append(Svg.at(time.at(round.day()), strip.at(found.estimate())));
                joined = true;
            } else {
                joined = false;
            }
        }
        if (d.indexOf("L") >= 0) {
            svg.path(
                    d.toString(),
                    "fill",
                    "none",
                    "stroke",
                    palette.ink(),
                    "stroke-width",
                    1.2,
                    "stroke-opacity",
                    ".75");
        }
    }

    /** Hatches rounds in a row that nobody sampled, or that are not read, with the words once. */
    private void gaps(Svg svg, Trend trend, TimeAxis time, double foot) {
        List<Round> run = new ArrayList<>();
        for (Round round : trend.rounds()) {
            if (!run.isEmpty() && !run.get(0).interval().equals(round.interval())) {
                gap(svg, run, time, foot);
                run.clear();
            }
            if (round.interval() instanceof Interval.NotSampled
                    || round.interval() instanceof Interval.NotRead) {
                run.add(round);
            }
        }
        if (!run.isEmpty()) {
            gap(svg, run, time, foot);
        }
    }

    private void gap(Svg svg, List<Round> run, TimeAxis time, double foot) {
        double half = Math.min(18, time.step() * 0.45);
        double from = time.at(run.get(0).day()) - half;
        double to = time.at(run.get(run.size() - 1).day()) + half;
        Lettering.hatch(svg, from, to, foot - 3, palette);
        if (run.size() > 1) {
            String text = new Figures(words).interval(run.get(0).interval());
            double middle = Math.max((from + to) / 2, from + Lettering.width(text, 14) / 2);
            centred(svg, middle, foot - 23, text, palette.quiet(), false);
        }
    }

    private void foot(Svg svg, Trend trend, TimeAxis time, double foot, double left) {
        List<Integer> labelled = time.labelled(size.phone ? 20 : 30);
        Days days = new Days(words);
        for (int i = 0; i < labelled.size(); i++) {
            double x = time.at(time.days().get(labelled.get(i)));
            String label = time.label(labelled, i, days);
            if (size.phone) {
                phoneDate(svg, time, labelled, i, x, foot);
            } else {
                centred(svg, x, foot + 20, label, palette.ink(), false);
            }
        }
        double y = foot + (size.phone ? 56 : 39);
        for (Trend.Row row : trend.rows()) {
            svg.text(
                    size.phone ? 0 : left - 8,
                    y,
                    name(row),
                    "font-size",
                    14,
                    "fill",
                    palette.quiet(),
                    "text-anchor",
                    size.phone ? "start" : "end");
            for (int i : labelled) {
                double x = time.at(time.days().get(i));
                String ink = row.strong() ? palette.ink() : palette.quiet();
                centred(svg, x, y, row.values().get(i), ink, row.strong());
            }
            y += LINE;
        }
    }

    /** On the phone the day stands over its month, and the month only where it is new. */
    private void phoneDate(
            Svg svg, TimeAxis time, List<Integer> labelled, int i, double x, double foot) {
        var day = time.days().get(labelled.get(i));
        centred(svg, x, foot + 20, Integer.toString(day.getDayOfMonth()), palette.ink(), false);
        boolean sameMonth =
                i > 0 && time.days().get(labelled.get(i - 1)).getMonth() == day.getMonth();
        if (!sameMonth) {
            centred(svg, x, foot + 37, new Days(words).month(day), palette.quiet(), false);
        }
    }

    private static void centred(
            Svg svg, double x, double y, String text, String ink, boolean strong) {
        svg.text(
                x,
                y,
                text,
                "font-size",
                14,
                "fill",
                ink,
                "font-weight",
                strong ? "700" : "400",
                "text-anchor",
                "middle");
    }
}
