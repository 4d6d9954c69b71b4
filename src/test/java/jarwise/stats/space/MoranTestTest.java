package jarwise.stats.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoranTestTest {

    private static final Permutations FEW = new Permutations(999, 7);

    static List<Row> byHand() {
        return ReferenceTable.read("space/moran.csv");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static MoranTest test(String map, Permutations permutations) {
        return MoranTest.of(Maps.values(map), Neighbours.of(Maps.benches(map), 1), permutations);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("byHand")
    void indexIsThatWorkedByHand(Row row) {
        MoranTest test = test(row.text("map"), FEW);

        assertThat(test.index().orElseThrow()).isCloseTo(row.number("index"), within(1e-12));
        int benches = Maps.values(row.text("map")).length;
        assertThat(test.expected().orElseThrow()).isCloseTo(-1.0 / (benches - 1), within(1e-15));
    }

    /** Independent of the code tested: a matrix of weights, and every order of the values. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"5 4 1|3 1 0", "0 0 2 7 9 1", "1 0 1|0 1 0", "3 3 0|0 0 0|4 0 0"})
    void pValueIsThatOfEveryPermutation(String map) {
        double[] values = Maps.values(map);
        List<BenchCount> benches = Maps.benches(map);
        double observed = matrixIndex(values, benches);
        List<int[]> orders = Maps.orders(Math.min(values.length, 7));
        if (values.length > 7) {
            orders = draws(values.length);
        }
        int reaching = 0;
        double sum = 0;
        for (int[] order : orders) {
            double index =
                    matrixIndex(
                            Arrays.stream(order).mapToDouble(i -> values[i]).toArray(), benches);
            reaching += index >= observed - 1e-9 ? 1 : 0;
            sum += index;
        }
        double exact = (double) reaching / orders.size();

        MoranTest test = test(map, Permutations.STANDARD);
        assertThat(test.index().orElseThrow()).isCloseTo(observed, within(1e-12));
        assertThat(test.pValue().orElseThrow()).isCloseTo(exact, within(0.02));
        if (values.length <= 7) {
            // the mean over every order is the expected index, whatever the values
            assertThat(sum / orders.size()).isCloseTo(test.expected().orElseThrow(), within(1e-12));
        }
    }

    private static double matrixIndex(double[] values, List<BenchCount> benches) {
        int n = values.length;
        double mean = Arrays.stream(values).sum() / n;
        double weights = 0;
        double products = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            squares += (values[i] - mean) * (values[i] - mean);
            for (int j = 0; j < n; j++) {
                double along = Math.abs(benches.get(i).x() - benches.get(j).x());
                double across = Math.abs(benches.get(i).y() - benches.get(j).y());
                double weight = along + across == 1 ? 1 : 0;
                weights += weight;
                products += weight * (values[i] - mean) * (values[j] - mean);
            }
        }
        return n / weights * products / squares;
    }

    private static List<int[]> draws(int n) {
        SeededRandom random = new SeededRandom(99);
        List<int[]> draws = new ArrayList<>();
        for (int d = 0; d < 20_000; d++) {
            double[] keys = new double[n];
            Arrays.setAll(keys, i -> random.uniform());
            draws.add(
                    IntStream.range(0, n)
                            .boxed()
                            .sorted((a, b) -> Double.compare(keys[a], keys[b]))
                            .mapToInt(i -> i)
                            .toArray());
        }
        return draws;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void shiftAndScaleOfTheValuesDoNotMatter(long seed) {
        SeededRandom random = new SeededRandom(seed);
        String map = "1 2 3 4|5 6 7 8|9 1 2 3";
        double[] values = Maps.values(map);
        Arrays.setAll(values, i -> random.normal());
        double[] other = Arrays.stream(values).map(v -> 3 + 2.5 * v).toArray();
        Neighbours neighbours = Neighbours.of(Maps.benches(map), 1);

        MoranTest one = MoranTest.of(values, neighbours, FEW);
        MoranTest two = MoranTest.of(other, neighbours, FEW);
        assertThat(two.index().orElseThrow()).isCloseTo(one.index().orElseThrow(), within(1e-12));
        assertThat(two.pValue()).isEqualTo(one.pValue());
    }

    @Test
    void aConstantMapHasNoIndex() {
        assertThat(test("2 2 2|2 2 2", FEW).index()).isEmpty();
        assertThat(test("2 2 2|2 2 2", FEW).pValue()).isEmpty();
        assertThat(test("0.1 0.1 0.1", FEW).index()).isEmpty();
    }

    @Test
    void benchesFarApartHaveNoIndex() {
        List<BenchCount> benches = Maps.benches("1 5");
        MoranTest test = MoranTest.of(new double[] {1, 5}, Neighbours.of(benches, 0.5), FEW);

        assertThat(test.index()).isEmpty();
    }

    @Test
    void sameSeedGivesTheSameAnswer() {
        String map = "5 4 1 0|3 1 0 2|0 0 1 7";

        assertThat(test(map, Permutations.STANDARD)).isEqualTo(test(map, Permutations.STANDARD));
    }

    @Test
    void neighboursShareAnEdgeAndAHouse() {
        assertThat(Neighbours.of(Maps.benches("1 1 1|1 1 1"), 1).pairs()).isEqualTo(7);
        assertThat(Neighbours.of(Maps.benches("1 1 1|1 1 1"), 1.5).pairs()).isEqualTo(11);
        BenchCount north = new BenchCount("north", "1", 0, 0, 1, 1);
        BenchCount south = new BenchCount("south", "1", 0, 1, 1, 1);
        assertThat(Neighbours.of(List.of(north, south), 5).pairs()).isZero();
        assertThat(Neighbours.of(List.of(north, south), 5).alone()).isEqualTo(2);
    }

    @Test
    void refusesTwoBenchesInOnePlace() {
        List<BenchCount> benches =
                List.of(new BenchCount("", "A", 1, 1, 0, 1), new BenchCount("", "B", 1, 1, 0, 1));

        assertThatThrownBy(() -> Neighbours.of(benches, 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Benches A and B");
        assertThatThrownBy(() -> Neighbours.of(benches, Double.NaN))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Permutations(10, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new BenchCount("", "A", Double.NaN, 1, 0, 1))
                .isInstanceOf(InvalidInput.class);
    }
}
