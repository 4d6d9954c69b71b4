package jarwise.stats.efficacy;

import jarwise.stats.count.Observation;
import java.util.List;

/** Totals over the samples of a group. */
final class GroupTotals {

    private GroupTotals() {}

    static long individuals(List<Observation> observations) {
        return observations.stream().mapToLong(Observation::individuals).sum();
    }

    /** {@return individuals counted over sampling units read} */
    static double density(List<Observation> observations) {
        double exposure =
                observations.stream()
                        .map(Observation::exposure)
                        .sorted() // so that the order of the samples changes no digit
                        .mapToDouble(Double::doubleValue)
                        .sum();
        return individuals(observations) / exposure;
    }
}
