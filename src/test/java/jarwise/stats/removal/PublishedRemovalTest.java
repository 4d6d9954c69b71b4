package jarwise.stats.removal;

import static jarwise.stats.removal.RemovalReferenceTest.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;

import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PublishedRemovalTest {

    static List<Row> published() {
        return ReferenceTable.read("removal/published.csv");
    }

    static List<Row> ownArithmetic() {
        return ReferenceTable.read("removal/own-arithmetic.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("published")
    void equalsWhatWasPrinted(Row row) {
        RemovalEstimate estimate = estimate(row);

        if (row.text("method").equals("robson-regier")) {
            assertThat(Math.ceil(estimate.estimate().orElseThrow())).isEqualTo(row.number("n"));
        } else {
            assertPrinted(estimate.estimate().orElseThrow(), row, "n");
        }
        if (row.has("p")) {
            assertPrinted(estimate.removalProbability().orElseThrow(), row, "p");
        }
        if (row.has("se_does_not_reproduce")) {
            assertPrinted(estimate.standardError().orElseThrow(), row, "se_does_not_reproduce");
        } else if (row.has("se")) {
            assertPrinted(estimate.standardError().orElseThrow(), row, "se");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ownArithmetic")
    void equalsTheFormulasWorkedOutApart(Row row) {
        RemovalEstimate estimate = estimate(row);
        double total = estimate.estimate().orElseThrow();

        assertPrinted(total, row, "n");
        if (row.has("se")) {
            assertPrinted(estimate.standardError().orElseThrow(), row, "se");
        }
        if (row.has("p")) {
            assertPrinted(estimate.removalProbability().orElseThrow(), row, "p");
        }
        if (row.has("se_p")) {
            double share = estimate.removalProbability().orElseThrow();
            int washes = RemovalReferenceTest.catches(row).washes();
            assertPrinted(RemovalPrecision.standardErrorOfShare(total, share, washes), row, "se_p");
        }
    }

    private static RemovalEstimate estimate(Row row) {
        RemovalCatches catches = RemovalReferenceTest.catches(row);
        return switch (row.text("method")) {
            case "ml" -> RemovalMethod.ML.estimate(catches, 0.95);
            case "zippin" -> RemovalMethod.ZIPPIN.estimate(catches, 0.95);
            case "carle-strub" -> RemovalMethod.CARLE_STRUB.estimate(catches, 0.95);
            case "seber-2" -> TwoPassRemoval.seber(catches, 0.95);
            case "robson-regier" -> TwoPassRemoval.robsonRegier(catches, 0.95);
            case "seber-3" -> ThreePassRemoval.seber(catches, 0.95);
            default -> throw new IllegalArgumentException(row.text("method"));
        };
    }
}
