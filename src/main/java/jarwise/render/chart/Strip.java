package jarwise.render.chart;

import jarwise.pest.StageMark;
import jarwise.render.chart.Axis.Tick;
import jarwise.render.words.Interval;
import jarwise.render.words.Words;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The strip: one estimate on a horizontal scale, with the line to judge by at the same place in
 * every row. A dot on a bar for what was found, an open bar with a cap for a zero and what could
 * still be there, a hatch with words for what nobody looked at.
 *
 * @param axis shared by all rows of a table
 * @param size measures for the desk, the phone or the letter
 * @param palette colours of the medium
 * @param words the language of what is written on it
 */
public record Strip(Axis axis, Size size, Palette palette, Words words) {

    private static final double BAR = 10;
    private static final double CAP = 18;

    /**
     * Measures in px.
     *
     * @param width whole width
     * @param height height of a row
     * @param headHeight height of the head row
     * @param dot radius of the dot
     * @param font size of the words
     */
    public record Size(double width, double height, double headHeight, double dot, double font) {
        /** A column of a table at the desk. */
        public static final Size DESK = new Size(320, 64, 40, 6, 14);

        /** The width of a phone. */
        public static final Size PHONE = new Size(324, 36, 40, 6, 15);

        /** A column of the letter. */
        public static final Size LETTER = new Size(130, 46, 34, 4.6, 12);

        /** {@return the same for rows of another height; the dashes of the rows then meet} */
        public Size withHeight(double rowHeight) {
            return new Size(width, rowHeight, headHeight, dot, font);
        }
    }

    /** {@return strips for a table at the desk} */
    public static Strip desk(Axis axis, Words words) {
        return new Strip(axis, Size.DESK, Palette.DESK, words);
    }

    /** {@return strips for a phone} */
    public static Strip phone(Axis axis, Words words) {
        return new Strip(axis, Size.PHONE, Palette.PHONE, words);
    }

    /** {@return strips for the letter} */
    public static Strip letter(Axis axis, Words words) {
        return new Strip(axis, Size.LETTER, Palette.PRINT, words);
    }

    /** {@return the head of the column: ticks with their figures, the line with its name} */
    public String head() {
        double foot = size.headHeight;
        Svg svg =
                Svg.decoration(
                        size.width,
                        foot,
                        "0 0 %s %s".formatted(Svg.number(size.width), Svg.number(foot)));
        for (Tick tick : axis.ticks()) {
            double x = at(tick.value());
            if (axis.line().isPresent()
                    && Math.abs(x - at(axis.line().get().value())) < 2 * size.font) {
                continue;
            }
            headText(svg, x, foot - 8, tick.text(), "fill", palette.quiet());
            svg.line(x, foot - 4, x, foot, "stroke", palette.edge());
        }
        axis.line().ifPresent(line -> headLine(svg, line, foot));
        return svg.end();
    }

    private void headLine(Svg svg, Tick line, double foot) {
        double x = at(line.value());
        Object[] strong = {"font-weight", "700", "fill", palette.ink()};
        headText(svg, x, foot - 9 - size.font * 1.15, axis.lineName(), strong);
        headText(svg, x, foot - 8, line.text(), strong);
        svg.line(x, foot - 5, x, foot, "stroke", palette.ink(), "stroke-width", 1.6);
    }

    private void headText(Svg svg, double x, double y, String text, Object... attributes) {
        double half = Lettering.width(text, size.font) / 2;
        boolean left = x < half;
        boolean right = x > size.width - half;
        svg.open(
                "g",
                "font-size",
                size.font,
                "text-anchor",
                left ? "start" : right ? "end" : "middle");
        svg.text(left ? 0 : right ? size.width : x, y, text, attributes).close();
    }

    /**
     * Draws one row with a dot in ink, for tables that mix stages.
     *
     * @param interval what is known, in the axis' measure
     * @param label what the row says to those who do not see it, and its tooltip
     * @return the picture
     */
    public String row(Interval interval, String label) {
        return row(interval, label, Optional.empty());
    }

    /**
     * Draws one row.
     *
     * @param interval what is known, in the axis' measure
     * @param label what the row says to those who do not see it, and its tooltip
     * @param mark the stage's mark in place of the dot; for pages about one stage
     * @return the picture
     */
    public String row(Interval interval, String label, Optional<StageMark> mark) {
        Svg svg = Svg.picture(size.width, size.height, label);
        if (interval instanceof Interval.NotSampled || interval instanceof Interval.NotRead) {
            blank(svg, interval instanceof Interval.NotRead);
            return svg.end();
        }
        grid(svg);
        svg.group(label);
        if (interval instanceof Interval.Found found) {
            found(svg, found, mark);
        } else if (interval instanceof Interval.NoneFound none) {
            none(svg, none);
        } else if (interval instanceof Interval.AtLeast atLeast) {
            open(svg, at(atLeast.lower()), size.width - 2, 1);
        }
        return svg.close().end();
    }

