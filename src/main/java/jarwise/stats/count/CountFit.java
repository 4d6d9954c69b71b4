package jarwise.stats.count;

import jarwise.base.InvalidInput;
import java.util.OptionalDouble;

/**
 * The most likely mean density and k of one group of samples.
 *
 * @param density most likely density, individuals per sampling unit on the scale of the counts; 0
 *     where nothing was found
 * @param k most likely or given dispersion; empty where the counts are taken as Poisson: because
 *     the likelihood has no maximum at finite k, which is an ordinary result, or because k was
 *     given as infinite
 * @param logLikelihood natural logarithm of the likelihood there, all constants included
 * @param standardErrorOfLog standard error of the natural logarithm of the density, expected
 *     information; empty where nothing was found
 */
public record CountFit(
        double density, OptionalDouble k, double logLikelihood, OptionalDouble standardErrorOfLog) {

    /**
     * How many are there, and how clumped are they?
     *
     * <p>Maximises the likelihood of {@link CountLikelihood} over density and k. At equal exposure
     * there is a finite k exactly where Σ(y − mean)² exceeds Σy (Levin and Reeds 1977, <i>Annals of
     * Statistics</i> 5:79-87, from memory). At unequal exposure all k from 1e-6 to 1e6 are searched
     * and the highest maximum is taken, so that a second, lower one is never mistaken for it.
     *
     * <p><b>Assumes</b> independent samples with one density and one k. With few samples k is
     * biased upwards; intervals that take k as known at this value are then too short.
     *
     * <p><b>Source.</b> Bliss and Fisher (1953), <i>Biometrics</i> 9:176-200. Reference values:
     * {@code reference/mean-and-k}.
     *
     * @param data samples of one group
     * @return the fit
     */
    public static CountFit of(CountData data) {
        CountLikelihood likelihood = new CountLikelihood(data);
        if (data.individuals() == 0) {
            return at(likelihood, Double.POSITIVE_INFINITY);
        }
        double atPoisson = likelihood.mostLikelyLogDensity(Double.POSITIVE_INFINITY);
        // below 1e-12 of the sum of squares the difference is rounding, not scatter
        boolean scattersLess = likelihood.slopeAtPoisson(atPoisson) <= 1e-12 * data.individuals();
        if (scattersLess && data.exposures() == 1) {
            return at(likelihood, Double.POSITIVE_INFINITY);
        }
        return at(likelihood, KSearch.best(profileOf(likelihood)));
    }

    private static KSearch.Profile profileOf(CountLikelihood likelihood) {
        return new KSearch.Profile(
                k -> likelihood.at(likelihood.mostLikelyLogDensity(k), k),
                k -> likelihood.slopeInLogK(likelihood.mostLikelyLogDensity(k), k));
    }

    /**
     * How many are there, if we know how clumped they are?
     *
     * @param data samples of one group
     * @param k dispersion, above 0; infinite means Poisson
     * @return the fit with this k
     * @throws InvalidInput if k is not above 0
     */
    public static CountFit givenK(CountData data, double k) {
        return at(new CountLikelihood(data), GivenK.require(k));
    }

    private static CountFit at(CountLikelihood likelihood, double k) {
        OptionalDouble finite =
                Double.isInfinite(k) ? OptionalDouble.empty() : OptionalDouble.of(k);
        double logDensity = likelihood.mostLikelyLogDensity(k);
        if (likelihood.data().individuals() == 0) {
            return new CountFit(0, finite, 0, OptionalDouble.empty());
        }
        double information = likelihood.informationOnLogDensity(logDensity, k);
        return new CountFit(
                Math.exp(logDensity),
                finite,
                likelihood.at(logDensity, k),
                OptionalDouble.of(1 / Math.sqrt(information)));
    }

    /** {@return whether the counts are taken as Poisson} */
    public boolean isPoisson() {
        return k.isEmpty();
    }

    /** {@return k, infinite for Poisson} */
    public double kOrInfinity() {
        return k.orElse(Double.POSITIVE_INFINITY);
    }
}
