package jarwise.site.floor;

import jarwise.site.Bench;
import jarwise.site.House;
import jarwise.site.floor.FloorPlan.BenchPlace;
import jarwise.site.floor.FloorPlan.PlacedBench;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Places for houses and benches that nobody has drawn, from their bays and positions. */
final class AutomaticPlaces {

    /** Metres between two houses. */
    static final double BETWEEN_HOUSES = 6;

    /** Length of a bench's room in widths of it. */
    private static final double SHAPE = 1.6;

    private static final double USUAL_ROOM_WIDTH = 4;
    private static final double STEP = 0.5;
    private static final double SMALLEST_SHARE = 0.25;

    private AutomaticPlaces() {}

    /** {@return the first free line below what is drawn, metres} */
    static double below(Collection<Rectangle> drawn) {
        return drawn.stream().mapToDouble(place -> place.bottom() + BETWEEN_HOUSES).max().orElse(0);
    }

    /** {@return the size of a house: as large as its area says, in the shape of its bays} */
    static Rectangle house(House house, List<Bench> benches) {
        Map<String, List<Bench>> bays = bays(benches);
        int rows = Math.max(1, bays.size());
        int columns = Math.max(1, bays.values().stream().mapToInt(List::size).max().orElse(1));
        double room = USUAL_ROOM_WIDTH;
        if (house.areaM2().isPresent() && house.areaM2().getAsDouble() > 0) {
            room = Math.sqrt(house.areaM2().getAsDouble() / (SHAPE * rows * columns));
        }
        double most = Rectangle.MOST_METRES;
        return new Rectangle(
                0, 0, Math.min(most, SHAPE * room * columns), Math.min(most, room * rows));
    }

    /** {@return every bench at its place: where it was drawn, else where its bay has room} */
    static List<PlacedBench> benches(
            List<Bench> benches, Rectangle house, Map<String, BenchPlace> drawn) {
        Map<String, Rectangle> grid = grid(benches, house);
        List<Rectangle> taken = new ArrayList<>();
        benches.stream()
                .filter(bench -> drawn.containsKey(bench.code()))
                .forEach(bench -> taken.add(place(drawn, bench).place()));
        List<PlacedBench> placed = new ArrayList<>();
        for (Bench bench : benches) {
            if (drawn.containsKey(bench.code())) {
                BenchPlace own = place(drawn, bench);
                placed.add(new PlacedBench(bench, own.name(), own.place(), true));
            } else {
                Rectangle free = free(wanted(grid, bench), house, taken);
                taken.add(free);
                placed.add(new PlacedBench(bench, "", free, false));
            }
        }
        return placed;
    }

    private static BenchPlace place(Map<String, BenchPlace> drawn, Bench bench) {
        return java.util.Objects.requireNonNull(drawn.get(bench.code()));
    }

    private static Rectangle wanted(Map<String, Rectangle> grid, Bench bench) {
        return java.util.Objects.requireNonNull(grid.get(bench.code()));
    }

    private static Map<String, Rectangle> grid(List<Bench> benches, Rectangle house) {
        Map<String, Rectangle> grid = new HashMap<>();
        if (benches.isEmpty()) {
            return grid;
        }
        List<List<Bench>> bays = List.copyOf(bays(benches).values());
        int most = bays.stream().mapToInt(List::size).max().orElse(1);
        // As many places in every bay as in the fullest one: benches then stand under each other.
        List<List<Rectangle>> places =
                new BenchGrid(java.util.Collections.nCopies(bays.size(), most))
                        .places(house.length(), house.width());
        for (int bay = 0; bay < bays.size(); bay++) {
            for (int i = 0; i < bays.get(bay).size(); i++) {
                grid.put(bays.get(bay).get(i).code(), places.get(bay).get(i));
            }
        }
        return grid;
    }

    private static Map<String, List<Bench>> bays(List<Bench> benches) {
        Map<String, List<Bench>> bays = new LinkedHashMap<>();
        benches.forEach(
                bench -> bays.computeIfAbsent(bench.bay(), bay -> new ArrayList<>()).add(bench));
        return bays;
    }

    /** The wanted place, else the nearest free one of the same size or smaller. */
    private static Rectangle free(Rectangle wanted, Rectangle house, List<Rectangle> taken) {
        if (taken.stream().noneMatch(wanted::overlaps)) {
            return wanted;
        }
        for (double share = 1; share >= SMALLEST_SHARE; share /= 2) {
            double length = wanted.length() * share;
            double width = wanted.width() * share;
            for (double y = 0; y + width <= house.width(); y += STEP) {
                for (double x = 0; x + length <= house.length(); x += STEP) {
                    Rectangle tried = new Rectangle(x, y, length, width);
                    if (taken.stream().noneMatch(tried::overlaps)) {
                        return tried;
                    }
                }
            }
        }
        return wanted;
    }
}
