package jarwise.render.map;

import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.PlacedHouse;
import jarwise.site.floor.Rectangle;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Brings metres onto the picture. Where the whole nursery fits to scale with benches large enough
 * for their words, it is drawn to scale; else house stands under house, each as wide as the
 * picture, and only places within a house can be compared.
 */
final class Projection {

    private static final double TITLE = 30;
    private static final double BETWEEN = 22;

    private final Map<String, House> houses = new LinkedHashMap<>();
    private final MapSize size;
    private final boolean toScale;
    private double height;

    /** A house on the picture: left, top, px a metre along and across. */
    private record House(double left, double top, double along, double across, Rectangle place) {

        Box box(Rectangle inside) {
            return new Box(
                    left + inside.x() * along,
                    top + inside.y() * across,
                    inside.length() * along,
                    inside.width() * across);
        }
    }

    Projection(FloorPlan plan, MapSize size) {
        this.size = size;
        double scale = scale(plan.houses());
        this.toScale = size.mostPxPerMetre() > 0 && fits(plan.houses(), scale);
        if (toScale) {
            projectToScale(plan.houses(), scale);
        } else {
            projectOneByOne(plan.houses());
        }
    }

    /** {@return whether distances between houses can be compared} */
    boolean toScale() {
        return toScale;
    }

    /** {@return px a metre, where the picture is to scale} */
    double pxPerMetre() {
        return houses.values().stream().mapToDouble(House::along).findFirst().orElse(1);
    }

    double height() {
        return height;
    }

    /** {@return the house on the picture} */
    Box house(String code) {
        House house = Objects.requireNonNull(houses.get(code));
        return house.box(house.place.at(0, 0));
    }

    /** {@return something that stands in a house} */
    Box inside(String code, Rectangle place) {
        return Objects.requireNonNull(houses.get(code)).box(place);
    }

    private double scale(List<PlacedHouse> all) {
        double left = all.stream().mapToDouble(house -> house.place().x()).min().orElse(0);
        double right = all.stream().mapToDouble(house -> house.place().right()).max().orElse(1);
        return Math.min(size.mostPxPerMetre(), (size.width() - 2) / Math.max(1, right - left));
    }

    private boolean fits(List<PlacedHouse> all, double scale) {
        return all.stream()
                .flatMap(house -> house.benches().stream())
                .allMatch(
                        bench ->
                                bench.place().length() * scale >= size.leastBenchWidth()
                                        && bench.place().width() * scale
                                                >= size.leastBenchHeight());
    }

    private void projectToScale(List<PlacedHouse> all, double scale) {
        double left = all.stream().mapToDouble(house -> house.place().x()).min().orElse(0);
        double top = all.stream().mapToDouble(house -> house.place().y()).min().orElse(0);
        for (PlacedHouse house : all) {
            Rectangle place = house.place();
            House drawn =
                    new House(
                            1 + (place.x() - left) * scale,
                            TITLE + (place.y() - top) * scale,
                            scale,
                            scale,
                            place);
            houses.put(house.house().code(), drawn);
            height = Math.max(height, drawn.top + place.width() * scale + 2);
        }
    }

    private void projectOneByOne(List<PlacedHouse> all) {
        double top = 0;
        // From the top of the plan to its foot, whatever the order of the walk.
        List<PlacedHouse> downwards =
                all.stream()
                        .sorted(
                                Comparator.comparingDouble((PlacedHouse house) -> house.place().y())
                                        .thenComparingDouble(house -> house.place().x()))
                        .toList();
        for (PlacedHouse house : downwards) {
            Rectangle place = house.place();
            double along = (size.width() - 2) / place.length();
            double narrowest =
                    house.benches().stream()
                            .mapToDouble(bench -> bench.place().width())
                            .min()
                            .orElse(place.width());
            double across = Math.max(along, size.leastBenchHeight() / narrowest);
            double most = size.mostHouseHeight() / place.width();
            across = Math.min(across, Math.max(along, most));
            houses.put(house.house().code(), new House(1, top + TITLE, along, across, place));
            top += TITLE + place.width() * across + BETWEEN;
        }
        height = Math.max(2, top - BETWEEN + 2);
    }
}
