package jarwise.stats.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.stats.design.Placing.Stop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlacingTest {

    private static final List<PlantStand> CROP =
            List.of(
                    new PlantStand("Rubia Tarn", "P1", "B1", 7),
                    new PlantStand("Rubia Tarn", "P1", "B2", 3),
                    new PlantStand("Rubia Tarn", "P2", "B1", 10),
                    new PlantStand("Cloudmarsh", "P2", "B2", 5));
    private static final Map<String, Double> DIRT = Map.of("P1", 2.0, "P2", 0.1);

    private static Placing placed(int rubia, int cloudmarsh, long seed) {
        return Placing.of(CROP, Map.of("Rubia Tarn", rubia, "Cloudmarsh", cloudmarsh), DIRT, seed);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void allPlantsAreEachPlantOnce(long seed) {
        assertThat(placed(20, 5, seed).stops()).hasSize(25).doesNotHaveDuplicates();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void sameSeedSamePlanInWhateverOrderTheCropIsGiven(long seed) {
        List<PlantStand> shuffled = new ArrayList<>(CROP);
        Collections.shuffle(shuffled, new Random(seed));
        Map<String, Integer> samples = new HashMap<>();
        samples.put("Rubia Tarn", 6);
        samples.put("Cloudmarsh", 2);

        Placing plan = placed(6, 2, seed);

        assertThat(Placing.of(shuffled, samples, DIRT, seed)).isEqualTo(plan);
        assertThat(plan.stops()).hasSize(8).doesNotHaveDuplicates();
        assertThat(plan.stops().stream().filter(s -> s.stratum().equals("Cloudmarsh"))).hasSize(2);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void theWalkGoesFromCleanToDirty(long seed) {
        List<Double> dirt =
                placed(9, 3, seed).stops().stream().map(s -> DIRT.get(s.house())).toList();

        assertThat(dirt).isSorted();
    }

    /** The counts of 20 plants over 4,000 plans of 5; 43.8 is passed once in 1,000 by chance. */
    @Test
    void everyPlantOfAStratumIsEquallyLikely() {
        int plans = 4000;
        Map<Stop, Integer> drawn = new HashMap<>();
        for (long seed = 1; seed <= plans; seed++) {
            placed(5, 0, seed).stops().forEach(stop -> drawn.merge(stop, 1, Integer::sum));
        }
        double expected = plans * 5 / 20.0;
        double statistic = 0;
        for (int times : drawn.values()) {
            statistic += (times - expected) * (times - expected) / (expected * 15 / 20);
        }

        assertThat(drawn).hasSize(20);
        assertThat(statistic * 19 / 20).isLessThan(43.8).isGreaterThan(5);
    }

    @Test
    void drawsFromAThousandMillionPlantsAtOnce() {
        List<PlantStand> crop = List.of(new PlantStand("a", "P1", "B1", 1_000_000_000));

        assertThat(Placing.of(crop, Map.of("a", 1000), Map.of(), 7).stops())
                .hasSize(1000)
                .doesNotHaveDuplicates();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> placed(21, 0, 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("where 20 plants stand");
        assertThatThrownBy(() -> placed(-1, 0, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Placing.of(CROP, Map.of("Elsewhere", 1), DIRT, 1))
                .isInstanceOf(InvalidInput.class);
        PlantStand stand = CROP.get(0);
        assertThatThrownBy(() -> Placing.of(List.of(stand, stand), Map.of(), DIRT, 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("twice");
        assertThatThrownBy(() -> new PlantStand("a", "P1", "B1", 0))
                .isInstanceOf(InvalidInput.class);
    }
}
