package jarwise.usecase.demo;

import jarwise.site.Bench;
import jarwise.site.floor.BenchGrid;
import jarwise.site.floor.FloorPlan.BenchPlace;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.Rectangle;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where the houses and benches of the demo nursery lie, and where it looks first; all invented. */
public final class DemoFloor {

    private static final double P1_LENGTH = 40;
    private static final double P1_WIDTH = 15;
    private static final double LENGTH = 50;
    private static final double H2_WIDTH = 24;
    private static final double H3_WIDTH = 20;
    private static final double BETWEEN = 6;

    private DemoFloor() {}

    /** {@return houses by code: P1 on top, from there the way leads to H2 and H3} */
    public static Map<String, Rectangle> houses() {
        double h2 = P1_WIDTH + BETWEEN;
        double h3 = h2 + H2_WIDTH + BETWEEN;
        return Map.of(
                "P1", new Rectangle(0, 0, P1_LENGTH, P1_WIDTH),
                "H2", new Rectangle(0, h2, LENGTH, H2_WIDTH),
                "H3", new Rectangle(0, h3, LENGTH, H3_WIDTH));
    }

    /** {@return benches by code, in bays of six} */
    public static Map<String, BenchPlace> benches() {
        Map<String, BenchPlace> places = new LinkedHashMap<>();
        houses().forEach((house, floor) -> places.putAll(benches(house, floor)));
        return places;
    }

    private static Map<String, BenchPlace> benches(String house, Rectangle floor) {
        List<Bench> there =
                DemoSite.benches().stream().filter(bench -> bench.house().equals(house)).toList();
        List<Rectangle> grid =
                BenchGrid.of(there.size() / 6, 6).places(floor.length(), floor.width()).stream()
                        .flatMap(List::stream)
                        .toList();
        Map<String, BenchPlace> places = new LinkedHashMap<>();
        for (int i = 0; i < there.size(); i++) {
            String code = there.get(i).code();
            places.put(code, new BenchPlace(code.equals("P1-B3") ? "arrivals" : "", grid.get(i)));
        }
        return places;
    }

    /** {@return places known for trouble} */
    public static List<HotSpot> hotSpots() {
        return List.of(
                spot("S001", "P1-A2", HotSpot.Kind.DOOR, at(0.6, 7.5), "Looked at beside it"),
                spot("S002", "P1-B3", HotSpot.Kind.ARRIVALS, at(16.7, 7.5), "New lots stand here"),
                spot("S003", "H2", HotSpot.Kind.VENT, at(45.8, 0.2), "North side"),
                spot(
                        "S004",
                        "H2",
                        HotSpot.Kind.INDICATOR_PLANTS,
                        at(0.6, 12),
                        "Petunias at the door"),
                spot("S005", "H3", HotSpot.Kind.DOOR, at(0.6, 13.3), "Exit"));
    }

    private static HotSpot spot(
            String code, String place, HotSpot.Kind kind, HotSpot.Point at, String note) {
        Optional<String> bench = Optional.of(place).filter(text -> text.contains("-"));
        return new HotSpot(code, place.substring(0, 2), bench, kind, at, note);
    }

    private static HotSpot.Point at(double x, double y) {
        return new HotSpot.Point(x, y);
    }
}
