package jarwise.stats.removal;

import jarwise.numeric.Quantiles;
import jarwise.numeric.Roots;
import java.util.OptionalDouble;

/**
 * The most likely total, and the totals that the washes do not contradict.
 *
 * @param likelihood of the total
 * @param estimate where it is largest; empty if it keeps rising
 */
record TotalProfile(TotalLikelihood likelihood, OptionalDouble estimate) {

    private static final double FARTHEST = 1e15;

    static TotalProfile of(TotalLikelihood likelihood) {
        double least = likelihood.least();
        if (!likelihood.hasMaximum()) {
            return new TotalProfile(likelihood, OptionalDouble.empty());
        }
        if (likelihood.slope(least) <= 0) {
            return new TotalProfile(likelihood, OptionalDouble.of(least));
        }
        return new TotalProfile(
                likelihood, Roots.walkingFrom(likelihood::slope, least, 0.1 * least + 1, FARTHEST));
    }

    /** Half of the chi-squared quantile with one degree of freedom. */
    private static double cut(double level) {
        return 0.5 * Quantiles.chiSquared(level);
    }

    double lower(double level) {
        double least = likelihood.least();
        double best = estimate.orElse(least);
        double floor = likelihood.at(best) - cut(level);
        if (likelihood.at(least) >= floor) {
            return least;
        }
        return Roots.between(total -> likelihood.at(total) - floor, least, best);
    }

    /** Empty if even endless totals are within the cut. */
    OptionalDouble upper(double level) {
        if (estimate.isEmpty()) {
            return OptionalDouble.empty();
        }
        double best = estimate.getAsDouble();
        double floor = likelihood.at(best) - cut(level);
        if (likelihood.limit() >= floor) {
            return OptionalDouble.empty();
        }
        return Roots.walkingFrom(
                total -> likelihood.at(total) - floor, best, 0.1 * best + 1, FARTHEST);
    }
}
