package jarwise.site.floor;

import jarwise.site.Bench;
import jarwise.site.House;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A nursery as seen from above. What nobody has drawn yet is laid out by itself, so that there is a
 * plan from the first bench on.
 *
 * @param houses in the order of the walk
 * @param hotSpots places known for trouble
 */
public record FloorPlan(List<PlacedHouse> houses, List<HotSpot> hotSpots) {

    public FloorPlan {
        houses = List.copyOf(houses);
        hotSpots = List.copyOf(hotSpots);
    }

    /**
     * A house with its benches.
     *
     * @param house the house
     * @param place in the nursery
     * @param drawn whether somebody drew it, or it was laid out by itself
     * @param benches in the order of the walk
     */
    public record PlacedHouse(
            House house, Rectangle place, boolean drawn, List<PlacedBench> benches) {
        public PlacedHouse {
            benches = List.copyOf(benches);
        }
    }

    /**
     * A bench at its place.
     *
     * @param bench the bench
     * @param name what people call it beside its code; may be empty
     * @param place in its house
     * @param drawn whether somebody drew it
     */
    public record PlacedBench(Bench bench, String name, Rectangle place, boolean drawn) {}

    /**
     * What is kept of a bench that was drawn.
     *
     * @param name what people call it; may be empty
     * @param place in its house
     */
    public record BenchPlace(String name, Rectangle place) {}

    /**
     * Everything that was drawn.
     *
     * @param houses places by house
     * @param benches places by bench
     * @param hotSpots places known for trouble
     */
    public record Drawn(
            Map<String, Rectangle> houses,
            Map<String, BenchPlace> benches,
            List<HotSpot> hotSpots) {

        /** Nothing. */
        public static final Drawn NOTHING = new Drawn(Map.of(), Map.of(), List.of());

        public Drawn {
            houses = Map.copyOf(houses);
            benches = Map.copyOf(benches);
            hotSpots = List.copyOf(hotSpots);
        }
    }

    /**
     * Puts a plan together.
     *
     * @param houses in the order of the walk
     * @param benches in the order of the walk
     * @param drawn what somebody drew; the rest is laid out
     */
    public static FloorPlan of(List<House> houses, List<Bench> benches, Drawn drawn) {
        List<PlacedHouse> placed = new ArrayList<>();
        double free = AutomaticPlaces.below(drawn.houses().values());
        for (House house : houses) {
            List<Bench> there =
                    benches.stream().filter(bench -> bench.house().equals(house.code())).toList();
            Optional<Rectangle> own = Optional.ofNullable(drawn.houses().get(house.code()));
            Rectangle place = own.orElse(AutomaticPlaces.house(house, there).at(0, free));
            if (own.isEmpty()) {
                free = place.bottom() + AutomaticPlaces.BETWEEN_HOUSES;
            }
            placed.add(
                    new PlacedHouse(
                            house,
                            place,
                            own.isPresent(),
                            AutomaticPlaces.benches(there, place, drawn.benches())));
        }
        return new FloorPlan(placed, drawn.hotSpots());
    }

    /** {@return the house with this code} */
    public Optional<PlacedHouse> house(String code) {
        return houses.stream().filter(house -> house.house().code().equals(code)).findFirst();
    }

    /** {@return the bench with this code} */
    public Optional<PlacedBench> bench(String code) {
        return houses.stream()
                .flatMap(house -> house.benches().stream())
                .filter(bench -> bench.bench().code().equals(code))
                .findFirst();
    }
}
