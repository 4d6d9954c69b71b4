package jarwise.render.map;

import jarwise.plan.Spot;
import jarwise.render.chart.Palette;
import jarwise.render.chart.Svg;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.PlacedBench;
import jarwise.site.floor.FloorPlan.PlacedHouse;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.Rectangle;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Draws houses with their benches, hot spots, moves and random places.
 *
 * @param plan where everything lies
 * @param tiles what is drawn on each bench, by its code
 * @param marks what lies on the plan beside the benches
 * @param label what the picture says to those who do not see it
 */
public record MapPicture(FloorPlan plan, Map<String, Tile> tiles, Marks marks, String label) {

    private static final double SCALE_ROOM = 34;

    public MapPicture {
        tiles = Map.copyOf(tiles);
    }

    /**
     * What lies on the plan beside the benches.
     *
     * @param houses what stands above each house, by its code
     * @param hotSpots what stands beside each hot spot, by its code
     * @param moves plants carried from bench to bench
     * @param places random places, by bench
     * @param scale a length and its name for the bar at the foot
     */
    public record Marks(
            Map<String, HouseTitle> houses,
            Map<String, String> hotSpots,
            List<Arrow> moves,
            Map<String, List<Spot>> places,
            ScaleBar scale) {
        public Marks {
            houses = Map.copyOf(houses);
            hotSpots = Map.copyOf(hotSpots);
            moves = List.copyOf(moves);
            places = Map.copyOf(places);
        }
    }

    /** Name of a house, and its size in a quieter voice. */
    public record HouseTitle(String name, String size) {}

    /**
     * Plants carried from one bench to another.
     *
     * @param from bench code
     * @param to bench code
     * @param words how many, when
     */
    public record Arrow(String from, String to, String words) {}

    /** A length in metres and how it is written. */
    public record ScaleBar(double metres, String words) {}

    /** {@return the map at the desk} */
    public String desk() {
        return draw(MapSize.DESK, Palette.DESK);
    }

    /** {@return the map on the phone} */
    public String phone() {
        return draw(MapSize.PHONE, Palette.PHONE);
    }

    private String draw(MapSize size, Palette palette) {
        Projection projection = new Projection(plan, size);
        double foot = projection.toScale() ? SCALE_ROOM : 6;
        Svg svg = Svg.picture(size.width(), projection.height() + foot, label);
        TileDrawing drawing = new TileDrawing(svg, size, palette);
        for (PlacedHouse house : plan.houses()) {
            house(svg, house, projection, size, palette);
            for (PlacedBench bench : house.benches()) {
                Box box = projection.inside(house.house().code(), bench.place());
                drawing.draw(
                        Objects.requireNonNull(tiles.get(bench.bench().code())),
                        box,
                        marks.places().getOrDefault(bench.bench().code(), List.of()));
            }
        }
        MapMarks over = new MapMarks(svg, size, palette);
        plan.hotSpots().forEach(spot -> hotSpot(over, spot, projection));
        marks.moves().forEach(move -> arrow(over, move, projection));
        if (projection.toScale()) {
            over.scale(marks.scale(), projection.pxPerMetre(), projection.height() + foot - 8);
        }
        return svg.end();
    }

    private void house(
            Svg svg, PlacedHouse house, Projection projection, MapSize size, Palette palette) {
        Box box = projection.house(house.house().code());
        HouseTitle title = Objects.requireNonNull(marks.houses().get(house.house().code()));
        double font = size.font() + 3;
        svg.open("text", "x", box.x(), "y", box.y() - 10, "font-size", font)
                .open("tspan", "font-weight", 700, "fill", palette.ink())
                .write(title.name())
                .close()
                .open("tspan", "dx", 10, "font-size", size.font() + 1, "fill", palette.quiet())
                .write(title.size())
                .close()
                .close();
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
    }

    private void hotSpot(MapMarks over, HotSpot spot, Projection projection) {
        if (plan.house(spot.house()).isPresent()) {
            Rectangle point = new Rectangle(spot.at().x(), spot.at().y(), 1e-6, 1e-6);
            over.hotSpot(
                    projection.inside(spot.house(), point),
                    projection.house(spot.house()),
                    marks.hotSpots().getOrDefault(spot.code(), ""));
        }
    }

    private void arrow(MapMarks over, Arrow move, Projection projection) {
        plan.bench(move.from())
                .ifPresent(
                        from ->
                                plan.bench(move.to())
                                        .ifPresent(
                                                to ->
                                                        over.arrow(
                                                                box(from, projection),
                                                                box(to, projection),
                                                                move.words())));
    }

    private static Box box(PlacedBench bench, Projection projection) {
        return projection.inside(bench.bench().house(), bench.place());
    }
}
