package jarwise.render.map;

import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;
import java.util.List;

/** Five steps of a chance: one hue, and one to five strokes for those who do not see it. */
public final class ChanceSteps {

    /** Steps there are. */
    public static final int STEPS = 5;

    private static final List<String> FILLS =
            List.of("#EAF1F3", "#BFD8E1", "#86B7C9", "#2B6C88", "#0B3B50");

    /** Fills from here on are dark and carry white letters. */
    private static final int FIRST_DARK = 4;

    private static final double GAP = 4.6;

    private ChanceSteps() {}

    /** {@return the step of a chance: 1 below 20 %, 5 from 80 %} */
    public static int of(double chance) {
        return Math.max(1, Math.min(STEPS, 1 + (int) Math.floor(chance * STEPS)));
    }

    static String fill(int step) {
        return FILLS.get(step - 1);
    }

    static String letters(int step, Palette palette) {
        return step >= FIRST_DARK ? "#FFFFFF" : palette.ink();
    }

    /** Draws as many strokes as the step, standing on {@code foot}. */
    static void strokes(Svg svg, int step, double left, double foot, String colour) {
        for (int i = 0; i < step; i++) {
            double x = left + 1.2 + i * GAP;
            svg.line(x, foot - 10, x, foot, "stroke", colour, "stroke-width", 2.2);
        }
    }

    /** {@return the width of the strokes of a step} */
    static double width(int step) {
        return step * GAP;
    }

    /** {@return a swatch of one step for the key of the map, 48 by 24 px} */
    public static String swatch(int step) {
        Svg svg = Svg.decoration(48, 24, "0 0 48 24");
        svg.rect(
                .75,
                .75,
                46.5,
                22.5,
                "fill",
                fill(step),
                "stroke",
                Palette.DESK.ink(),
                "stroke-width",
                1.5);
        strokes(svg, step, 7, 17, letters(step, Palette.DESK));
        return svg.end();
    }

    /** {@return the swatch of what was not sampled} */
    public static String hatched() {
        Svg svg = Svg.decoration(48, 24, "0 0 48 24");
        Hatch.draw(svg, new Box(.75, .75, 46.5, 22.5), Palette.DESK);
        svg.rect(
                .75,
                .75,
                46.5,
                22.5,
                "fill",
                "none",
                "stroke",
                Palette.DESK.ink(),
                "stroke-width",
                1.5);
        return svg.end();
    }
}
