package jarwise.stats.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class NewNextToOldTest {

    private static Map<String, BenchCount> round(String map) {
        Map<String, BenchCount> round = new TreeMap<>();
        Maps.benches(map).forEach(bench -> round.put(bench.bench(), bench));
        return round;
    }

    private static NewNextToOld test(String earlier, String later) {
        return NewNextToOld.of(
                round(earlier),
                round(later),
                benches -> Neighbours.of(benches, 1),
                Permutations.STANDARD);
    }

    @Test
    void countsPairsOfANewBenchAndAnOldOne() {
        // old: the two on the left; new: the two beside them; far: nothing
        NewNextToOld test = test("1 0 0 0|2 0 0 0", "1 1 0 0|0 3 0 0");

        assertThat(test.oldBenches()).isEqualTo(2);
        assertThat(test.couldTurn()).isEqualTo(6);
        assertThat(test.newBenches()).isEqualTo(2);
        assertThat(test.joins()).isEqualTo(2);
        assertThat(test.expected().orElseThrow()).isCloseTo(2 * 2 / 6.0, within(1e-12));
        // of the 15 choices of two benches, one has both joins
        assertThat(test.pValue().orElseThrow()).isCloseTo(1 / 15.0, within(0.01));
    }

    @Test
    void pValueIsThatOfEveryChoice() {
        // one old bench in the middle has four neighbours among eight that could turn
        NewNextToOld test = test("0 0 0|0 1 0|0 0 0", "0 1 0|0 1 1|0 0 1");

        assertThat(test.joins()).isEqualTo(2);
        assertThat(test.newBenches()).isEqualTo(3);
        // hypergeometric: (C(4,2) C(4,1) + C(4,3)) / C(8,3) = 28 / 56
        assertThat(test.pValue().orElseThrow()).isCloseTo(0.5, within(0.02));
        assertThat(test.expected().orElseThrow()).isCloseTo(1.5, within(1e-12));
    }

    @Test
    void hasNoPWhereEveryChoiceIsTheSame() {
        assertThat(test("1 0 0", "1 0 0").pValue()).isEmpty();
        assertThat(test("1 0 0", "1 1 1").pValue()).isEmpty();
        assertThat(test("0 0 0", "1 0 1").pValue()).isEmpty();
        assertThat(test("1 1 1", "1 1 1").expected()).isEmpty();
    }

    @Test
    void benchesOfOneRoundOnlyCannotTurn() {
        Map<String, BenchCount> later = round("1 1 0 0");
        later.remove("r0c2");
        NewNextToOld test =
                NewNextToOld.of(
                        round("1 0 0"),
                        later,
                        (List<BenchCount> benches) -> Neighbours.of(benches, 1),
                        Permutations.STANDARD);

        assertThat(test.couldTurn()).isEqualTo(1);
    }
}
