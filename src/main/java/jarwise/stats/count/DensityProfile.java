package jarwise.stats.count;

import jarwise.numeric.Roots;
import java.util.OptionalDouble;

/**
 * Profile likelihood of the density of one group: how far the likelihood falls as the density moves
 * away from the most likely one while k follows to where it is best at every step, to Poisson if
 * need be; or stays where it was given.
 *
 * <p><b>Assumes</b> enough samples for the deviance to be near chi-squared with one degree of
 * freedom. With few jars it is too short: see the coverage study in docs/methods.md.
 *
 * <p><b>Source.</b> Venzon and Moolgavkar (1988), <i>Applied Statistics</i> 37:87-94 (from memory).
 * Reference values: {@code reference/mean-and-k/nb_single_sample.json}, profile limits of general
 * statistics software.
 */
public final class DensityProfile {

    private static final double FARTHEST_UP = 60; // on the scale of ln density
    private static final double FARTHEST_DOWN = 850; // e to its negative power is no number

    private final CountLikelihood likelihood;
    private final OptionalDouble givenK;
    private final CountFit fit;

    private DensityProfile(CountData data, OptionalDouble givenK, CountFit fit) {
        likelihood = new CountLikelihood(data);
        this.givenK = givenK;
        this.fit = fit;
    }

    /**
     * A profile along which k is estimated again at every density.
     *
     * @param data samples of one group with at least one find
     * @return the profile
     */
    public static DensityProfile of(CountData data) {
        return new DensityProfile(data, OptionalDouble.empty(), CountFit.of(data));
    }

    /**
     * A profile along which k stays as given.
     *
     * @param data samples of one group with at least one find
     * @param k dispersion, above 0; may be infinite
     * @return the profile
     */
    public static DensityProfile givenK(CountData data, double k) {
        return new DensityProfile(data, OptionalDouble.of(k), CountFit.givenK(data, k));
    }

    /** {@return the fit at the top of the profile} */
    public CountFit fit() {
        return fit;
    }

    /**
     * The highest log-likelihood at a density.
     *
     * @param logDensity natural logarithm of the density
     * @return log-likelihood, k being at its best
     */
    public double logLikelihood(double logDensity) {
        double k =
                givenK.orElseGet(
                        () ->
                                KSearch.best(
                                        new KSearch.Profile(
                                                at -> likelihood.at(logDensity, at),
                                                at -> likelihood.slopeInLogK(logDensity, at))));
        return likelihood.at(logDensity, k);
    }

    /**
     * Twice the fall of the log-likelihood from its top.
     *
     * @param density density, above 0
     * @return deviance, 0 or more
     */
    public double deviance(double density) {
        return Math.max(0, 2 * (fit.logLikelihood() - logLikelihood(Math.log(density))));
    }

    /**
     * Where the deviance reaches a cut on the way down.
     *
     * @param cut height of the cut, above 0
     * @return the lower limit of the density; 0 if the cut is never reached
     */
    public double lower(double cut) {
        OptionalDouble limit = crossing(cut, -1);
        return limit.isPresent() ? Math.exp(limit.getAsDouble()) : 0;
    }

    /**
     * Where the deviance reaches a cut on the way up.
     *
     * @param cut height of the cut, above 0
     * @return the upper limit of the density; empty if the samples do not limit it
     */
    public OptionalDouble upper(double cut) {
        OptionalDouble limit = crossing(cut, 1);
        return limit.isPresent()
                ? OptionalDouble.of(Math.exp(limit.getAsDouble()))
                : OptionalDouble.empty();
    }

    private OptionalDouble crossing(double cut, int direction) {
        double top = Math.log(fit.density());
        double step = fit.standardErrorOfLog().orElse(1);
        double end = direction > 0 ? top + FARTHEST_UP : top - FARTHEST_DOWN;
        return Roots.walkingFrom(
                x -> 2 * (fit.logLikelihood() - logLikelihood(x)) - cut,
                top,
                direction * step,
                end);
    }
}
