package jarwise.site.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.site.Bench;
import jarwise.site.House;
import jarwise.site.floor.FloorPlan.BenchPlace;
import jarwise.site.floor.FloorPlan.Drawn;
import jarwise.site.floor.FloorPlan.PlacedBench;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FloorPlanTest {

    private static final House H2 = new House("H2", "", OptionalDouble.of(1200));
    private static final House P1 = new House("P1", "", OptionalDouble.empty());

    @Test
    void aHouseThatNobodyDrewHasItsAreaAndAllBenchesInside() {
        FloorPlan plan = FloorPlan.of(List.of(H2, P1), benches("H2", 4, 6), Drawn.NOTHING);

        Rectangle house = plan.house("H2").orElseThrow().place();
        assertThat(house.length() * house.width()).isCloseTo(1200, within(1e-6));
        assertThat(plan.house("H2").orElseThrow().drawn()).isFalse();
        assertApart(plan.house("H2").orElseThrow().benches(), house);
        assertThat(plan.house("P1").orElseThrow().place().overlaps(house)).isFalse();
        assertThat(plan.bench("H2-A2").orElseThrow().place().x())
                .isGreaterThan(plan.bench("H2-A1").orElseThrow().place().x());
        assertThat(plan.bench("H2-B1").orElseThrow().place().y())
                .isGreaterThan(plan.bench("H2-A1").orElseThrow().place().y());
    }

    @Test
    void whatWasDrawnStaysAndTheRestGoesWhereThereIsRoom() {
        Rectangle drawn = new Rectangle(10, 2, 12, 5);
        Map<String, BenchPlace> places = Map.of("H2-B3", new BenchPlace("arrivals", drawn));
        Rectangle house = new Rectangle(3, 4, 50, 24);
        FloorPlan plan =
                FloorPlan.of(
                        List.of(H2, P1),
                        benches("H2", 4, 6),
                        new Drawn(Map.of("H2", house), places, List.of()));

        assertThat(plan.house("H2").orElseThrow().place()).isEqualTo(house);
        assertThat(plan.bench("H2-B3").orElseThrow().place()).isEqualTo(drawn);
        assertThat(plan.bench("H2-B3").orElseThrow().name()).isEqualTo("arrivals");
        assertApart(plan.house("H2").orElseThrow().benches(), house);
        assertThat(plan.house("P1").orElseThrow().place().y())
                .isEqualTo(house.bottom() + AutomaticPlaces.BETWEEN_HOUSES);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void benchesOfAGridNeverTouchAndStayInTheHouse(long seed) {
        Random random = new Random(seed);
        List<Integer> bays = new ArrayList<>();
        for (int bay = 0; bay <= random.nextInt(6); bay++) {
            bays.add(1 + random.nextInt(20));
        }
        Rectangle floor =
                new Rectangle(0, 0, 2 + 200 * random.nextDouble(), 2 + 60 * random.nextDouble());

        List<Rectangle> places =
                new BenchGrid(bays)
                        .places(floor.length(), floor.width()).stream()
                                .flatMap(List::stream)
                                .toList();

        assertThat(places).hasSize(bays.stream().mapToInt(Integer::intValue).sum());
        for (int i = 0; i < places.size(); i++) {
            assertThat(places.get(i).fitsIn(floor)).isTrue();
            for (int j = 0; j < i; j++) {
                assertThat(places.get(i).overlaps(places.get(j))).isFalse();
            }
        }
    }

    @Test
    void aQuarterTurnTwiceChangesNothing() {
        Rectangle bench = new Rectangle(1, 2, 8, 1.5);

        assertThat(bench.turned()).isEqualTo(new Rectangle(4.25, -1.25, 1.5, 8));
        assertThat(bench.turned().turned()).isEqualTo(bench);
    }

    @Test
    void baysAreLettered() {
        assertThat(BenchGrid.letters(0)).isEqualTo("A");
        assertThat(BenchGrid.letters(25)).isEqualTo("Z");
        assertThat(BenchGrid.letters(26)).isEqualTo("AA");
        assertThat(BenchGrid.letters(53)).isEqualTo("BB");
    }

    @Test
    void feetAreKeptInMetres() {
        assertThat(LengthUnit.of("ft").toMetres(100)).isCloseTo(30.48, within(1e-12));
        assertThat(LengthUnit.of("ft").fromMetres(30.48)).isCloseTo(100, within(1e-12));
        assertThat(LengthUnit.of("")).isEqualTo(LengthUnit.METRE);
    }

    @Test
    void impossibleRectanglesAreRefused() {
        for (double wrong : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY, 20_000}) {
            assertThatThrownBy(() -> new Rectangle(0, 0, wrong, 1))
                    .isInstanceOf(InvalidInput.class);
            assertThatThrownBy(() -> new Rectangle(0, 0, 1, wrong))
                    .isInstanceOf(InvalidInput.class);
        }
        assertThatThrownBy(() -> new Rectangle(Double.NaN, 0, 1, 1))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new HotSpot.Point(0, Double.NaN)).isInstanceOf(InvalidInput.class);
    }

    private static void assertApart(List<PlacedBench> benches, Rectangle house) {
        for (PlacedBench one : benches) {
            assertThat(one.place().fitsIn(house)).as(one.bench().code()).isTrue();
            assertThat(benches)
                    .filteredOn(other -> !other.equals(one))
                    .noneMatch(other -> other.place().overlaps(one.place()));
        }
    }

    private static List<Bench> benches(String house, int bays, int each) {
        List<Bench> benches = new ArrayList<>();
        for (int bay = 0; bay < bays; bay++) {
            for (int i = 1; i <= each; i++) {
                String letter = BenchGrid.letters(bay);
                String code = house + "-" + letter + i;
                benches.add(new Bench(code, house, letter, benches.size()));
            }
        }
        return benches;
    }
}
