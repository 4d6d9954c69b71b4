package jarwise.usecase.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.site.Bench;
import jarwise.site.House;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.Rectangle;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

class DemoFloorTest {

    private final FloorPlan plan =
            FloorPlan.of(
                    DemoSite.houses(),
                    DemoSite.benches(),
                    new FloorPlan.Drawn(
                            DemoFloor.houses(), DemoFloor.benches(), DemoFloor.hotSpots()));

    @Test
    void housesAreAsLargeAsTheStorySays() {
        assertThat(plan.houses())
                .allSatisfy(
                        house ->
                                assertThat(house.place().length() * house.place().width())
                                        .isCloseTo(area(house.house()), within(1e-9)));
        assertThat(plan.house("P1").orElseThrow().place().length()).isEqualTo(40);
    }

    private static double area(House house) {
        return house.areaM2().orElseThrow();
    }

    @Test
    void everyBenchIsDrawnInItsHouse() {
        assertThat(DemoFloor.benches().keySet())
                .containsExactlyInAnyOrderElementsOf(
                        DemoSite.benches().stream().map(Bench::code).toList());
        plan.houses()
                .forEach(
                        house ->
                                assertThat(house.benches())
                                        .allMatch(bench -> bench.place().fitsIn(house.place())));
    }

    @Test
    void troubleIsLookedForAtDoorsVentsAndArrivals() {
        assertThat(plan.hotSpots())
                .extracting(HotSpot::house, HotSpot::kind)
                .containsExactlyInAnyOrder(
                        Tuple.tuple("P1", HotSpot.Kind.DOOR),
                        Tuple.tuple("P1", HotSpot.Kind.ARRIVALS),
                        Tuple.tuple("H2", HotSpot.Kind.VENT),
                        Tuple.tuple("H2", HotSpot.Kind.INDICATOR_PLANTS),
                        Tuple.tuple("H3", HotSpot.Kind.DOOR));
        assertThat(plan.hotSpots())
                .allSatisfy(
                        spot -> {
                            Rectangle house = plan.house(spot.house()).orElseThrow().place();
                            assertThat(spot.at().x()).isBetween(0.0, house.length());
                            assertThat(spot.at().y()).isBetween(0.0, house.width());
                        });
    }
}
