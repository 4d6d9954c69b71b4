package jarwise.stats.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.numeric.SeededRandom;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How many growing points should be in a jar. */
class JarFillTest {

    static List<Row> golden() {
        return ReferenceTable.read("design/components.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("golden")
    void componentsEqualGeneralStatisticsSoftware(Row row) {
        List<double[]> counts =
                Arrays.stream(row.text("counts").split("\\|", -1))
                        .map(s -> Arrays.stream(s.split(" ", -1)))
                        .map(s -> s.mapToDouble(Double::parseDouble).toArray())
                        .toList();
        VarianceComponents parts = VarianceComponents.of(counts);

        assertThat(parts.within()).isCloseTo(row.number("within"), within(1e-12));
        assertThat(parts.between()).isCloseTo(row.number("between"), within(1e-12));
        assertThat(parts.varianceOfMean(counts.size(), counts.get(0).length))
                .isCloseTo(row.number("variance_of_mean"), within(1e-12));
        assertThat(parts.intraclassCorrelation())
                .isCloseTo(row.number("intraclass"), within(1e-12));
        assertThat(parts.bestUnits(row.number("cost_ratio"), 1).orElseThrow())
                .isCloseTo(row.number("best_units"), within(1e-12));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void noOtherWholeNumberIsCheaper(long seed) {
        SeededRandom random = new SeededRandom(seed);
        VarianceComponents parts =
                new JarClumping(Math.exp(random.normal()), Math.exp(random.normal()))
                        .components(Math.exp(random.normal()));
        double jar = 1 + 20 * random.uniform();
        long best = parts.wholeUnits(jar, 1, 40);

        for (long u = 1; u <= 40; u++) {
            assertThat((jar + u) * parts.varianceOfMean(1, (double) u))
                    .isGreaterThanOrEqualTo(
                            (jar + best) * parts.varianceOfMean(1, (double) best) * (1 - 1e-12));
        }
    }

    /** Gamma levels of jars and of growing points in them, drawn 200,000 times. */
    @Test
    void clumpingOfAJarIsThatOfItsTwoLevels() {
        SeededRandom random = new SeededRandom(20260318);
        int units = 4;
        int jars = 200_000;
        double squares = 0;
        for (int i = 0; i < jars; i++) {
            double sum = 0;
            for (int u = 0; u < units; u++) {
                sum += random.gamma(0.7, 1);
            }
            squares += Math.pow(random.gamma(2, 1) * sum / units - 1, 2);
        }

        assertThat(squares / jars).isCloseTo(1 / new JarClumping(2, 0.7).k(units), within(0.03));
    }

    @Test
    void moreGrowingPointsMakeAJarMoreEvenUpToTheClumpingBetweenJars() {
        JarClumping clumping = new JarClumping(2, 0.7);

        assertThat(clumping.k(10)).isGreaterThan(clumping.k(5));
        assertThat(clumping.k(1e12)).isCloseTo(2, within(1e-9));
        assertThat(new JarClumping(Double.POSITIVE_INFINITY, 0.7).k(3))
                .isCloseTo(2.1, within(1e-12));
        assertThat(new JarClumping(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY).k(3))
                .isInfinite();
    }

    @Test
    void jarsThatDoNotDifferAreFilledUp() {
        VarianceComponents even = new JarClumping(Double.POSITIVE_INFINITY, 1).components(0.5);

        assertThat(even.bestUnits(10, 1)).isEmpty();
        assertThat(even.wholeUnits(10, 1, 12)).isEqualTo(12);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new JarClumping(0, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new VarianceComponents(-1, 1)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> VarianceComponents.of(List.of(new double[] {1, 2})))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(
                        () ->
                                VarianceComponents.of(
                                        List.of(new double[] {1, 2}, new double[] {1, 2, 3})))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("equal");
    }
}
