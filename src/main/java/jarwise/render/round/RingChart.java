package jarwise.render.round;

import jarwise.render.chart.Lettering;
import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Rings of benches around a find: bays side by side, benches behind each other. A bench with a jar
 * has its ring's number; one without plants is hatched; the find is solid.
 *
 * @param width of the whole picture
 * @param palette colours of the medium
 */
public record RingChart(double width, Palette palette) {

    private static final double HEIGHT = 44;
    private static final double GAP = 8;

    /** What a bench is in the search. */
    public enum Kind {
        FIND,
        JAR,
        NO_PLANTS,
        OUTSIDE
    }

    /**
     * A bench.
     *
     * @param name its code
     * @param bay column, from 0
     * @param row from 0
     * @param ring rings away from the find
     * @param kind what it is
     * @param tip what it is, in words
     */
    public record Cell(String name, int bay, int row, int ring, Kind kind, String tip) {}

    /** {@return rings for the column of a desk page} */
    public static RingChart desk() {
        return new RingChart(620, Palette.DESK);
    }

    /** {@return rings for a phone} */
    public static RingChart phone() {
        return new RingChart(328, Palette.PHONE);
    }

    /** {@return the picture; {@code label} says what it shows to those who do not see it} */
    public String draw(List<Cell> cells, String label) {
        int bays = cells.stream().mapToInt(Cell::bay).max().orElse(0) + 1;
        int rows = cells.stream().mapToInt(Cell::row).max().orElse(0) + 1;
        double wide = Math.min(140, (width - GAP * (bays - 1)) / bays);
        Svg svg = Svg.picture(width, rows * (HEIGHT + GAP), label);
        Map<String, Cell> ordered = new TreeMap<>();
        cells.forEach(cell -> ordered.put("%03d-%03d".formatted(cell.row(), cell.bay()), cell));
        ordered.values()
                .forEach(
                        cell ->
                                cell(
                                        svg,
                                        cell,
                                        cell.bay() * (wide + GAP),
                                        cell.row() * (HEIGHT + GAP),
                                        wide));
        return svg.end();
    }

    private void cell(Svg svg, Cell cell, double x, double y, double wide) {
        boolean find = cell.kind() == Kind.FIND;
        boolean jar = cell.kind() == Kind.JAR;
        svg.group(cell.tip());
        svg.rect(
                x + 1,
                y + 1,
                wide - 2,
                HEIGHT - 2,
                "fill",
                find ? palette.ink() : palette.inside(),
                "stroke",
                find || jar ? palette.ink() : palette.edge(),
                "stroke-width",
                jar ? 2.5 : 1);
        if (cell.kind() == Kind.NO_PLANTS) {
            Lettering.hatch(svg, x + 4, x + wide - 4, y + HEIGHT - 6, palette);
        }
        String ink = find ? palette.paper() : jar ? palette.ink() : palette.quiet();
        middle(svg, x + wide / 2, y + 18, cell.name(), ink, "400");
        if (jar) {
            middle(svg, x + wide / 2, y + 36, Integer.toString(cell.ring()), ink, "700");
        }
        svg.close();
    }

    private static void middle(
            Svg svg, double x, double y, String text, String ink, String weight) {
        svg.text(
                x,
                y,
                text,
                "font-size",
                14,
                "font-weight",
                weight,
                "fill",
                ink,
                "text-anchor",
                "middle");
    }
}
