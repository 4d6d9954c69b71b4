package jarwise.stats.agreement;

import jarwise.stats.ReferenceTable;
import java.util.List;

/** The published pairs of Bland and Altman. */
final class PeakFlow {

    private PeakFlow() {}

    static List<CountPair> pairs(String first, String second) {
        return ReferenceTable.read("agreement/peak-flow.csv").stream()
                .map(row -> new CountPair((long) row.number(first), (long) row.number(second)))
                .toList();
    }
}
