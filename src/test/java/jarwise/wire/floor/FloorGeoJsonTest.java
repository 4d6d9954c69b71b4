package jarwise.wire.floor;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.BenchPlace;
import jarwise.site.floor.FloorPlan.Drawn;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.Rectangle;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FloorGeoJsonTest {

    @Test
    void writesAFeatureForEachHouseBenchAndHotSpotInLocalMetres() throws Exception {
        JsonNode plan = new ObjectMapper().readTree(written());

        assertThat(plan.get("type").asText()).isEqualTo("FeatureCollection");
        assertThat(plan.get("jarwise_coordinates").get("unit").asText()).isEqualTo("m");
        assertThat(plan.get("jarwise_coordinates").get("note").asText())
                .startsWith("Not longitude and latitude");
        assertThat(plan.get("features"))
                .extracting(feature -> feature.get("id").asText())
                .containsExactly("house/P1", "bench/P1-B3", "hot_spot/S1");
        assertThat(plan.get("features").get(1).get("properties").get("varieties").toString())
                .isEqualTo("[\"Rubia Tarn\"]");
        assertThat(plan.get("features").get(2).get("geometry").get("coordinates").toString())
                .isEqualTo("[10.5,-21.0]");
    }

    /** The standard wants the outer ring closed and against the clock. */
    @Test
    void ringsAreClosedAndRunAgainstTheClock() throws Exception {
        JsonNode plan = new ObjectMapper().readTree(written());

        JsonNode ring = plan.get("features").get(1).get("geometry").get("coordinates").get(0);
        assertThat(ring.toString())
                .isEqualTo("[[11.0,-24.0],[19.0,-24.0],[19.0,-22.0],[11.0,-22.0],[11.0,-24.0]]");
        double twiceTheArea = 0;
        for (int i = 0; i + 1 < ring.size(); i++) {
            twiceTheArea +=
                    ring.get(i).get(0).asDouble() * ring.get(i + 1).get(1).asDouble()
                            - ring.get(i + 1).get(0).asDouble() * ring.get(i).get(1).asDouble();
        }
        assertThat(twiceTheArea).isEqualTo(2 * 16);
    }

    private static String written() {
        House house = new House("P1", "Propagation", OptionalDouble.of(600));
        Bench bench = new Bench("P1-B3", "P1", "B", 0);
        HotSpot door =
                new HotSpot(
                        "S1",
                        "P1",
                        Optional.empty(),
                        HotSpot.Kind.DOOR,
                        new HotSpot.Point(.5, 1),
                        "yard");
        FloorPlan plan =
                FloorPlan.of(
                        List.of(house),
                        List.of(bench),
                        new Drawn(
                                Map.of("P1", new Rectangle(10, 20, 40, 15)),
                                Map.of("P1-B3", new BenchPlace("", new Rectangle(1, 2, 8, 2))),
                                List.of(door)));
        CropLot lot =
                new CropLot("L-1", "", "Rubia Tarn", Optional.empty(), Optional.empty(), false);
        return FloorGeoJson.write("Oak End", plan, Map.of("P1-B3", List.of(lot)));
    }
}
