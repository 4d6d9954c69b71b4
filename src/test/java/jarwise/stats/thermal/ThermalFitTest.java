package jarwise.stats.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ThermalFitTest {

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("thermal/fits.csv");
    }

    static List<ReferenceTable.Row> notComparable() {
        return rows().stream().filter(row -> row.text("flag").equals("not-comparable")).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsTheReference(ReferenceTable.Row row) {
        ThermalFit fit = fit(row);

        assertThat(fit.constants().lowerDevelopmentalTemperature())
                .isCloseTo(row.number("t0"), within(row.printedDigits("t0")));
        assertThat(fit.constants().degreeDays())
                .isCloseTo(row.number("k"), within(row.printedDigits("k")));
        if (row.has("rSquared")) {
            assertThat(fit.rSquared())
                    .isCloseTo(row.number("rSquared"), within(row.printedDigits("rSquared")));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("notComparable")
    void twoEndsComeWithinADegreeOfConstantsFromAllTemperatures(ReferenceTable.Row row) {
        ThermalConstants constants = fit(row).constants();

        assertThat(constants.lowerDevelopmentalTemperature())
                .isCloseTo(row.number("publishedT0"), within(1.0));
        assertThat(constants.degreeDays() / row.number("publishedK")).isBetween(0.97, 1.03);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void bothMethodsFindTheConstantsOfExactTimes(long seed) {
        Random random = new Random(seed);
        ThermalConstants truth =
                new ThermalConstants(14 * random.nextDouble(), 50 + 400 * random.nextDouble());
        double[] celsius = random.doubles(5, 16, 34).toArray();
        double[] days = Arrays.stream(celsius).map(t -> truth.days(t).orElseThrow()).toArray();

        for (Optional<ThermalFit> found :
                List.of(
                        ThermalFit.leastSquares(celsius, days),
                        ThermalFit.reducedMajorAxis(celsius, days))) {
            ThermalFit fit = found.orElseThrow();
            assertThat(fit.rSquared()).isCloseTo(1, within(1e-9));
            assertThat(fit.constants().lowerDevelopmentalTemperature())
                    .isCloseTo(truth.lowerDevelopmentalTemperature(), within(1e-6));
            assertThat(fit.constants().degreeDays())
                    .isCloseTo(truth.degreeDays(), within(1e-6 * truth.degreeDays()));
        }
    }

    @Test
    void aLevelLineOfHeatHasItsLowerLimitAtZero() {
        ThermalFit fit =
                ThermalFit.reducedMajorAxis(new double[] {10, 20}, new double[] {20, 10})
                        .orElseThrow();

        assertThat(fit).isEqualTo(new ThermalFit(new ThermalConstants(0, 200), 1));
    }

    @Test
    void findsNothingWhereWarmthDoesNotHasten() {
        double[] celsius = {10, 30};

        assertThat(ThermalFit.leastSquares(celsius, new double[] {10, 11})).isEmpty();
        assertThat(ThermalFit.leastSquares(celsius, new double[] {10, 10})).isEmpty();
        assertThat(ThermalFit.reducedMajorAxis(celsius, new double[] {10, 11})).isEmpty();
        assertThat(ThermalFit.reducedMajorAxis(celsius, new double[] {10, 10})).isEmpty();
    }

    @Test
    void refusesTimesThatCannotBe() {
        for (double[] days : new double[][] {{1}, {1, 2, 3}, {1, 0}, {1, Double.NaN}}) {
            assertThatThrownBy(() -> ThermalFit.leastSquares(new double[] {10, 20}, days))
                    .isInstanceOf(InvalidInput.class);
            assertThatThrownBy(() -> ThermalFit.reducedMajorAxis(new double[] {10, 20}, days))
                    .isInstanceOf(InvalidInput.class);
        }
        assertThatThrownBy(
                        () -> ThermalFit.leastSquares(new double[] {20, 20}, new double[] {9, 8}))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("two different");
    }

    private static ThermalFit fit(ReferenceTable.Row row) {
        double[] celsius = numbers(row.text("celsius"));
        double[] days = numbers(row.text("days"));
        return (row.text("method").equals("least-squares")
                        ? ThermalFit.leastSquares(celsius, days)
                        : ThermalFit.reducedMajorAxis(celsius, days))
                .orElseThrow();
    }

    private static double[] numbers(String cell) {
        return Arrays.stream(cell.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
