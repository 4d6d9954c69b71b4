package jarwise.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BenchSpotsTest {

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void noTwoJarsGetOnePlaceAndTheSameSeedGivesTheSame(long seed) {
        int jars = 1 + Math.floorMod(seed, 90);
        List<Spot> spots = BenchSpots.draw("H2-B4", jars, seed);

        assertThat(spots).hasSize(jars).doesNotHaveDuplicates();
        assertThat(BenchSpots.draw("H2-B4", jars, seed)).isEqualTo(spots);
        assertThat(spots).extracting(Spot::along).isSorted();
    }

    @Test
    void everyPieceOfABenchIsAsLikely() {
        int near = 0;
        int first = 0;
        int rounds = 2_000;
        for (long seed = 0; seed < rounds; seed++) {
            Spot spot = BenchSpots.draw("P1-B3", 1, seed).get(0);
            near += spot.across() < 0.2 ? 1 : 0;
            first += spot.along() < 0.5 ? 1 : 0;
        }
        // five standard deviations of a binomial number
        assertThat(near).isBetween(400 - 90, 400 + 90);
        assertThat(first).isBetween(1000 - 112, 1000 + 112);
    }

    @Test
    void anotherBenchGetsOtherPlaces() {
        assertThat(BenchSpots.draw("P1-B3", 8, 7)).isNotEqualTo(BenchSpots.draw("P1-B4", 8, 7));
    }
}
