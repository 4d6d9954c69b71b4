package jarwise.stats.efficacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.ReferenceTable;
import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EfficacyReferenceTest {

    private static final EfficacyEstimator PROFILE =
            EfficacyEstimator.standard().withInterval(EfficacyInterval.PROFILE);

    static List<ReferenceTable.Row> rows() {
        return ReferenceTable.read("efficacy/golden.csv");
    }

    static List<ReferenceTable.Row> cutAtF() {
        return rows().stream().filter(row -> row.has("fCut")).toList();
    }

    private static EfficacyTrial trial(ReferenceTable.Row row) throws IOException {
        return Trials.read(row.text("data"), row.text("units").equals("yes"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void equalsGeneralStatisticsSoftware(ReferenceTable.Row row) throws IOException {
        EfficacyEstimate estimate = PROFILE.estimate(trial(row));

        assertClose(estimate.interaction(), row, "interaction", 1e-6);
        assertClose(estimate.standardError(), row, "standardError", 1e-6);
        assertClose(estimate.k(), row, "k", 1e-6 * row.number("k"));
        assertClose(estimate.efficacy(), row, "efficacy", 1e-6);
        assertClose(estimate.hendersonTilton(), row, "hendersonTilton", 1e-12);
        assertThat(estimate.logLikelihood()).isCloseTo(row.number("logLikelihood"), within(1e-8));
        if (row.has("pValue")) {
            assertClose(estimate.pValue(), row, "pValue", 1e-6 * row.number("pValue"));
        }
    }

    private static void assertClose(
            OptionalDouble value, ReferenceTable.Row row, String column, double tolerance) {
        assertThat(value.isPresent()).as(column).isEqualTo(row.has(column));
        if (row.has(column)) {
            assertThat(value.orElseThrow())
                    .as(column)
                    .isCloseTo(row.number(column), within(tolerance));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void profileLimitsAreThoseOfGeneralStatisticsSoftware(ReferenceTable.Row row)
            throws IOException {
        for (int level : new int[] {90, 95}) {
            EfficacyEstimate estimate =
                    PROFILE.withConfidenceLevel(0.01 * level).estimate(trial(row));

            assertClose(estimate.lower(), row, "lower" + level, 1e-5);
            assertClose(estimate.upper(), row, "upper" + level, 1e-5);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cutAtF")
    void theProfileMayBeCutAtAnyHeight(ReferenceTable.Row row) throws IOException {
        List<TrialCell> cells = TrialCell.of(trial(row));
        InteractionProfile profile = InteractionProfile.inside(cells, TrialColumns.of(cells));
        double cut = row.number("fCut");

        assertClose(profile.limit(-1, cut), row, "profileFLower", 1e-5);
        assertClose(profile.limit(1, cut), row, "profileFUpper", 1e-5);
    }
}