    private void grid(Svg svg) {
        for (Tick tick : axis.ticks()) {
            double x = at(tick.value());
            svg.line(x, 0, x, size.height, "stroke", palette.pencil());
        }
        axis.line()
                .map(line -> at(line.value()))
                .ifPresent(
                        x ->
                                svg.line(
                                        x,
                                        0,
                                        x,
                                        size.height,
                                        "stroke",
                                        palette.ink(),
                                        "stroke-width",
                                        1.2,
                                        "stroke-dasharray",
                                        "5 3"));
    }

    private void found(Svg svg, Interval.Found found, Optional<StageMark> mark) {
        LogScale scale = scale();
        boolean openEnded = found.upper().isEmpty();
        double upper = found.upper().orElse(axis.to());
        boolean pastEnd = openEnded || scale.pastEnd(axis.amount(upper));
        boolean pastStart = scale.beforeStart(axis.amount(found.lower()));
        double left = pastStart ? 12 : at(found.lower());
        double right = pastEnd ? size.width - 12 : at(upper);
        double y = size.height / 2;
        svg.rect(
                left,
                y - BAR / 2,
                Math.max(0, right - left),
                BAR,
                "fill",
                palette.ink(),
                "fill-opacity",
                ".26");
        if (pastEnd) {
            arrow(svg, size.width - 2, 1);
        }
        if (pastStart) {
            arrow(svg, 2, -1);
        }
        if (openEnded) {
            word(svg, words.say("chart.no-upper-limit"));
        }
        double amount = axis.amount(found.estimate());
        if (!scale.pastEnd(amount) && !scale.beforeStart(amount)) {
            StageMarks.point(svg, mark, at(found.estimate()), y, size.dot, palette);
        }
    }

    private void none(Svg svg, Interval.NoneFound none) {
        OptionalDouble upper = none.upper();
        if (upper.isPresent() && !scale().pastEnd(axis.amount(upper.getAsDouble()))) {
            open(svg, at(upper.getAsDouble()), 2, -1);
            return;
        }
        rails(svg, 2, size.width - 12);
        arrow(svg, size.width - 2, 1);
        if (upper.isEmpty()) {
            word(svg, words.say("chart.no-upper-limit"));
        }
    }

    /** Two rails from the cap to the edge; the small triangle says which side is meant. */
    private void open(Svg svg, double cap, double edge, int side) {
        double y = size.height / 2;
        rails(svg, edge, cap);
        svg.line(cap, y - CAP / 2, cap, y + CAP / 2, "stroke", palette.ink(), "stroke-width", 2.6);
        if (Math.abs(cap - edge) > 16) {
            svg.path(
                    "M%sv7.2l%s -3.6z".formatted(Svg.at(cap + side * 5, y - 3.6), side * 7),
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

    private void rails(Svg svg, double from, double to) {
        double y = size.height / 2;
        svg.path(
                "M%sH%sM%sH%s"
                        .formatted(
                                Svg.at(from, y - BAR / 2), Svg.number(to),
                                Svg.at(from, y + BAR / 2), Svg.number(to)),
                "stroke",
                palette.ink(),
                "stroke-width",
                1.3,
                "fill",
                "none");
    }

    private void arrow(Svg svg, double tip, int side) {
        svg.path(
                "M%sl%s 6l%s 6z"
                        .formatted(
                                Svg.at(tip - side * 8, size.height / 2 - 6), side * 8, -side * 8),
                "fill",
                palette.ink());
    }

    private void word(Svg svg, String text) {
        svg.text(
                size.width - 2,
                size.height / 2 - 11,
                text,
                "font-size",
                Math.min(12, size.font - 1),
                "fill",
                palette.quiet(),
                "text-anchor",
                "end");
    }

    private void blank(Svg svg, boolean notRead) {
        String text = words.say(notRead ? "figure.not-read" : "figure.not-sampled");
        double half = Lettering.width(text, size.font) / 2 + 12;
        double middle = size.width / 2;
        double y = size.height / 2;
        Lettering.hatch(svg, 4, middle - half, y + 7, palette);
        Lettering.hatch(svg, middle + half, size.width - 4, y + 7, palette);
        svg.text(
                middle,
                y + size.font * 0.36,
                text,
                "font-size",
                size.font,
                "fill",
                palette.quiet(),
                "text-anchor",
                "middle");
    }

    private double at(double value) {
        return scale().at(axis.amount(value));
    }

    private LogScale scale() {
        return axis.scale(2, size.width - 2);
    }
}
