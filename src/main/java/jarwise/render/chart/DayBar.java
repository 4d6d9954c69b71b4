package jarwise.render.chart;

import jarwise.render.words.Days;
import jarwise.render.words.Words;
import java.time.LocalTime;
import java.util.Optional;

/**
 * Windows of the things to do, drawn on one shared day from 6 to 20 h, with the line of now. A
 * re-entry interval is hatched on the warning ground.
 *
 * @param now the time of the page
 * @param words the language
 */
public record DayBar(LocalTime now, Words words) {

    private static final double WIDTH = 306;
    private static final double LEFT = 2;
    private static final double RIGHT = 304;
    private static final Palette PALETTE = Palette.DESK;

    /** What a window means. */
    public enum Kind {
        /** Has a last moment. */
        DEADLINE,
        /** Some time that day. */
        SOMETIME,
        /** Nobody may enter. */
        NO_ENTRY
    }

    /** {@return the head of the column: hours and now} */
    public String head() {
        Svg svg = Svg.decoration(WIDTH, 40, "0 0 306 40");
        for (int hour = 6; hour <= 20; hour += 2) {
            double x = at(LocalTime.of(hour, 0));
            String anchor = hour == 6 ? "start" : hour == 20 ? "end" : "middle";
            if (Math.abs(x - at(now)) > 10) {
                svg.open("g", "font-size", 14, "text-anchor", anchor);
                double shift = hour == 6 ? -2 : hour == 20 ? 2 : 0;
                svg.text(x + shift, 32, Integer.toString(hour), "fill", PALETTE.quiet()).close();
            }
        }
        String text = words.say("chart.now", new Days(words).time(now));
        double half = Lettering.width(text, 14) * 1.08 / 2;
        double x = Math.max(half, Math.min(WIDTH - half, at(now)));
        svg.text(
                x,
                15,
                text,
                "font-size",
                14,
                "font-weight",
                "700",
                "text-anchor",
                "middle",
                "fill",
                PALETTE.ink());
        return svg.line(at(now), 20, at(now), 40, "stroke", PALETTE.ink(), "stroke-width", 1.6)
                .end();
    }

    /**
     * Draws the window of one thing to do.
     *
     * @param kind what the window means
     * @param from its start; empty for the start of the day
     * @param until its end
     * @param height height of the row, so that the lines of the rows meet
     * @param label the window in words
     * @return the picture
     */
    public String row(
            Kind kind, Optional<LocalTime> from, LocalTime until, double height, String label) {
        Svg svg = Svg.picture(WIDTH, height, label);
        for (int hour = 6; hour <= 20; hour += 2) {
            double x = at(LocalTime.of(hour, 0));
            svg.line(x, 0, x, height, "stroke", PALETTE.pencil());
        }
        double start = from.map(this::at).orElse(LEFT);
        double width = Math.max(0, at(until) - start);
        svg.group(label);
        window(svg, kind, start, width, height / 2);
        svg.close();
        svg.line(at(now), 0, at(now), height, "stroke", PALETTE.ink(), "stroke-width", 1.6);
        return svg.end();
    }

    private static void window(Svg svg, Kind kind, double start, double width, double middle) {
        switch (kind) {
            case DEADLINE -> {
                svg.rect(
                        start, middle - 5, width, 10, "fill", PALETTE.ink(), "fill-opacity", ".26");
                double end = start + width;
                svg.line(
                        end,
                        middle - 10,
                        end,
                        middle + 10,
                        "stroke",
                        PALETTE.ink(),
                        "stroke-width",
                        3);
            }
            case SOMETIME ->
                    svg.rect(
                            start,
                            middle - 5,
                            width,
                            10,
                            "fill",
                            "none",
                            "stroke",
                            PALETTE.edge(),
                            "stroke-width",
                            1.3);
            case NO_ENTRY -> noEntry(svg, start, width, middle);
        }
    }

    /** Hatched without a clip path, whose name would have to differ on every row of a page. */
    private static void noEntry(Svg svg, double start, double width, double middle) {
        svg.rect(
                start,
                middle - 7,
                width,
                14,
                "fill",
                Palette.WARNING,
                "stroke",
                Palette.WARNING_RULE,
                "stroke-width",
                1.4);
        StringBuilder d = new StringBuilder();
        for (double x = start; x + 9 <= start + width; x += 7) {
            d.append('M').append(Svg.at(x, middle + 7)).append("l9 -14");
        }
        if (d.length() > 0) {
            svg.path(
                    d.toString(),
                    "stroke",
                    Palette.WARNING_RULE,
                    "stroke-width",
                    1.4,
                    "fill",
                    "none");
        }
    }

    private double at(LocalTime time) {
        double hour = time.toSecondOfDay() / 3600.0;
        return LEFT + (RIGHT - LEFT) * Math.max(0, Math.min(1, (hour - 6) / 14));
    }
}
