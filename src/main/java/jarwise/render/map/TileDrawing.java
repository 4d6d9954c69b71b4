package jarwise.render.map;

import jarwise.decision.Verdict;
import jarwise.plan.Spot;
import jarwise.render.chart.Lettering;
import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;
import jarwise.render.chart.VerdictMarks;
import java.util.List;

/** Draws benches: ground, words, strokes and marks, as many of them as there is room for. */
final class TileDrawing {

    private static final double PAD = 5;
    private static final double MARK_WIDTH = 23;
    private static final double CROSS = 3;
    private static final String ELLIPSIS = "…";

    private final Svg svg;
    private final MapSize size;
    private final Palette palette;

    TileDrawing(Svg svg, MapSize size, Palette palette) {
        this.svg = svg;
        this.size = size;
        this.palette = palette;
    }

    void draw(Tile tile, Box box, List<Spot> places) {
        svg.group(tile.tip());
        ground(tile, box);
        Pen pen = new Pen(box, size);
        title(tile, box, pen);
        tile.verdict().ifPresent(verdict -> verdict(verdict, tile, pen));
        if (pen.lines() >= 3) {
            text(tile, box.x() + PAD, pen.line(2), pen.fitted(under(tile)), 400);
        }
        if (pen.lines() >= 2) {
            foot(tile, box, pen);
        }
        places.forEach(place -> cross(box, place));
        svg.close();
    }

    /** Where the lines of a bench stand: four on the phone, where strokes and figure need two. */
    private record Pen(Box box, MapSize size) {

        private static final int MOST_AT_DESK = 3;

        int lines() {
            int most = size.mostPxPerMetre() > 0 ? MOST_AT_DESK : MOST_AT_DESK + 1;
            int room = (int) Math.floor((box.height() - 4) / (size.font() + 2));
            return Math.max(1, Math.min(most, room));
        }

        double line(int number) {
            double font = size.font();
            double step = (box.height() - 2 * PAD - font) / Math.max(1, lines() - 1);
            return box.y() + PAD + font * .86 + (number - 1) * Math.min(step, font + 9);
        }

        String fitted(String text) {
            return fitted(text, box.width() - 2 * PAD, size.font() - 1);
        }

        static String fitted(String text, double room, double font) {
            String shown = text;
            while (!shown.isEmpty() && Lettering.width(shown, font) > room) {
                shown = shown.substring(0, shown.length() - 1);
            }
            return shown.length() == text.length() || shown.length() < 3
                    ? shown.length() < 3 && shown.length() < text.length() ? "" : shown
                    : shown.substring(0, shown.length() - 1).stripTrailing() + ELLIPSIS;
        }
    }

    private static String under(Tile tile) {
        return tile.noEntry().orElse(tile.under());
    }

    private void ground(Tile tile, Box box) {
        String outline = tile.ground() == Tile.Ground.EMPTY ? palette.pencil() : palette.ink();
        if (tile.ground() == Tile.Ground.UNKNOWN) {
            Hatch.draw(svg, box, palette);
        }
        String fill =
                tile.ground() == Tile.Ground.UNKNOWN
                        ? "none"
                        : tile.step() > 0 ? ChanceSteps.fill(tile.step()) : "#FFFFFF";
        svg.rect(
                box.x(),
                box.y(),
                box.width(),
                box.height(),
                "fill",
                fill,
                "stroke",
                tile.noEntry().isPresent() ? "#8A5A00" : outline,
                "stroke-width",
                tile.noEntry().isPresent() ? 3.2 : 1.2);
    }

    private void title(Tile tile, Box box, Pen pen) {
        double left = box.x() + PAD;
        if (tile.noEntry().isPresent()) {
            noEntry(left + 7, pen.line(1) - 5);
            left += 18;
        }
        String shown = Pen.fitted(tile.title(), box.right() - left - 2, size.font() + 1);
        boolean empty = tile.ground() == Tile.Ground.EMPTY;
        text(tile, left, pen.line(1), shown, empty ? 400 : 700);
    }

