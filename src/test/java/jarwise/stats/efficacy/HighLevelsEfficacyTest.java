package jarwise.stats.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.KPrior;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("slow")
class HighLevelsEfficacyTest {

    static List<Row> rows() {
        return ReferenceTable.read("efficacy/high-levels.csv");
    }

    @ParameterizedTest(name = "{0} level")
    @MethodSource("rows")
    void calibratedLimitsEqualPlainSumsOfEveryTailFromItsOwnEnd(Row row) {
        EfficacyTrial trial =
                EfficacyTrial.of(
                        jars(row, "treated_before"),
                        jars(row, "treated_after"),
                        jars(row, "check_before"),
                        jars(row, "check_after"));
        double tail = 0.5 * (1 - row.number("level"));
        CalibratedInteraction interaction =
                new CalibratedInteraction(trial, KPrior.standard(), tail);

        assertThat(interaction.lower(tail)).isCloseTo(row.number("lower"), within(2e-5));
        assertThat(interaction.upper(tail)).isCloseTo(row.number("upper"), within(2e-5));
    }

    private static List<Observation> jars(Row row, String group) {
        return Stream.of(row.text(group).split(" ", -1))
                .map(count -> Observation.of(Long.parseLong(count), 10))
                .toList();
    }
}
