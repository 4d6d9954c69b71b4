package jarwise.stats.count;

import jarwise.base.InvalidInput;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One k for several groups of samples, each with a density of its own.
 *
 * @param densities most likely density of each group at this k, in the order given
 * @param k most likely common dispersion; empty where no finite k is better than Poisson
 * @param logLikelihood natural logarithm of the likelihood there, all constants included
 */
public record CommonKFit(List<Double> densities, OptionalDouble k, double logLikelihood) {

    /** Keeps the list from being changed. */
    public CommonKFit {
        densities = List.copyOf(densities);
    }

    /**
     * How clumped is this pest, whatever its density was on each day?
     *
     * <p>Maximises the product of the likelihoods of {@link CountLikelihood} over k, every group
     * being at its own most likely density. Groups without a find say nothing about k and do no
     * harm.
     *
     * <p><b>Assumes</b> that k is the same in all groups. Densities are estimated beside it, so
     * with many small groups k is biased upwards.
     *
     * <p><b>Source.</b> Bliss and Owen (1958), <i>Biometrika</i> 45:37-58, on a common k (from
     * memory). Reference values: {@code reference/mean-and-k/common-k.csv}.
     *
     * @param groups samples of each group, at least one group
     * @return the fit
     * @throws InvalidInput if there is no group
     */
    public static CommonKFit of(List<CountData> groups) {
        if (groups.isEmpty()) {
            throw new InvalidInput("There is no group of samples; at least 1 is needed.");
        }
        List<CountLikelihood> likelihoods = groups.stream().map(CountLikelihood::new).toList();
        double k =
                KSearch.best(
                        new KSearch.Profile(
                                at -> height(likelihoods, at), at -> slope(likelihoods, at)));
        return new CommonKFit(
                likelihoods.stream().map(l -> Math.exp(l.mostLikelyLogDensity(k))).toList(),
                Double.isInfinite(k) ? OptionalDouble.empty() : OptionalDouble.of(k),
                height(likelihoods, k));
    }

    private static double height(List<CountLikelihood> likelihoods, double k) {
        double sum = 0;
        for (CountLikelihood likelihood : likelihoods) {
            if (likelihood.data().individuals() > 0) {
                sum += likelihood.at(likelihood.mostLikelyLogDensity(k), k);
            }
        }
        return sum;
    }

    private static double slope(List<CountLikelihood> likelihoods, double k) {
        double sum = 0;
        for (CountLikelihood likelihood : likelihoods) {
            if (likelihood.data().individuals() > 0) {
                sum += likelihood.slopeInLogK(likelihood.mostLikelyLogDensity(k), k);
            }
        }
        return sum;
    }
}