    /** A ring with a bar: nobody goes in. Beside it or under it stand the words. */
    private void noEntry(double x, double y) {
        svg.circle(x, y, 6.4, "fill", "#FFF3D6", "stroke", "#17212B", "stroke-width", 1.8);
        svg.line(x - 3.6, y, x + 3.6, y, "stroke", "#17212B", "stroke-width", 2.6);
    }

    /** In the corner of the title; above the figure where the title leaves no room. */
    private void verdict(Verdict verdict, Tile tile, Pen pen) {
        Box box = pen.box();
        double least = PAD + MARK_WIDTH + Lettering.width(tile.title(), size.font() + 1);
        double left = box.right() - MARK_WIDTH - 3;
        boolean below = box.width() < least + (tile.noEntry().isPresent() ? 20 : 0);
        if (below && box.height() < 48) {
            return;
        }
        double foot = pen.lines() > 3 ? pen.line(pen.lines() - 1) + 3 : box.bottom() - 4;
        double top = below ? foot - 18 : box.y() + 3;
        svg.rect(
                left - 1,
                top,
                MARK_WIDTH + 2,
                18,
                "fill",
                tile.step() >= 1 ? "#FFFFFF" : "none",
                "rx",
                2);
        svg.open("g", "transform", "translate(%s)".formatted(Svg.at(left, top)));
        svg.drawing(VerdictMarks.draw(verdict, MARK_WIDTH, palette)).close();
    }

    private void foot(Tile tile, Box box, Pen pen) {
        boolean known = tile.ground() == Tile.Ground.READ;
        double strokes = tile.step() > 0 ? ChanceSteps.width(tile.step()) + 4 : 0;
        double figure = Lettering.width(tile.figure(), size.font());
        boolean beside = strokes + figure <= box.width() - 2 * PAD;
        boolean under = !beside && pen.lines() > 3 && figure <= box.width() - 2 * PAD;
        if (tile.step() > 0) {
            ChanceSteps.strokes(
                    svg,
                    tile.step(),
                    box.x() + PAD,
                    pen.line(under ? pen.lines() - 1 : pen.lines()),
                    ChanceSteps.letters(tile.step(), palette));
        }
        if (beside || under) {
            svg.open("g", "text-anchor", known ? "end" : "start");
            double x = known ? box.right() - PAD : box.x() + PAD;
            text(tile, x, pen.line(pen.lines()), tile.figure(), known ? 700 : 400);
            svg.close();
        }
    }

    private void text(Tile tile, double x, double y, String text, int weight) {
        if (text.isEmpty()) {
            return;
        }
        boolean hatched = tile.ground() == Tile.Ground.UNKNOWN;
        String colour =
                tile.ground() == Tile.Ground.EMPTY
                        ? palette.quiet()
                        : tile.step() > 0
                                ? ChanceSteps.letters(tile.step(), palette)
                                : palette.ink();
        svg.text(
                x,
                y,
                text,
                "font-size",
                weight > 400 ? size.font() : size.font() - 1,
                "font-weight",
                weight,
                "fill",
                colour,
                "paint-order",
                "stroke",
                "stroke",
                hatched ? palette.paper() : "none",
                "stroke-width",
                4);
    }

    /** In the path beside the bench, so that it covers no words. */
    private void cross(Box box, Spot place) {
        double x = box.x() + CROSS + place.along() * (box.width() - 2 * CROSS);
        double y = box.bottom() + CROSS + 1.5;
        svg.path(
                "M%sv%sM%sh%s"
                        .formatted(
                                Svg.at(x, y - CROSS), 2 * CROSS, Svg.at(x - CROSS, y), 2 * CROSS),
                "stroke",
                palette.ink(),
                "stroke-width",
                1.4);
    }
}
