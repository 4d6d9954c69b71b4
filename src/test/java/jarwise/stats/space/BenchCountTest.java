package jarwise.stats.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The small parts of the map: densities, neighbours, permutations. */
class BenchCountTest {

    private static BenchCount bench(String name, double x, double y, long individuals) {
        return new BenchCount("P1", name, x, y, individuals, 20);
    }

    @Test
    void densityIsIndividualsByEffortAndItsLogarithmExistsWithoutAFind() {
        assertThat(bench("A", 0, 0, 5).density()).isEqualTo(0.25);
        assertThat(bench("A", 0, 0, 5).logDensity()).isCloseTo(Math.log(5.5 / 20), within(1e-15));
        assertThat(bench("A", 0, 0, 0).logDensity()).isCloseTo(Math.log(0.5 / 20), within(1e-15));
    }

    @Test
    void aPlaceIsANumberUpToABillion() {
        assertThatCode(() -> bench("A", 1e9, -1e9, 0)).doesNotThrowAnyException();
        assertThatThrownBy(() -> bench("A", 1.1e9, 0, 0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> bench("A", 0, Double.NaN, 0)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void benchesWithinReachAreNeighboursAndTheOthersAreAlone() {
        List<BenchCount> benches =
                List.of(
                        bench("A", 0, 0, 1),
                        bench("B", 2, 0, 1),
                        bench("C", 5, 0, 1),
                        new BenchCount("H2", "D", 1, 0, 1, 20));
        Neighbours neighbours = Neighbours.of(benches, 2);

        assertThat(neighbours.pairs()).isEqualTo(1);
        assertThat(neighbours.benches()).isEqualTo(4);
        assertThat(neighbours.alone()).isEqualTo(2);
        assertThat(Neighbours.of(benches, 3).alone()).isEqualTo(1);
        assertThat(Neighbours.of(benches, 3).pairs()).isEqualTo(2);
    }

    @Test
    void tooManyNeighboursAndBenchesAreRefused() {
        List<BenchCount> row = new ArrayList<>();
        for (int i = 0; i < 460; i++) {
            row.add(bench("B" + i, i, 0, 0));
        }
        assertThatThrownBy(() -> Neighbours.of(row, 1e6))
                .hasMessageContaining("pairs of neighbours");
        assertThat(Neighbours.of(row.subList(0, 447), 1e6).pairs()).isEqualTo(447 * 446 / 2);
        List<BenchCount> many = new ArrayList<>();
        for (int i = 0; i < 10_001; i++) {
            many.add(new BenchCount("H" + i, "B", 0, 0, 0, 1));
        }
        assertThatThrownBy(() -> Neighbours.of(many, 1)).hasMessageContaining("10000 at most");
        assertThat(Neighbours.of(many.subList(0, 10_000), 1).pairs()).isZero();
    }

    @Test
    void permutationsAre99To999999() {
        assertThatThrownBy(() -> new Permutations(98, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Permutations(1_000_000, 1)).isInstanceOf(InvalidInput.class);
        assertThatCode(() -> new Permutations(99, 1)).doesNotThrowAnyException();
        assertThatCode(() -> new Permutations(999_999, 1)).doesNotThrowAnyException();
    }

    @Test
    void theObservedOrderCountsAsOneOfThePermutations() {
        double[] values = {1, 2, 3, 4};
        Permutations hundred = new Permutations(99, 7);

        assertThat(hundred.upperTail(values, v -> 0, 1)).isEqualTo(0.01);
        assertThat(hundred.upperTail(values, v -> 1, 1)).isEqualTo(1);
        // Each value comes first in a quarter of all orders.
        assertThat(new Permutations(9_999, 7).upperTail(values, v -> v[0], 4))
                .isCloseTo(0.25, within(0.02));
        assertThat(new Permutations(9_999, 7).upperTail(values, v -> v[3], 4))
                .isCloseTo(0.25, within(0.02));
    }

    @Test
    void aShareOfBenchesNeedsABenchAndAK() {
        List<BenchCount> one = List.of(bench("A", 0, 0, 1));

        assertThatThrownBy(() -> ShareOfBenches.of(List.of(), 0.5, 20))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> ShareOfBenches.of(one, 0, 20)).isInstanceOf(InvalidInput.class);
    }

    /** With one effort and k anything, the share is that of the benches found positive. */
    @Test
    void withEqualEffortTheShareIsTheShareFoundPositive() {
        List<BenchCount> benches = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            benches.add(bench("B" + i, i, 0, i < 3 ? 2 : 0));
        }
        for (double k : new double[] {0.2, 1, 30, Double.POSITIVE_INFINITY}) {
            assertThat(ShareOfBenches.of(benches, k, 20).estimate()).isCloseTo(0.3, within(1e-9));
        }
    }

    @Test
    void withUnequalEffortTheShareIsForTheEffortAskedFor() {
        // Two kinds of benches, Poisson: positive with 1 − e^(−m), and twice the effort 1 −
        // e^(−2m).
        List<BenchCount> benches = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            double effort = i < 20 ? 20 : 40;
            boolean found = i < 10 || (i >= 20 && i < 35);
            benches.add(new BenchCount("P1", "B" + i, i, 0, found ? 1 : 0, effort));
        }
        // half of the first and three quarters of the second are positive: both say m = ln 2
        assertThat(ShareOfBenches.of(benches, Double.POSITIVE_INFINITY, 20).estimate())
                .isCloseTo(0.5, within(1e-9));
        assertThat(ShareOfBenches.of(benches, Double.POSITIVE_INFINITY, 40).estimate())
                .isCloseTo(0.75, within(1e-9));
        // With k 1 a bench is empty with 1/(1 + m): the same data now differ from one m.
        double share = ShareOfBenches.of(benches, 1, 20).estimate();
        assertThat(score(share / (1 - share))).isCloseTo(0, within(1e-6));
    }

    /** Derivative of the likelihood of the benches above in m, where k is 1. */
    private static double score(double m) {
        double single = 10 / m - 20 / (1 + m);
        double twice = 15 / m - 20 * 2 / (1 + 2 * m);
        return single + twice;
    }

    @Test
    void benchesOfBothRoundsMakeTheMap() {
        Map<String, BenchCount> earlier = new TreeMap<>();
        Map<String, BenchCount> later = new TreeMap<>();
        for (int i = 0; i < 6; i++) {
            earlier.put("B" + i, bench("B" + i, i, 0, i == 0 ? 1 : 0));
            later.put("B" + i, bench("B" + i, i, 0, i <= 1 ? 1 : 0));
        }
        later.put("B6", bench("B6", 6, 0, 1));
        NewNextToOld found =
                NewNextToOld.of(earlier, later, b -> Neighbours.of(b, 1), new Permutations(999, 1));

        assertThat(found.oldBenches()).isEqualTo(1);
        assertThat(found.couldTurn()).isEqualTo(5);
        assertThat(found.newBenches()).isEqualTo(1);
        assertThat(found.joins()).isEqualTo(1);
        assertThat(found.expected().orElseThrow()).isCloseTo(0.2, within(1e-12));
    }
}
