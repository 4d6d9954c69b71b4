package jarwise.render.chart;

/** The round filter paper with its pencil grid and one find: favicon, masthead, empty states. */
public final class FilterEmblem {

    private static final double RADIUS = 18.6;

    private FilterEmblem() {}

    /** {@return the emblem with a find in it} */
    public static String draw(double size, Palette palette) {
        return drawn(size, palette, true);
    }

    /** {@return the filter nobody has read yet, for empty states} */
    public static String unread(double size, Palette palette) {
        return drawn(size, palette, false);
    }

    private static String drawn(double size, Palette palette, boolean find) {
        boolean small = size < 20;
        Svg svg = Svg.decoration(size, size, "-1 -1 42 42");
        svg.circle(20, 20, RADIUS, "fill", palette.inside());
        svg.open("g", "stroke", palette.cell(), "stroke-width", 1.1, "fill", "none");
        for (double at : small ? new double[] {14, 26} : new double[] {8, 16, 24, 32}) {
            double half = Math.sqrt(RADIUS * RADIUS - (at - 20) * (at - 20));
            svg.line(at, 20 - half, at, 20 + half);
            svg.line(20 - half, at, 20 + half, at);
        }
        svg.close();
        if (find) {
            svg.circle(
                    small ? 26 : 27.5,
                    small ? 14 : 12.5,
                    small ? 6.2 : 4.4,
                    "fill",
                    Palette.LARVA,
                    "stroke",
                    palette.ink(),
                    "stroke-width",
                    1.6);
        }
        double ring = small ? 2.7 : size > 60 ? 1.4 : 2.2;
        return svg.circle(
                        20,
                        20,
                        RADIUS,
                        "fill",
                        "none",
                        "stroke",
                        palette.ink(),
                        "stroke-width",
                        ring)
                .end();
    }
}
