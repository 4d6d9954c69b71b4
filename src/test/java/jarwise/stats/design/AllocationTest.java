package jarwise.stats.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AllocationTest {

    static List<Row> byHand() {
        return ReferenceTable.read("design/allocation.csv");
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ", -1)).mapToDouble(Double::parseDouble).toArray();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("byHand")
    void sharesOutAsByHand(Row row) {
        double[] sizes = numbers(row.text("sizes"));
        double[] costs = numbers(row.text("costs"));
        List<AllocatedStratum> strata = new ArrayList<>();
        for (int h = 0; h < sizes.length; h++) {
            OptionalDouble deviation =
                    row.has("deviations")
                            ? OptionalDouble.of(numbers(row.text("deviations"))[h])
                            : OptionalDouble.empty();
            strata.add(new AllocatedStratum("bench " + h, sizes[h], deviation, costs[h]));
        }

        Allocation plan = Allocation.of(strata, (int) row.number("total"));

        assertThat(plan.shares().stream().mapToDouble(Allocation.Share::sampleSize))
                .containsExactly(
                        Arrays.stream(numbers(row.text("samples"))).boxed().toArray(Double[]::new));
    }

    private static List<AllocatedStratum> drawn(SeededRandom random) {
        boolean known = random.uniform() < 0.5;
        List<AllocatedStratum> strata = new ArrayList<>();
        int number = 1 + random.below(12);
        for (int h = 0; h < number; h++) {
            OptionalDouble deviation =
                    known ? OptionalDouble.of(1 + random.below(4)) : OptionalDouble.empty();
            strata.add(
                    new AllocatedStratum(
                            "bench " + (char) ('A' + h),
                            1 + random.below(5) * random.below(300),
                            deviation,
                            1 + random.below(3)));
        }
        return strata;
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void addsUpWithAtLeastTwoInEachInAnyOrder(long seed) {
        SeededRandom random = new SeededRandom(seed);
        List<AllocatedStratum> strata = drawn(random);
        int total = 2 * strata.size() + random.below(60);

        Allocation plan = Allocation.of(strata, total);

        assertThat(plan.sampleSize()).isEqualTo(total);
        assertThat(plan.shares()).allMatch(share -> share.sampleSize() >= Allocation.LEAST);
        assertThat(plan.shares())
                .allMatch(s -> Math.abs(s.sampleSize() - s.samplesExact()) < 1 + 1e-6);
        List<AllocatedStratum> shuffled = new ArrayList<>(strata);
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(byName(Allocation.of(shuffled, total))).isEqualTo(byName(plan));
    }

    private static Map<String, Integer> byName(Allocation plan) {
        return plan.shares().stream()
                .collect(Collectors.toMap(s -> s.stratum().name(), Allocation.Share::sampleSize));
    }

    /** Nobody who has more than two samples could give three away with profit. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void neymansRatioIsTheBestForTheCropsMean(long seed) {
        SeededRandom random = new SeededRandom(seed);
        List<AllocatedStratum> strata =
                drawn(random).stream()
                        .map(
                                s ->
                                        new AllocatedStratum(
                                                s.name(),
                                                s.samplingUnitsStanding(),
                                                OptionalDouble.of(1 + random.below(4)),
                                                1))
                        .toList();
        Allocation plan = Allocation.of(strata, 100 + random.below(100));
        double error = plan.standardError().orElseThrow();
        for (int from = 0; from < strata.size(); from++) {
            for (int to = 0; to < strata.size(); to++) {
                if (from != to && plan.shares().get(from).sampleSize() >= 5) {
                    assertThat(moved(plan, from, to).standardError().orElseThrow())
                            .isGreaterThanOrEqualTo(error * (1 - 1e-12));
                }
            }
        }
    }

    private static Allocation moved(Allocation plan, int from, int to) {
        List<Allocation.Share> shares = new ArrayList<>(plan.shares());
        shares.set(from, more(shares.get(from), -3));
        shares.set(to, more(shares.get(to), 3));
        return new Allocation(plan.method(), shares);
    }

    private static Allocation.Share more(Allocation.Share share, int samples) {
        return new Allocation.Share(
                share.stratum(), share.samplesExact(), share.sampleSize() + samples);
    }

    /** 90, 9 and 1 of 100 growing points: 4.5, 0.45 and 0.05 of 5 jars. */
    @Test
    void aSearchLeavesNoPartOutButAsksForOneOnly() {
        List<AllocatedStratum> strata =
                List.of(
                        AllocatedStratum.ofSize("A", 90),
                        AllocatedStratum.ofSize("B", 9),
                        AllocatedStratum.ofSize("C", 1));

        assertThat(Allocation.of(strata, 5, 1).shares())
                .extracting(Allocation.Share::sampleSize)
                .containsExactly(3, 1, 1);
        assertThat(Allocation.of(strata, 6, 2)).isEqualTo(Allocation.of(strata, 6));
        assertThatThrownBy(() -> Allocation.of(strata, 2, 1)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void tellsCostAndStandardError() {
        Allocation plan =
                Allocation.of(
                        List.of(
                                new AllocatedStratum("a", 300, OptionalDouble.of(2), 1),
                                new AllocatedStratum("b", 100, OptionalDouble.of(6), 4)),
                        9);

        // weights 600 and 300: 6 and 3; variance (3/4)² 4/6 + (1/4)² 36/3
        assertThat(plan.shares().get(0).sampleSize()).isEqualTo(6);
        assertThat(plan.cost()).isEqualTo(18);
        assertThat(plan.standardError().orElseThrow())
                .isCloseTo(Math.sqrt(0.375 + 0.75), within(1e-12));
    }

    @Test
    void refusesWhatCannotBe() {
        AllocatedStratum a = AllocatedStratum.ofSize("a", 10);
        AllocatedStratum b = new AllocatedStratum("b", 10, OptionalDouble.of(0), 1);

        assertThatThrownBy(() -> Allocation.of(List.of(), 4)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> Allocation.of(List.of(a), 1))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("2 or more");
        assertThatThrownBy(() -> Allocation.of(List.of(a, a), 4))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("twice");
        assertThatThrownBy(() -> Allocation.of(List.of(a, b), 4))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("all or none");
        assertThatThrownBy(() -> Allocation.of(List.of(b), 4))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Every standard deviation is 0");
        assertThatThrownBy(() -> AllocatedStratum.ofSize("a", 0)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void sharesOutAMillionAtOnce() {
        Allocation plan =
                Allocation.of(
                        List.of(
                                AllocatedStratum.ofSize("small", 1e-12),
                                AllocatedStratum.ofSize("large", 1e300)),
                        1_000_000);

        assertThat(plan.sampleSize()).isEqualTo(1_000_000);
    }
}
