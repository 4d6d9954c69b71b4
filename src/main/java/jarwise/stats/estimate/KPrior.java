package jarwise.stats.estimate;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.count.Observation;
import java.util.Collection;
import java.util.Optional;

/**
 * What is known of k before the samples are counted: ln k is normal.
 *
 * @param medianK k that is as likely exceeded as not; 0.0001 to 1,000,000
 * @param logSpread standard deviation of ln k; above 0 and at most 5
 */
public record KPrior(double medianK, double logSpread) {

    private static final double LEAST_MEDIAN = 1e-4;
    private static final double MOST_MEDIAN = 1e6;
    private static final KPrior STANDARD = new KPrior(0.5, 2);

    /** Checks both numbers. */
    public KPrior {
        if (!(medianK >= LEAST_MEDIAN && medianK <= MOST_MEDIAN)) {
            throw new InvalidInput(
                    "medianK is %s; it must be 0.0001 to 1000000.".formatted(medianK));
        }
        Require.between("logSpread", logSpread, 0, Math.nextUp(5.0));
    }

    /**
     * What to take where a site has no history: ln k ~ N(ln 0.5, 2²), which puts 95 % between k
     * 0.01 and 25. Our choice, no source; the coverage study says how it does.
     *
     * @return that prior
     */
    public static KPrior standard() {
        return STANDARD;
    }

    /**
     * What this site's history says about k: for the next group of samples of the same pest, stage
     * and method.
     *
     * <p>Each earlier group (a date in a house) has its own density and its own k; the ln k of
     * groups are taken as normal with an unknown centre m and an unknown spread b between groups,
     * starting from m ~ N(ln 0.5, 2²) and b half-normal with scale 0.5 (our choice, no source).
     * With the likelihood of every group, its density integrated out by Laplace's formula, that
     * gives the distribution of ln k of the next group; its mean and standard deviation are the
     * median and the spread of the prior.
     *
     * <p><b>Assumes</b> random samples with as many sampling units as the next ones will have: k
     * belongs to a method and a number of units. Groups of one sample and groups without a find say
     * nothing about k and are left out.
     *
     * <p><b>Source.</b> Gelman et al. (2013), <i>Bayesian Data Analysis</i>, ch. 5, for the two
     * levels; Cox and Reid (1987), <i>JRSS B</i> 49:1-39, for the adjusted likelihood (both from
     * memory). Checked by simulation in the tests.
     *
     * @param groups samples of each earlier group, in any order
     * @return the prior; empty with fewer than 30 samples in groups that say something
     */
    public static Optional<KPrior> fromHistory(
            Collection<? extends Collection<Observation>> groups) {
        return KHistory.prior(groups);
    }

    /**
     * Whether samples say anything about k.
     *
     * @param group samples of one group
     * @return whether there are at least two, and a find among them
     */
    public static boolean tells(Collection<Observation> group) {
        return group.size() > 1 && group.stream().anyMatch(one -> one.individuals() > 0);
    }

    /** {@return natural logarithm of the density of ln k, without its constant} */
    double logWeight(double logK) {
        double z = (logK - Math.log(medianK)) / logSpread;
        return -0.5 * z * z;
    }
}
