package jarwise.plan;

import jarwise.stats.efficacy.EfficacyLimits;
import jarwise.stats.efficacy.EfficacyVerdict;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What a trial could tell.
 *
 * @param probabilities chance of each verdict; they add up to 1
 * @param lowerMedian lower limit that half of such trials exceed, one without a limit being lowest;
 *     empty where the middle one has none
 * @param upperMedian upper limit that half of such trials stay under, one without a limit being
 *     highest; empty where the middle one has none
 */
public record ComparisonOutlook(
        Map<EfficacyVerdict, Double> probabilities,
        OptionalDouble lowerMedian,
        OptionalDouble upperMedian) {

    public ComparisonOutlook {
        probabilities = Map.copyOf(probabilities);
    }

    static ComparisonOutlook of(List<EfficacyLimits> limits, double target) {
        Map<EfficacyVerdict, Double> chances = new EnumMap<>(EfficacyVerdict.class);
        for (EfficacyVerdict verdict : EfficacyVerdict.values()) {
            long number =
                    limits.stream()
                            .map(l -> EfficacyVerdict.of(l.lower(), l.upper(), target))
                            .filter(verdict::equals)
                            .count();
            chances.put(verdict, (double) number / limits.size());
        }
        return new ComparisonOutlook(
                chances,
                median(limits, l -> l.lower().orElse(Double.NEGATIVE_INFINITY)),
                median(limits, l -> l.upper().orElse(Double.POSITIVE_INFINITY)));
    }

    private static OptionalDouble median(
            List<EfficacyLimits> limits, Function<EfficacyLimits, Double> limit) {
        double[] sorted = limits.stream().mapToDouble(limit::apply).sorted().toArray();
        double middle = 0.5 * (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]);
        return Double.isFinite(middle) ? OptionalDouble.of(middle) : OptionalDouble.empty();
    }

    /** {@return the chance of a verdict} */
    public double probability(EfficacyVerdict verdict) {
        return probabilities.getOrDefault(verdict, 0.0);
    }
}
