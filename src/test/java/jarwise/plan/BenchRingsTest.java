package jarwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.site.Bench;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BenchRingsTest {

    @Test
    void aRingIsWhatAKingReachesInSoManySteps() {
        BenchRings rings = BenchRings.around(benches(), "B2");

        assertThat(rings.within(1))
                .containsExactlyInAnyOrder("A1", "A2", "A3", "B1", "B3", "C1", "C2", "C3");
        assertThat(rings.within(2)).hasSize(11).contains("A4", "B4", "C4");
        assertThat(rings.within(2)).as("another house is no neighbour").doesNotContain("X1");
        assertThat(rings.within(9)).as("the find itself has been looked at").doesNotContain("B2");
    }

    @Test
    void atTheEdgeOfTheHouseTheRingIsOpen() {
        assertThat(BenchRings.around(benches(), "A1").within(1))
                .containsExactlyInAnyOrder("A2", "B1", "B2");
    }

    @Test
    void refusesABenchThatIsNotThere() {
        assertThatThrownBy(() -> BenchRings.around(benches(), "Z9"))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Z9");
    }

    private static List<Bench> benches() {
        List<Bench> benches = new ArrayList<>();
        for (String bay : List.of("A", "B", "C")) {
            for (int row = 1; row <= 4; row++) {
                benches.add(new Bench(bay + row, "H", bay, benches.size()));
            }
        }
        benches.add(new Bench("X1", "Other", "A", benches.size()));
        return benches;
    }
}
