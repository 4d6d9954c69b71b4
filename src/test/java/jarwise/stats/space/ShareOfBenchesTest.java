package jarwise.stats.space;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShareOfBenchesTest {

    static List<Row> own() {
        return ReferenceTable.read("space/share.csv");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 100);
    }

    private static List<BenchCount> benches(String text) {
        List<BenchCount> benches = new ArrayList<>();
        for (String word : text.split(" ", -1)) {
            String[] parts = word.split("/", -1);
            benches.add(
                    new BenchCount(
                            "",
                            "b" + benches.size(),
                            benches.size(),
                            0,
                            Long.parseLong(parts[0]),
                            Double.parseDouble(parts[1])));
        }
        return benches;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("own")
    void shareIsThatOfOurOwnArithmetic(Row row) {
        ShareOfBenches share =
                ShareOfBenches.of(
                        benches(row.text("benches")), row.number("k"), row.number("effort"));

        assertThat(share.estimate()).isCloseTo(row.number("estimate"), within(1e-6));
        assertThat(share.lower()).isCloseTo(row.number("lower"), within(1e-6));
        assertThat(share.upper()).isCloseTo(row.number("upper"), within(1e-6));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void equalEffortGivesThePlainShareWhateverK(long seed) {
        SeededRandom random = new SeededRandom(seed);
        List<BenchCount> benches = new ArrayList<>();
        for (int i = 0; i < 3 + random.below(30); i++) {
            benches.add(new BenchCount("", "b" + i, i, 0, random.below(3), 8));
        }
        double plain =
                benches.stream().filter(BenchCount::isPositive).count() / (double) benches.size();

        ShareOfBenches clumped = ShareOfBenches.of(benches, 0.01, 8);
        ShareOfBenches even = ShareOfBenches.of(benches, Double.POSITIVE_INFINITY, 8);
        assertThat(clumped.estimate()).isCloseTo(plain, within(1e-9));
        assertThat(even.estimate()).isCloseTo(plain, within(1e-9));
        assertThat(clumped.lower()).isCloseTo(even.lower(), within(1e-9));
        assertThat(clumped.upper()).isCloseTo(even.upper(), within(1e-9));
        assertThat(even.lower()).isLessThanOrEqualTo(plain);
        assertThat(even.upper()).isGreaterThanOrEqualTo(plain);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void moreEffortFindsMoreAndOrderDoesNotMatter(long seed) {
        SeededRandom random = new SeededRandom(seed);
        List<BenchCount> benches = new ArrayList<>();
        for (int i = 0; i < 4 + random.below(10); i++) {
            double effort = 1 + random.below(20);
            benches.add(new BenchCount("", "b" + i, i, 0, random.poisson(0.1 * effort), effort));
        }
        List<BenchCount> shuffled = new ArrayList<>(benches);
        Collections.shuffle(shuffled, new Random(seed));

        ShareOfBenches ten = ShareOfBenches.of(benches, 0.6, 10);
        assertThat(ShareOfBenches.of(shuffled, 0.6, 10).estimate())
                .isCloseTo(ten.estimate(), within(1e-9));
        assertThat(ShareOfBenches.of(benches, 0.6, 40).upper()).isGreaterThan(ten.upper() - 1e-12);
        assertThat(ShareOfBenches.of(benches, 0.6, 40).lower()).isGreaterThanOrEqualTo(ten.lower());
    }

    @Test
    void allBenchesWithAFindHaveALowerLimitOnly() {
        ShareOfBenches share = ShareOfBenches.of(benches("1/5 2/5 9/5"), 2, 5);

        // three of three: the share p with -2 ln p^3 = 3.8415, by hand
        assertThat(share.lower()).isCloseTo(Math.exp(-3.841458820694124 / 6), within(1e-9));
        assertThat(share.upper()).isEqualTo(1);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> ShareOfBenches.of(List.of(), 1, 1))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> ShareOfBenches.of(benches("1/5"), Double.NaN, 1))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> ShareOfBenches.of(benches("1/5"), 1, 0))
                .isInstanceOf(InvalidInput.class);
    }
}
