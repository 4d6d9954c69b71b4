package jarwise.stats.comparison;

import jarwise.stats.regression.LikelihoodRatio;
import jarwise.stats.regression.ProfileLimits;
import jarwise.stats.regression.RegressionFit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How many times as many there are at one level as at another.
 *
 * @param a level above the line of the fraction
 * @param b level below it
 * @param ratio density at a over density at b; 0 where nothing was found at a, empty where nothing
 *     was found at b
 * @param limits profile limits of the ratio
 * @param logRatio natural logarithm of the ratio; empty where one level has no find
 * @param standardError of {@code logRatio}, expected information
 * @param pValue likelihood ratio; empty where neither level has a find
 * @param pAdjusted the same adjusted by Holm over all pairs
 */
public record PairRatio(
        String a,
        String b,
        OptionalDouble ratio,
        ProfileLimits limits,
        OptionalDouble logRatio,
        OptionalDouble standardError,
        OptionalDouble pValue,
        OptionalDouble pAdjusted) {

    static List<PairRatio> all(RegressionFit fit, LevelFrame frame, double cut) {
        List<PairRatio> pairs = new ArrayList<>();
        List<String> levels = frame.levels();
        for (int a = 0; a < levels.size(); a++) {
            for (int b = a + 1; b < levels.size(); b++) {
                pairs.add(of(fit, frame, levels.get(a), levels.get(b), cut));
            }
        }
        return adjusted(pairs);
    }

    private static PairRatio of(
            RegressionFit fit, LevelFrame frame, String a, String b, double cut) {
        boolean foundAtA = fit.estimate(frame.mean(a)).isPresent();
        boolean foundAtB = fit.estimate(frame.mean(b)).isPresent();
        OptionalDouble none = OptionalDouble.empty();
        if (!foundAtA && !foundAtB) {
            return new PairRatio(a, b, none, new ProfileLimits(none, none), none, none, none, none);
        }
        double[] contrast = frame.ratio(a, b);
        OptionalDouble log = fit.estimate(contrast);
        ProfileLimits limits = fit.limits(contrast, cut).exponential();
        OptionalDouble ratio =
                log.isPresent()
                        ? OptionalDouble.of(Math.exp(log.getAsDouble()))
                        : foundAtB ? OptionalDouble.of(0) : none;
        return new PairRatio(
                a,
                b,
                ratio,
                foundAtA ? limits : new ProfileLimits(OptionalDouble.of(0), limits.upper()),
                log,
                fit.standardError(contrast),
                OptionalDouble.of(LikelihoodRatio.of(fit.deviance(contrast, 0), 1).pValue()),
                none);
    }

    private static List<PairRatio> adjusted(List<PairRatio> pairs) {
        List<PairRatio> tested = pairs.stream().filter(p -> p.pValue().isPresent()).toList();
        double[] adjusted =
                HolmAdjustment.of(
                        tested.stream().mapToDouble(p -> p.pValue().getAsDouble()).toArray());
        return pairs.stream()
                .map(
                        pair ->
                                pair.pValue().isPresent()
                                        ? pair.with(adjusted[tested.indexOf(pair)])
                                        : pair)
                .toList();
    }

    private PairRatio with(double adjusted) {
        return new PairRatio(
                a, b, ratio, limits, logRatio, standardError, pValue, OptionalDouble.of(adjusted));
    }
}
