package jarwise.stats.sequential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FixedPrecisionReferenceTest {

    static List<Row> green() {
        return ReferenceTable.read("sequential/green.csv");
    }

    static List<Row> thrips() {
        return ReferenceTable.read("sequential/green-thrips.csv");
    }

    static List<Row> sampleSizes() {
        return ReferenceTable.read("sequential/green-consistency.csv");
    }

    static List<Row> kuno() {
        return ReferenceTable.read("sequential/kuno.csv");
    }

    static List<Row> iwao() {
        return ReferenceTable.read("sequential/iwao.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("green")
    void greensLineEqualsGeneralStatisticsSoftware(Row row) {
        double count = greenLine(row).cumulativeCount((int) row.number("n")).orElseThrow();

        assertThat(count / row.number("T_n")).isCloseTo(1, within(1e-12));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("thrips")
    void greensLineForThripsOnOnion(Row row) {
        assertThat(greenLine(row).cumulativeCount((int) row.number("n")).orElseThrow())
                .isCloseTo(row.number("T_n"), within(row.printedDigits("T_n")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sampleSizes")
    void greensLinePassesThroughTheFixedSampleSizes(Row row) {
        double n = row.number("n");
        GreenLine line = greenLine(row);
        double before = line.cumulativeCount((int) Math.floor(n)).orElseThrow() / Math.floor(n);
        double after = line.cumulativeCount((int) Math.ceil(n)).orElseThrow() / Math.ceil(n);

        assertThat(row.number("m")).isBetween(after, before);
    }

    private static GreenLine greenLine(Row row) {
        return new GreenLine(row.number("a"), row.number("b"), row.number("D"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("kuno")
    void kunosLine(Row row) {
        KunoLine line = new KunoLine(row.number("alpha"), row.number("beta"), row.number("D"));
        int n = (int) row.number("n");

        assertThat(line.sampleSizeWithoutLine()).isCloseTo(4.8, within(1e-12));
        if (row.has("T_n")) {
            assertThat(line.cumulativeCount(n).orElseThrow())
                    .isCloseTo(row.number("T_n"), within(row.printedDigits("T_n")));
        } else {
            assertThat(line.cumulativeCount(n)).isEmpty();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("iwao")
    void iwaosBounds(Row row) {
        IwaoBounds bounds =
                new IwaoBounds(
                        row.number("critical"),
                        row.number("alpha"),
                        row.number("beta"),
                        row.number("t"));
        int n = (int) row.number("n");

        assertThat(bounds.lower(n))
                .isCloseTo(row.number("lower"), within(row.printedDigits("lower")));
        assertThat(bounds.upper(n))
                .isCloseTo(row.number("upper"), within(row.printedDigits("upper")));
    }
}
