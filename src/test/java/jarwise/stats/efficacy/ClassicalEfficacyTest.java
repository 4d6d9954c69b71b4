package jarwise.stats.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.efficacy.ClassicalEfficacy.BeforeAfter;
import jarwise.stats.efficacy.ClassicalEfficacy.Limits;
import jarwise.stats.efficacy.ClassicalEfficacy.Survivors;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClassicalEfficacyTest {

    static Stream<ReferenceTable.Row> rows() {
        return Stream.of("classical.csv", "own-arithmetic.csv")
                .flatMap(file -> ReferenceTable.read("efficacy/" + file).stream());
    }

    static List<ReferenceTable.Row> limits() {
        return rows().filter(row -> row.cells().containsKey("lower") && row.has("lower")).toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsTheReferenceValue(ReferenceTable.Row row) {
        OptionalDouble efficacy = efficacy(row);

        if (row.has("percent")) {
            assertThat(100 * efficacy.orElseThrow())
                    .isCloseTo(
                            row.number("percent"),
                            within(Math.max(1e-12, row.printedDigits("percent"))));
        } else {
            assertThat(efficacy).isEmpty();
        }
    }

    private static OptionalDouble efficacy(ReferenceTable.Row row) {
        double a = row.number("a");
        double b = row.number("b");
        return switch (row.text("formula")) {
            case "abbott" -> ClassicalEfficacy.abbott(b, a);
            case "mortality" -> ClassicalEfficacy.ofMortalities(a / 100, b / 100);
            case "sun-shepard" -> ClassicalEfficacy.sunShepard(a / 100, b / 100);
            case "henderson-tilton" ->
                    ClassicalEfficacy.hendersonTilton(new BeforeAfter(a, b), check(row));
            case "binomial" -> ClassicalEfficacy.abbott(a / b, row.number("c") / row.number("d"));
            default -> throw new IllegalStateException(row.text("formula"));
        };
    }

    private static BeforeAfter check(ReferenceTable.Row row) {
        return new BeforeAfter(row.number("c"), row.number("d"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("limits")
    void limitsEqualTheReferenceValue(ReferenceTable.Row row) {
        Limits limits =
                row.text("formula").equals("binomial")
                        ? ClassicalEfficacy.abbottBinomialLimits(
                                new Survivors((long) row.number("a"), (long) row.number("b")),
                                new Survivors((long) row.number("c"), (long) row.number("d")),
                                0.95)
                        : ClassicalEfficacy.poissonLimits(
                                new BeforeAfter(row.number("a"), row.number("b")),
                                check(row),
                                0.95);

        assertThat(100 * limits.lower())
                .isCloseTo(row.number("lower"), within(row.printedDigits("lower")));
        assertThat(100 * limits.upper())
                .isCloseTo(row.number("upper"), within(row.printedDigits("upper")));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void threeNamesAreOneFigure(long seed) {
        Random random = new Random(seed);
        BeforeAfter treated = new BeforeAfter(1 + random.nextInt(999), random.nextInt(999));
        BeforeAfter check = new BeforeAfter(1 + random.nextInt(999), 1 + random.nextInt(999));
        double fall = 1 - treated.after() / treated.before();
        double rise = check.after() / check.before() - 1;
        double hendersonTilton = ClassicalEfficacy.hendersonTilton(treated, check).orElseThrow();

        assertThat(ClassicalEfficacy.sunShepard(fall, rise).orElseThrow())
                .isCloseTo(hendersonTilton, within(1e-9 * (1 + Math.abs(hendersonTilton))));
        double dead = random.nextDouble();
        double deadCheck = 0.99 * random.nextDouble();
        assertThat(ClassicalEfficacy.ofMortalities(dead, deadCheck).orElseThrow())
                .isCloseTo((dead - deadCheck) / (1 - deadCheck), within(1e-9 * 100));
    }

    @Test
    void nothingToDivideByIsNoFigure() {
        BeforeAfter some = new BeforeAfter(5, 3);

        assertThat(ClassicalEfficacy.abbott(3, 0)).isEmpty();
        assertThat(ClassicalEfficacy.hendersonTilton(new BeforeAfter(0, 3), some)).isEmpty();
        assertThat(ClassicalEfficacy.hendersonTilton(some, new BeforeAfter(3, 0))).isEmpty();
        assertThat(ClassicalEfficacy.hendersonTilton(some, new BeforeAfter(0, 3))).isEmpty();
        assertThat(ClassicalEfficacy.sunShepard(0.9, -1)).isEmpty();
    }

    @Test
    void impossibleNumbersAreRefused() {
        assertThatThrownBy(() -> ClassicalEfficacy.abbott(-1, 2)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> ClassicalEfficacy.ofMortalities(1.1, 0.2))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("mortality is 1.1");
        assertThatThrownBy(() -> ClassicalEfficacy.ofMortalities(Double.NaN, 0.2))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new Survivors(5, 4)).isInstanceOf(InvalidInput.class);
    }
}
