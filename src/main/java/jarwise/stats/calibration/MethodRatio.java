package jarwise.stats.calibration;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.Quantiles;
import jarwise.stats.count.Observation;
import jarwise.stats.regression.Coefficient;
import jarwise.stats.regression.ModelFrame;
import jarwise.stats.regression.NegativeBinomialRegression;
import jarwise.stats.regression.ProfileLimits;
import jarwise.stats.regression.RegressionFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * How much of what one method finds another one finds, per sampling unit.
 *
 * @param ratio density by the first method over density by the second; 0 where the first found
 *     nothing, empty where the second found nothing
 * @param lower lower limit; empty where the samples set none
 * @param upper upper limit; empty where the samples set none
 * @param pairs benches and days with both methods and a find by at least one
 * @param k dispersion, one for both methods; empty where no finite k is better than Poisson
 */
public record MethodRatio(
        OptionalDouble ratio,
        OptionalDouble lower,
        OptionalDouble upper,
        int pairs,
        OptionalDouble k) {

    /**
     * What share of what the second method finds does the first find?
     *
     * <p>ln(mean) = ln(exposure) + effect of bench and day + ln(ratio) for the first method; the
     * ratio by maximum likelihood, limits by its profile, everything else fitted anew.
     *
     * <p><b>Assumes</b> that the ratio is the same on every bench and day, and that both methods
     * scatter with the same k. Taps are fewer per sample and mostly scatter less than jars by their
     * mean, but not in k; where the true k differ, the limits are too short for the method with the
     * smaller k. The effect of each bench and day is fitted, so with one sample of each method a
     * pair k comes out too large, and limits too short.
     *
     * <p><b>Source.</b> Negative binomial regression with a block for each pair, see {@link
     * NegativeBinomialRegression}. Checked by our own arithmetic only.
     *
     * @param samples samples of both methods; pairs that lack one method, or in which nothing was
     *     found, say nothing and are left out
     * @param confidenceLevel level of the limits, between 0 and 1
     * @return the ratio
     * @throws InvalidInput if no pair is left
     */
    public static MethodRatio of(List<PairedCount> samples, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        Set<String> pairs = telling(samples);
        if (pairs.isEmpty()) {
            throw new InvalidInput(
                    "No bench and day has samples of both methods with a find; at least 1 is"
                            + " needed.");
        }
        List<PairedCount> used = samples.stream().filter(s -> pairs.contains(s.pair())).toList();
        RegressionFit fit = NegativeBinomialRegression.fit(frame(used, List.copyOf(pairs)));
        double[] contrast = fit.only(0);
        ProfileLimits log = fit.limits(contrast, Quantiles.chiSquared(confidenceLevel));
        boolean firstEmpty = used.stream().noneMatch(s -> s.first() && found(s));
        return new MethodRatio(
                firstEmpty ? OptionalDouble.of(0) : exponential(fit.estimate(contrast)),
                firstEmpty ? OptionalDouble.of(0) : exponential(log.lower()),
                exponential(log.upper()),
                pairs.size(),
                fit.k());
    }

    /**
     * Whether some bench and day has samples of both methods with a find.
     *
     * @param samples samples of both methods
     * @return whether there is a ratio to look for
     */
    public static boolean canTell(List<PairedCount> samples) {
        return !telling(samples).isEmpty();
    }

    private static Set<String> telling(List<PairedCount> samples) {
        Set<String> pairs = pairsWhere(samples.stream().filter(PairedCount::first).toList());
        pairs.retainAll(pairsWhere(samples.stream().filter(s -> !s.first()).toList()));
        pairs.retainAll(pairsWhere(samples.stream().filter(MethodRatio::found).toList()));
        return pairs;
    }

    private static Set<String> pairsWhere(List<PairedCount> samples) {
        return samples.stream()
                .map(PairedCount::pair)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean found(PairedCount sample) {
        return sample.observation().individuals() > 0;
    }

    private static ModelFrame frame(List<PairedCount> used, List<String> pairs) {
        List<Coefficient> coefficients = new ArrayList<>();
        coefficients.add(new Coefficient("method", Optional.empty()));
        pairs.forEach(pair -> coefficients.add(new Coefficient("pair", Optional.of(pair))));
        ModelFrame.Builder frame = new ModelFrame.Builder(coefficients);
        for (PairedCount sample : used) {
            double[] row = new double[coefficients.size()];
            row[0] = sample.first() ? 1 : 0;
            row[1 + pairs.indexOf(sample.pair())] = 1;
            Observation observation = sample.observation();
            frame.add(row, observation.exposure(), observation.individuals(), 1);
        }
        return frame.build();
    }

    private static OptionalDouble exponential(OptionalDouble log) {
        return log.isPresent()
                ? OptionalDouble.of(Math.exp(log.getAsDouble()))
                : OptionalDouble.empty();
    }

    /**
     * How many samples of the first method tell as much about the density as some of the second?
     *
     * <p>As many as give the same relative standard error of the mean: {@code samples × (1 / m1 + 1
     * / k) / (1 / m2 + 1 / k)} with m the individuals expected in one sample of each method.
     *
     * @param samples samples of the second method, above 0
     * @param density individuals per sampling unit by the second method, above 0
     * @param firstUnits sampling units in a sample of the first method, above 0
     * @param secondUnits sampling units in a sample of the second method, above 0
     * @return samples of the first method, not rounded; empty where it finds nothing
     */
    public OptionalDouble equivalentSamples(
            double samples, double density, double firstUnits, double secondUnits) {
        Require.positive("samples", samples);
        Require.positive("density", density);
        if (ratio.isEmpty() || ratio.getAsDouble() == 0) {
            return OptionalDouble.empty();
        }
        double clumping = 1 / k.orElse(Double.POSITIVE_INFINITY);
        double first = 1 / (ratio.getAsDouble() * density * firstUnits) + clumping;
        double second = 1 / (density * secondUnits) + clumping;
        return OptionalDouble.of(samples * first / second);
    }
}
