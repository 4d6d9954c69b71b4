package jarwise.stats.detect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.detect.LargeLot.Form;
import jarwise.stats.estimate.DetectionShare;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sample sizes for lots against printed tables and general statistics software. */
class LotTest {

    private static final DetectionShare ALL = DetectionShare.known(1);

    static List<Row> exact() {
        return ReferenceTable.read("detection/finite-lot.csv");
    }

    static List<Row> finiteTable() {
        return ReferenceTable.read("detection/finite-lot-table.csv");
    }

    static List<Row> largeTable() {
        return ReferenceTable.read("detection/large-lot-table.csv");
    }

    static List<Row> twoPerCent() {
        return ReferenceTable.read("detection/two-per-cent-sample.csv");
    }

    static List<Row> correlated() {
        return ReferenceTable.read("detection/correlated-lot.csv");
    }

    static List<Row> shortForm() {
        return ReferenceTable.read("detection/short-form.csv");
    }

    static List<Row> cannonRoe() {
        return ReferenceTable.read("detection/short-form-cannon-roe.csv");
    }

    static List<Row> shortFormGap() {
        return ReferenceTable.read("detection/short-form-gap.csv");
    }

    private static long whole(Row row, String column) {
        return Long.parseLong(row.text(column));
    }

    private static OptionalLong optional(Row row, String column) {
        return row.has(column) ? OptionalLong.of(whole(row, column)) : OptionalLong.empty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("exact")
    void finiteLotsEqualGeneralStatisticsSoftware(Row row) {
        FiniteLot lot =
                new FiniteLot(
                        whole(row, "lot"),
                        whole(row, "infested"),
                        DetectionShare.known(row.number("efficacy")));
        OptionalLong size = lot.sampleSize(row.number("confidence"));

        assertThat(size).isEqualTo(optional(row, "samples"));
        long at = size.orElse(lot.lotSize());
        assertThat(lot.probability(at)).isCloseTo(row.number("probability"), within(1e-12));
        if (row.has("probability_one_less")) {
            assertThat(lot.probability(at - 1))
                    .isCloseTo(row.number("probability_one_less"), within(1e-12));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("finiteTable")
    void finiteLotsEqualThePlantHealthTable(Row row) {
        long lotSize = whole(row, "lot");
        double proportion = row.number("proportion");
        long infested = FiniteLot.infestedUnits(lotSize, proportion);

        assertThat(new FiniteLot(lotSize, infested, ALL).sampleSize(row.number("confidence")))
                .hasValue(whole(row, "samples"));
        boolean roundedDown = Math.abs(infested - lotSize * proportion) > 1e-9;
        assertThat(roundedDown).isEqualTo(row.text("rounded_down").equals("yes"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("largeTable")
    void largeLotsEqualThePlantHealthTables(Row row) {
        for (Form form : Form.values()) {
            DetectionShare efficacy = DetectionShare.known(row.number("efficacy"));
            LargeLot lot = new LargeLot(row.number("proportion"), efficacy, form);

            assertThat(lot.sampleSize(row.number("confidence")))
                    .as(form.name())
                    .hasValue(whole(row, form == Form.BINOMIAL ? "binomial" : "poisson"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("twoPerCent")
    void aFixedShareOfTheLotMissesSmallLots(Row row) {
        long lotSize = whole(row, "lot");
        FiniteLot lot = new FiniteLot(lotSize, FiniteLot.infestedUnits(lotSize, 0.1), ALL);

        assertThat(lot.probability(whole(row, "fixed_sample")))
                .isCloseTo(row.number("fixed_probability"), within(0.00051));
        assertThat(lot.sampleSize(0.95)).hasValue(whole(row, "samples"));
        assertThat(lot.probability(whole(row, "samples")))
                .isCloseTo(row.number("probability"), within(0.00051));
    }

    @Test
    void oneUnitLessThanTheRuleAsksForIsJustShort() {
        assertThat(new FiniteLot(1000, 100, ALL).probability(28)).isCloseTo(0.949859, within(5e-7));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("correlated")
    void correlatedLotsEqualTheProductFormula(Row row) {
        double value = row.number("value");
        double rho = row.text("parameter").equals("theta") ? value / (1 + value) : value;

        assertThat(new CorrelatedLot(row.number("proportion"), rho, ALL).sampleSize(0.95))
                .hasValue(whole(row, "samples"));
    }

    @Test
    void strongClumpingCanAskForMoreThanAnybodyWouldTake() {
        double rho = 0.05 / 1.05;

        OptionalLong size = new CorrelatedLot(0.01, rho, ALL).sampleSize(0.95);

        assertThat(size.isEmpty() || size.getAsLong() > 10_000_000).isTrue();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shortForm")
    void theShortFormEqualsThePublishedOutput(Row row) {
        LotShortForms lot = new LotShortForms(whole(row, "lot"), whole(row, "infested"));

        assertThat(lot.sampleSize(row.number("confidence"), row.number("efficacy")))
                .isEqualTo(optional(row, "samples"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cannonRoe")
    void cannonAndRoesFormRoundsUpToTheExactSize(Row row) {
        LotShortForms lot = new LotShortForms(whole(row, "lot"), whole(row, "infested"));

        assertThat(lot.samplesExact(0.95)).isCloseTo(row.number("samples_exact"), within(0.0005));
        assertThat((long) Math.ceil(lot.samplesExact(0.95))).isEqualTo(whole(row, "exact"));
        assertThat(new FiniteLot(lot.lotSize(), lot.infestedUnits(), ALL).sampleSize(0.95))
                .hasValue(whole(row, "exact"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("shortFormGap")
    void theShortFormFallsAlittleShortOfTheExactChance(Row row) {
        long lot = whole(row, "lot");
        long infested = whole(row, "infested");
        double efficacy = row.number("efficacy");
        double exact =
                new FiniteLot(lot, infested, DetectionShare.known(efficacy))
                        .probability(whole(row, "samples"));
        double close =
                new LotShortForms(lot, infested).probability(whole(row, "samples"), efficacy);

        assertThat(exact).isCloseTo(row.number("exact"), within(5e-7));
        assertThat(close).isCloseTo(row.number("short_form"), within(5e-7)).isLessThan(exact);
    }

    @Test
    void twentyPlantsFindWhiteflyOnAFifthOfThem() {
        // printed claim: "> 95 %"; Bemisia tabaci in greenhouse vegetables, 1 - 0.8^20
        assertThat(new LargeLot(0.2, ALL, Form.BINOMIAL).probability(20))
                .isCloseTo(0.9884708, within(5e-8))
                .isGreaterThan(0.95);
    }

    @Test
    void refusesLotsThatCannotBe() {
        assertThatThrownBy(() -> new FiniteLot(0, 1, ALL)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FiniteLot(10, 11, ALL)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new FiniteLot(2_000_000_000L, 1, ALL))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> FiniteLot.infestedUnits(19, 0.05))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("less than one unit");
        assertThatThrownBy(() -> new LargeLot(1, ALL, Form.BINOMIAL))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new CorrelatedLot(0.1, 1, ALL)).isInstanceOf(InvalidInput.class);
    }
}
