package jarwise.wire.floor;

import jarwise.site.CropLot;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.PlacedBench;
import jarwise.site.floor.FloorPlan.PlacedHouse;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.Rectangle;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The plan as GeoJSON (RFC 7946): a feature for each house, bench and hot spot. That standard says
 * that coordinates are longitude and latitude; a plan drawn with a tape measure has none, so a
 * member of our own says that these are metres, to the right and up.
 */
public final class FloorGeoJson {

    private static final String NOTE =
            "Not longitude and latitude: metres on this site's own plan, first to the right, then"
                    + " up, from the top left corner of the plan.";

    private FloorGeoJson() {}

    /**
     * Writes a plan.
     *
     * @param nursery name of the site
     * @param plan where everything lies
     * @param lots crop lots by the bench they stand on
     * @return the file's text
     */
    public static String write(String nursery, FloorPlan plan, Map<String, List<CropLot>> lots) {
        List<JsonObject> features = new ArrayList<>();
        for (PlacedHouse house : plan.houses()) {
            features.add(house(house));
            for (PlacedBench bench : house.benches()) {
                features.add(
                        bench(
                                house.place(),
                                bench,
                                lots.getOrDefault(bench.bench().code(), List.of())));
            }
        }
        for (HotSpot spot : plan.hotSpots()) {
            plan.house(spot.house()).ifPresent(house -> features.add(hotSpot(house, spot)));
        }
        return new JsonObject()
                        .put("type", "FeatureCollection")
                        .put("name", nursery)
                        .put(
                                "jarwise_coordinates",
                                new JsonObject()
                                        .put("unit", "m")
                                        .put("local", true)
                                        .put("note", NOTE))
                        .putObjects("features", features)
                        .text()
                + "\n";
    }

    private static JsonObject house(PlacedHouse house) {
        JsonObject properties =
                new JsonObject()
                        .put("kind", "house")
                        .put("code", house.house().code())
                        .put("name", house.house().name())
                        .put("area_m2", house.house().areaM2())
                        .put("drawn", house.drawn());
        return feature("house/" + house.house().code(), polygon(house.place()), properties);
    }

    private static JsonObject bench(Rectangle house, PlacedBench bench, List<CropLot> lots) {
        Rectangle place =
                bench.place().at(house.x() + bench.place().x(), house.y() + bench.place().y());
        JsonObject properties =
                new JsonObject()
                        .put("kind", "bench")
                        .put("code", bench.bench().code())
                        .put("name", bench.name())
                        .put("house", bench.bench().house())
                        .put("bay", bench.bench().bay())
                        .put("drawn", bench.drawn())
                        .putTexts("crop_lots", lots.stream().map(CropLot::code).toList())
                        .putTexts("varieties", lots.stream().map(CropLot::variety).toList());
        return feature("bench/" + bench.bench().code(), polygon(place), properties);
    }

    private static JsonObject hotSpot(PlacedHouse house, HotSpot spot) {
        JsonObject point =
                new JsonObject()
                        .put("type", "Point")
                        .putNumbers(
                                "coordinates",
                                at(
                                        house.place().x() + spot.at().x(),
                                        house.place().y() + spot.at().y()));
        JsonObject properties =
                new JsonObject()
                        .put("kind", "hot_spot")
                        .put("hot_spot_kind", spot.kind().name().toLowerCase(Locale.ROOT))
                        .put("house", spot.house())
                        .putText("bench", spot.bench())
                        .put("note", spot.note());
        return feature("hot_spot/" + spot.code(), point, properties);
    }

    private static JsonObject feature(String id, JsonObject geometry, JsonObject properties) {
        return new JsonObject()
                .put("type", "Feature")
                .put("id", id)
                .put("geometry", geometry)
                .put("properties", properties);
    }

    /** One closed ring, against the clock as seen with y up. */
    private static JsonObject polygon(Rectangle place) {
        return new JsonObject()
                .put("type", "Polygon")
                .putNumbers(
                        "coordinates",
                        List.of(
                                List.of(
                                        at(place.x(), place.bottom()),
                                        at(place.right(), place.bottom()),
                                        at(place.right(), place.y()),
                                        at(place.x(), place.y()),
                                        at(place.x(), place.bottom()))));
    }

    /** Our plans count downwards, maps upwards. */
    private static List<Double> at(double x, double y) {
        return List.of(millimetres(x), millimetres(-y));
    }

    private static double millimetres(double metres) {
        return Math.rint(metres * 1000) / 1000 + 0.0;
    }
}
