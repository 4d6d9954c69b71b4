package jarwise.stats.dispersion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class DispersionWarningsTest {

    private static CountDispersion of(long... counts) {
        return CountDispersion.of(
                Arrays.stream(counts).mapToObj(count -> Observation.of(count, 1)).toList());
    }

    private static MeanAndVariance group(String name, double mean, double variance, long size) {
        return new MeanAndVariance(name, size, mean, variance);
    }

    @Test
    void saysWhatCannotBeSaid() {
        assertThat(of(0, 0, 0).warnings()).singleElement().asString().contains("No find");
        assertThat(of(3).warnings()).singleElement().asString().contains("One sample");
        assertThat(of(2, 2, 3, 2).warnings())
                .hasSize(4)
                .anyMatch(line -> line.contains("Fewer than 15"))
                .anyMatch(line -> line.contains("No k by moments"))
                .anyMatch(line -> line.contains("zero class"))
                .anyMatch(line -> line.contains("maximum likelihood: the counts"));
        assertThat(of(0, 1).warnings()).anyMatch(line -> line.contains("Morisita"));
        assertThat(of(0, 2).warnings()).noneMatch(line -> line.contains("Morisita"));
    }

    @Test
    void fifteenClumpedSamplesNeedNoWarning() {
        assertThat(of(0, 0, 0, 0, 0, 0, 0, 0, 9, 1, 0, 4, 0, 7, 2).warnings()).isEmpty();
        assertThat(of(0, 0, 0, 0, 0, 0, 0, 9, 1, 0, 4, 0, 7, 2).warnings())
                .singleElement()
                .asString()
                .contains("Fewer than 15");
    }

    @Test
    void aSampleAloneHasNoVariance() {
        assertThat(MeanAndVariance.of("one", of(3))).isEmpty();
        MeanAndVariance two = MeanAndVariance.of("two", of(1, 3)).orElseThrow();

        assertThat(two.mean()).isEqualTo(2);
        assertThat(two.variance()).isEqualTo(2);
        assertThat(two.sampleSize()).isEqualTo(2);
    }

    @Test
    void linesSayWhichGroupsTheyLeaveOutAndWhyThereIsNone() {
        MeanVarianceLines lines =
                MeanVarianceLines.of(
                        List.of(
                                group("a", 1, 2, 20),
                                group("b", 2, 0, 20),
                                group("c", 0, 0, 20),
                                group("d", 4, 9, 20),
                                group("e", 5, 12, 20),
                                group("f", 6, 19, 20)));

        assertThat(lines.taylor()).isEmpty();
        assertThat(lines.iwao()).isPresent();
        assertThat(lines.warnings())
                .hasSize(2)
                .anyMatch(line -> line.contains("leaves out groups") && line.contains("b; c"))
                .anyMatch(line -> line.contains("Taylor's") && line.contains("4 groups"));
    }

    @Test
    void linesThroughOneMeanDoNotExist() {
        List<MeanAndVariance> same = groups(20, 2, 2, 2, 2, 2);
        MeanVarianceLines lines = MeanVarianceLines.of(same);

        assertThat(lines.taylor()).isEmpty();
        assertThat(lines.iwao()).isEmpty();
        assertThat(lines.warnings())
                .hasSize(2)
                .allMatch(line -> line.contains("all have the same mean"));
        assertThat(MeanVarianceLines.of(same.subList(0, 4)).warnings())
                .hasSize(2)
                .allMatch(line -> line.contains("4 groups can be used"));
    }

    @Test
    void aFewSamplesAGroupAreSaidToBeFew() {
        List<MeanAndVariance> few = new ArrayList<>(groups(99, 1, 2, 4, 5, 7));
        few.set(2, group("few", 4, 9, 15));

        assertThat(MeanVarianceLines.of(groups(16, 1, 2, 4, 5, 7)).warnings()).isEmpty();
        assertThat(MeanVarianceLines.of(few).warnings())
                .singleElement()
                .asString()
                .contains("15 samples or fewer");
        assertThat(MeanVarianceLines.of(few.subList(0, 4)).warnings())
                .noneMatch(line -> line.contains("15 samples or fewer"));
    }

    private static List<MeanAndVariance> groups(long size, double... means) {
        List<MeanAndVariance> groups = new ArrayList<>();
        for (double mean : means) {
            int number = groups.size();
            groups.add(group("g" + number, mean, mean + 0.5 * mean * mean + number % 2, size));
        }
        return groups;
    }

    /** Anscombe (1973), first set: slope 0.500, intercept 3.00, r² 0.67, errors 0.118 and 1.125. */
    @Test
    void theLineThroughAnscombesFirstSet() {
        double[] x = {10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
        double[] y = {8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68};
        StraightLine line = StraightLine.through(x, y).orElseThrow();

        assertThat(line.slope().estimate()).isCloseTo(0.5001, within(5e-5));
        assertThat(line.intercept().estimate()).isCloseTo(3.0001, within(5e-5));
        assertThat(line.slope().standardError()).isCloseTo(0.1179, within(5e-5));
        assertThat(line.intercept().standardError()).isCloseTo(1.1247, within(5e-5));
        assertThat(line.rSquared().orElseThrow()).isCloseTo(0.6665, within(5e-5));
        // t of 9 degrees of freedom, table value 2.262
        assertThat(line.slope().lower()).isCloseTo(0.5001 - 2.262 * 0.1179, within(2e-4));
        assertThat(line.slope().upper()).isCloseTo(0.5001 + 2.262 * 0.1179, within(2e-4));
    }

    @Test
    void aLevelLineExplainsNothingThatVaries() {
        StraightLine line =
                StraightLine.through(new double[] {1, 2, 3}, new double[] {4, 4, 4}).orElseThrow();

        assertThat(line.rSquared()).isEmpty();
        assertThat(line.slope().estimate()).isZero();
        assertThat(StraightLine.through(new double[] {7, 7, 7}, new double[] {1, 2, 3})).isEmpty();
    }
}
