package jarwise.render.map;

import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.PlacedHouse;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.Rectangle;
import java.util.List;
import java.util.Map;

/**
 * One house to be drawn in: each bench is a part of its own that a script may move.
 *
 * @param house the house
 * @param hotSpots those of this house
 * @param names what stands beside each hot spot, by its code
 * @param label what the picture is
 */
public record DraftPicture(
        PlacedHouse house, List<HotSpot> hotSpots, Map<String, String> names, String label) {

    private static final double LARGEST = 20;

    /** Width of a letter in sizes of the letters. */
    private static final double LETTER = 0.64;

    private static final MapSize SIZE = new MapSize(960, 17, 0, 0, 1e6, 40);

    /** {@return the picture; {@code data-scale} says how many px a metre has} */
    public String draw() {
        Rectangle floor = house.place();
        FloorPlan alone = new FloorPlan(List.of(house), hotSpots);
        Projection projection = new Projection(alone, SIZE);
        Box box = projection.house(house.house().code());
        Palette palette = Palette.DESK;
        Svg svg = Svg.stage(SIZE.width(), projection.height() + 4, label);
        svg.open(
                "g",
                "data-scale",
                projection.pxPerMetre(),
                "data-length",
                floor.length(),
                "data-width",
                floor.width());
        svg.rect(
                box.x(),
                box.y(),
                box.width(),
                box.height(),
                "fill",
                palette.inside(),
                "stroke",
                palette.ink(),
                "stroke-width",
                2);
        for (int i = 0; i < house.benches().size(); i++) {
            FloorPlan.PlacedBench bench = house.benches().get(i);
            bench(svg, i, bench, projection.inside(bench.bench().house(), bench.place()));
        }
        MapMarks marks = new MapMarks(svg, SIZE, palette);
        for (HotSpot spot : hotSpots) {
            Rectangle point = new Rectangle(spot.at().x(), spot.at().y(), 1e-6, 1e-6);
            marks.hotSpot(
                    projection.inside(spot.house(), point),
                    box,
                    names.getOrDefault(spot.code(), ""));
        }
        return svg.close().end();
    }

    private static void bench(Svg svg, int place, FloorPlan.PlacedBench bench, Box box) {
        String name = bench.name().isEmpty() ? "" : ", " + bench.name();
        svg.open(
                "g",
                "class",
                "draft-bench",
                "data-place",
                place,
                "data-name",
                bench.bench().code() + name);
        svg.rect(
                box.x(),
                box.y(),
                box.width(),
                box.height(),
                "fill",
                "#EAF1F3",
                "stroke",
                Palette.DESK.ink(),
                "stroke-width",
                1.4);
        svg.open("g", "text-anchor", "middle");
        svg.text(
                box.middle(),
                box.y() + box.height() / 2 + 6,
                bench.bench().code(),
                "font-size",
                Math.min(LARGEST, box.width() / (LETTER * bench.bench().code().length())),
                "fill",
                Palette.DESK.ink());
        svg.close().close();
    }
}
