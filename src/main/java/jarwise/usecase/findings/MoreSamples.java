package jarwise.usecase.findings;

import jarwise.decision.Verdict;
import jarwise.decision.VerdictLimits;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** How many further samples would tell, if they looked like those there are. */
public final class MoreSamples {

    /** Nobody cuts more than this for one bench. */
    static final int MOST = 200;

    private MoreSamples() {}

    /**
     * Searches the smallest number.
     *
     * @param estimator with a line
     * @param observations samples so far
     * @param limits how sure a verdict must be
     * @return further samples; empty where not even {@value #MOST} would tell
     */
    public static OptionalInt thatWouldTell(
            DensityEstimator estimator, List<Observation> observations, VerdictLimits limits) {
        List<Observation> order = spread(observations);
        return smallest(
                more -> {
                    List<Observation> all = new ArrayList<>(observations);
                    for (int i = 0; i < more; i++) {
                        all.add(order.get(i % order.size()));
                    }
                    double above = estimator.estimate(all).probabilityAboveThreshold().orElse(0.5);
                    return Verdict.of(above, limits) != Verdict.CANNOT_TELL;
                });
    }

    /** Low and high counts by turns, from the middle outward, so that every part looks like all. */
    private static List<Observation> spread(List<Observation> observations) {
        List<Observation> rising = new ArrayList<>(observations);
        rising.sort(Comparator.comparingDouble(o -> o.individuals() / o.exposure()));
        List<Observation> order = new ArrayList<>();
        int low = (rising.size() - 1) / 2;
        int high = low + 1;
        while (low >= 0 || high < rising.size()) {
            if (low >= 0) {
                order.add(rising.get(low--));
            }
            if (high < rising.size()) {
                order.add(rising.get(high++));
            }
        }
        return order;
    }

    private static OptionalInt smallest(IntPredicate enough) {
        int high = 1;
        while (!enough.test(high)) {
            if (high == MOST) {
                return OptionalInt.empty();
            }
            high = Math.min(2 * high, MOST);
        }
        int low = high / 2;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (enough.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return OptionalInt.of(high);
    }
}
