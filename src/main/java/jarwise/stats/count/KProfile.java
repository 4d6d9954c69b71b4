package jarwise.stats.count;

import jarwise.numeric.Roots;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Profile limits of k: the values that the samples of one group do not contradict.
 *
 * @param lower lower limit, above 0; 0 where there is none
 * @param upper upper limit; empty where Poisson counts are not contradicted either
 */
public record KProfile(double lower, OptionalDouble upper) {

    private static final double LOWEST_LOG_K = -20;
    private static final double HIGHEST_LOG_K = 20;

    /**
     * How sure is k?
     *
     * <p>The values of k at which twice the log-likelihood, the density being at its best, lies
     * less than {@code cut} under its top.
     *
     * <p><b>Assumes</b> what {@link CountFit#of} assumes, and enough samples for the deviance to be
     * near chi-squared.
     *
     * <p><b>Source.</b> As for {@link DensityProfile}.
     *
     * @param data samples of one group with at least one find
     * @param cut height of the cut, say 3.841459 for 95 %; above 0
     * @return the limits
     */
    public static KProfile of(CountData data, double cut) {
        CountFit fit = CountFit.of(data);
        CountLikelihood likelihood = new CountLikelihood(data);
        DoubleUnaryOperator overCut =
                logK -> {
                    double k = Math.exp(logK);
                    double height = likelihood.at(likelihood.mostLikelyLogDensity(k), k);
                    return 2 * (fit.logLikelihood() - height) - cut;
                };
        double top = Math.min(HIGHEST_LOG_K, Math.log(fit.kOrInfinity()));
        OptionalDouble low = Roots.walkingFrom(overCut, top, -0.5, LOWEST_LOG_K);
        OptionalDouble high =
                overCut.applyAsDouble(HIGHEST_LOG_K) < 0
                        ? OptionalDouble.empty()
                        : Roots.walkingFrom(overCut, top, 0.5, HIGHEST_LOG_K);
        return new KProfile(
                low.isPresent() ? Math.exp(low.getAsDouble()) : 0,
                high.isPresent()
                        ? OptionalDouble.of(Math.exp(high.getAsDouble()))
                        : OptionalDouble.empty());
    }
}
