package jarwise.stats.efficacy;

import jarwise.stats.count.CountData;
import jarwise.stats.count.CountLikelihood;

/**
 * What one bench says, at a given k, about the logarithm of its density after over its density
 * before: the likelihood with the bench's own density integrated out.
 */
final class BenchChange {

    private static final double LEAST_INDIVIDUALS = 0.5;
    private static final double POWER = 0.5;

    /**
     * An even grid of changes in ln density.
     *
     * @param origin one of its points
     * @param step distance of neighbours, above 0
     * @param negligible logarithm of the height, against the highest, that curves are cut off at
     */
    record ChangeGrid(double origin, double step, double negligible) {}

    private final CountLikelihood before;
    private final CountLikelihood after;

    /** Takes a bench with samples from before and from after. */
    BenchChange(TrialBench bench) {
        before = new CountLikelihood(CountData.of(bench.before()));
        after = new CountLikelihood(CountData.of(bench.after()));
    }

    /** {@return whether anything was found, before or after; else the bench says nothing} */
    boolean hasFind() {
        return before.data().individuals() + after.data().individuals() > 0;
    }

    /** {@return likelihoods of the samples from before and from after} */
    CountLikelihood[] likelihoods() {
        return new CountLikelihood[] {before, after};
    }

    /** {@return a ln density near the likelier ones, also where nothing was found} */
    static double start(CountLikelihood likelihood) {
        CountData data = likelihood.data();
        return Math.log(Math.max(LEAST_INDIVIDUALS, data.individuals()) / data.totalExposure());
    }

    /** {@return the change where the peak is to be looked for} */
    double start() {
        return start(after) - start(before);
    }

    /**
     * The integrated likelihood along the change.
     *
     * @param k dispersion, finite
     * @param grid places of the changes
     * @param sharing how many benches of the arm share this change; 1 or more
     */
    GridCurve at(double k, ChangeGrid grid, int sharing) {
        int places = (int) Math.rint((start() - grid.origin()) / grid.step());
        double beforeStart = start(before);
        double afterStart = beforeStart + grid.origin() + places * grid.step();
        return curve(after, k, afterStart, grid, POWER / sharing)
                .minus(curve(before, k, beforeStart, grid, POWER))
                .moved(places);
    }

    /**
     * Likelihood times weight along ln density. The weight is (m / (1 + m)) to a power, m being
     * expected individuals per sample: like the square root of the density where few are expected
     * (so that a group without a find has a distribution, too), even in ln density where many are.
     */
    private static GridCurve curve(
            CountLikelihood likelihood, double k, double start, ChangeGrid grid, double power) {
        double perSample = likelihood.data().totalExposure() / likelihood.data().samples();
        double clumping = likelihood.clumping(k);
        return GridCurve.of(
                i -> {
                    double logDensity = start + i * grid.step();
                    double expected = perSample * Math.exp(logDensity);
                    return clumping
                            + likelihood.apartFromClumping(logDensity, k)
                            - power * Math.log1p(1 / expected);
                },
                grid.negligible());
    }
}
