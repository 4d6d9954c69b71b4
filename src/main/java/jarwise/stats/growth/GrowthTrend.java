package jarwise.stats.growth;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.regression.Coefficient;
import jarwise.stats.regression.ModelFrame;
import jarwise.stats.regression.NegativeBinomialRegression;
import jarwise.stats.regression.RegressionFit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A density that grows or falls by the same share in each unit of time: ln(density) along a
 * straight line.
 */
public final class GrowthTrend {

    private final RegressionFit fit;
    private final double confidenceLevel;

    private GrowthTrend(List<TimedCount> samples, double lastTime, double confidenceLevel) {
        this.confidenceLevel = confidenceLevel;
        fit = fit(samples, lastTime);
    }

    /**
     * How fast does it grow?
     *
     * <p>Negative binomial regression of the counts on time, with ln(sampling units × share read)
     * as offset; all limits are profile limits, k fitted anew.
     *
     * <p><b>Assumes</b> samples independent, growth by the same share all the time, and one k for
     * all rounds. With few rounds the differences between rounds that the line leaves over go into
     * k only, so that limits are too short.
     *
     * <p><b>Source.</b> Log-linear regression as in {@link NegativeBinomialRegression}. Checked by
     * our own arithmetic: exact exponential data give their rate back.
     *
     * @param samples samples taken at two times or more, in any order
     * @param confidenceLevel level of all limits, between 0 and 1
     * @return the trend
     * @throws InvalidInput if all samples are of one time, or a number is out of range
     */
    public static GrowthTrend of(List<TimedCount> samples, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        if (samples.stream().mapToDouble(TimedCount::time).distinct().count() < 2) {
            throw new InvalidInput(
                    "All samples are of one time; growth needs at least 2 rounds, and 3 or more"
                            + " are better.");
        }
        double last = samples.stream().mapToDouble(TimedCount::time).max().orElseThrow();
        return new GrowthTrend(List.copyOf(samples), last, confidenceLevel);
    }

    private static RegressionFit fit(List<TimedCount> samples, double lastTime) {
        ModelFrame.Builder frame =
                new ModelFrame.Builder(
                        List.of(Coefficient.INTERCEPT, new Coefficient("time", Optional.empty())));
        for (TimedCount sample : samples) {
            frame.add(
                    new double[] {1, sample.time() - lastTime},
                    sample.observation().exposure(),
                    sample.observation().individuals(),
                    1);
        }
        return NegativeBinomialRegression.fit(frame.build());
    }

    /** {@return growth of ln(density) per unit of time, with limits and its test against 0} */
    public TrendFigure rate() {
        return TrendFigure.of(fit, new double[] {0, 1}, confidenceLevel);
    }

    /**
     * ln(density) on the line.
     *
     * @param time units of time after the last sample; may be negative
     * @return it with limits; its test is against a density of 1
     */
    public TrendFigure logDensity(double time) {
        return TrendFigure.of(fit, new double[] {1, time}, confidenceLevel);
    }

    /**
     * When will it be above a threshold?
     *
     * <p>The chance that the density on the line is above is taken from the signed root of the
     * likelihood ratio against the threshold, which is taken for normal. The first step at which it
     * has passed {@code probability} is the answer.
     *
     * <p><b>Assumes</b> that growth goes on as it did: no treatment, no change of weather.
     *
     * @param threshold individuals per sampling unit, above 0
     * @param probability chance to be passed, between 0 and 1
     * @param step steps of time to look at, above 0
     * @param steps how many steps to look ahead
     * @return units of time after the last sample, 0 if it is so already; empty if not within the
     *     steps
     */
    public OptionalDouble passes(double threshold, double probability, double step, int steps) {
        Require.positive("threshold", threshold);
        Require.between("probability", probability, 0, 1);
        Require.positive("step", step);
        for (int i = 0; i <= steps; i++) {
            if (probabilityAbove(threshold, i * step) >= probability) {
                return OptionalDouble.of(i * step);
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * How sure is it that the density on the line is above a threshold at a time?
     *
     * @param threshold individuals per sampling unit, above 0
     * @param time units of time after the last sample
     * @return a chance, 0 to 1
     */
    public double probabilityAbove(double threshold, double time) {
        double[] contrast = {1, time};
        double logThreshold = Math.log(Require.positive("threshold", threshold));
        double half = 0.5 * TrendFigure.pValue(fit, contrast, logThreshold);
        boolean over = fit.estimate(contrast).orElse(Double.NEGATIVE_INFINITY) > logThreshold;
        return over ? 1 - half : half;
    }

    /** {@return the regression behind it: k, log-likelihood} */
    public RegressionFit fit() {
        return fit;
    }
}
