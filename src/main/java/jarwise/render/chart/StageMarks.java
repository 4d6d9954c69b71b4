package jarwise.render.chart;

import jarwise.pest.StageMark;
import java.util.Optional;

/**
 * Marks of the stages: the shape says it, the colour (Okabe and Ito's palette) repeats it, the ink
 * outline holds the contrast that orange and sky blue on paper do not.
 */
public final class StageMarks {

    private StageMarks() {}

    /** {@return the mark beside its name, in the colours of the desk, 20 px} */
    public static String draw(StageMark mark) {
        return draw(mark, 20, Palette.DESK);
    }

    /** {@return the mark beside its name} */
    public static String draw(StageMark mark, double size, Palette palette) {
        Svg svg = Svg.decoration(size, size, "0 0 20 20");
        new Pen(svg, 10, 10, 6.8, 1.4, palette).draw(mark);
        return svg.end();
    }

    /** A point of a picture: the stage's mark, or a dot in ink where stages are mixed. */
    static void point(
            Svg svg, Optional<StageMark> mark, double x, double y, double radius, Palette palette) {
        if (mark.isPresent() && !palette.equals(Palette.PRINT)) {
            new Pen(svg, x, y, radius, 1.5, palette).draw(mark.get());
        } else {
            svg.circle(x, y, radius, "fill", palette.ink(), "stroke", palette.ink());
        }
    }

    /** Colour of a stage where an area is filled with it. */
    static String fill(StageMark mark, Palette palette) {
        return switch (mark) {
            case EGG -> Palette.EGG;
            case LARVA1 -> Palette.LARVA_PALE;
            case LARVA -> Palette.LARVA;
            case PUPAL -> Palette.PUPA;
            case ADULT -> palette.adult();
            case MALE, UNSURE -> palette.inside();
            case ENEMY -> Palette.ENEMY;
            case OTHER -> palette.other();
        };
    }

    /** Draws around one point: {@code r} is the radius of the circle that is a larva. */
    private record Pen(Svg svg, double x, double y, double r, double outline, Palette palette) {

        void draw(StageMark mark) {
            Object[] paint = paint(fill(mark, palette), palette.ink(), outline);
            switch (mark) {
                case EGG -> egg();
                case LARVA1 -> svg.circle(x, y, r, paint).circle(x, y, r * 0.4, "fill", inkOn());
                case LARVA -> svg.circle(x, y, r, paint);
                case PUPAL -> svg.rect(x - r * 0.91, y - r * 0.91, r * 1.82, r * 1.82, paint);
                case ADULT -> svg.path(triangle(0, 1), paint);
                case MALE -> {
                    svg.path(triangle(0, 1), paint);
                    svg.path(triangle(r * 0.1, 0.66), paint("none", palette.adult(), outline));
                }
                case ENEMY -> svg.path(diamond(), paint);
                case OTHER -> svg.path(cross(), paint("none", palette.other(), r * 0.47));
                case UNSURE -> question();
            }
        }

        private static Object[] paint(String fill, String stroke, double width) {
            return new Object[] {
                "fill", fill, "stroke", stroke, "stroke-width", width, "stroke-linejoin", "round"
            };
        }

        private void egg() {
            svg.circle(x, y, r * 0.88, paint(palette.inside(), Palette.EGG, r * 0.44));
            svg.circle(x, y, r * 1.13, paint("none", palette.ink(), r * 0.18));
        }

        private void question() {
            svg.open("g", "font-size", r * 2.65, "font-weight", "700", "fill", palette.other());
            svg.text(x, y + r * 0.95, "?", "text-anchor", "middle").close();
        }

        /** The dot in the pale circle is dark on both grounds: the circle is pale on both. */
        private String inkOn() {
            return palette.dark() ? Palette.DESK.ink() : palette.ink();
        }

        private String cross() {
            double arm = r * 0.88;
            return "M%sL%sM%sL%s"
                    .formatted(
                            Svg.at(x - arm, y - arm), Svg.at(x + arm, y + arm),
                            Svg.at(x + arm, y - arm), Svg.at(x - arm, y + arm));
        }

        private String triangle(double down, double scale) {
            double s = r * scale;
            double middle = y + down;
            return "M%sL%sH%sZ"
                    .formatted(
                            Svg.at(x, middle - s * 1.09),
                            Svg.at(x + s * 1.15, middle + s * 0.97),
                            Svg.number(x - s * 1.15));
        }

        private String diamond() {
            double s = r * 1.2;
            return "M%sL%sL%sL%sZ"
                    .formatted(
                            Svg.at(x, y - s), Svg.at(x + s, y), Svg.at(x, y + s), Svg.at(x - s, y));
        }
    }
}
