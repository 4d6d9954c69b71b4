package jarwise.stats.space;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.Roots;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The share of benches on which something would be found if each had been sampled with the same
 * effort.
 *
 * @param estimate the share, 0 to 1
 * @param lower lower limit, 95 %
 * @param upper upper limit
 * @param effort sampling units per bench for which it is said
 * @param k how unlike the benches are, as used for benches with another effort
 */
public record ShareOfBenches(double estimate, double lower, double upper, double effort, double k) {

    private static final double CUT = 3.841458820694124;
    private static final double LOWEST = -60;
    private static final double HIGHEST = 20;

    /**
     * On what share of benches is it, whatever was sampled on each?
     *
     * <p>A bench sampled with effort e has a find with the chance {@code 1 − (1 + d e / k)^(−k)},
     * the chance of a negative binomial count above 0, with one d for all benches. d is the most
     * likely one for the finds there were; the share is that chance at {@code effort}. With the
     * same effort everywhere this is the plain share of benches with a find, whatever k. Limits
     * from the profile of the likelihood.
     *
     * <p><b>Assumes</b> benches taken at random, and k known: it is that of the bench totals. The
     * farther the efforts lie apart, the more hangs on k; its own error is not in the limits.
     *
     * <p><b>Source.</b> Our own use of the zero class of the negative binomial (Bliss and Fisher
     * 1953, <i>Biometrics</i> 9:176-200); for infinite k it is a complementary log-log regression.
     * Checked by our own arithmetic only.
     *
     * @param benches counts and efforts, 1 bench or more
     * @param k dispersion of bench totals, above 0; infinite if benches differ by chance only
     * @param effort sampling units per bench to say it for, above 0
     * @return the share
     * @throws InvalidInput if there is no bench or a number is out of range
     */
    public static ShareOfBenches of(List<BenchCount> benches, double k, double effort) {
        if (benches.isEmpty() || !(k > 0)) {
            throw new InvalidInput(
                    "There are %d benches and k is %s; at least 1 bench, and k above 0, are needed."
                            .formatted(benches.size(), k));
        }
        Require.positive("effort", effort);
        EmptyBenches empty = new EmptyBenches(benches, k, effort);
        DoubleUnaryOperator drop = x -> -2 * empty.logLikelihood(x) - CUT;
        long positive = benches.stream().filter(BenchCount::isPositive).count();
        if (positive == 0) {
            return new ShareOfBenches(0, 0, share(crossing(drop)), effort, k);
        }
        if (positive == benches.size()) {
            return new ShareOfBenches(1, share(crossing(drop)), 1, effort, k);
        }
        double best = crossing(empty::slope);
        double top = empty.logLikelihood(best);
        DoubleUnaryOperator overCut = x -> drop.applyAsDouble(x) + 2 * top;
        double low = Roots.walkingFrom(overCut, best, -0.25, LOWEST).orElseThrow();
        double high = Roots.walkingFrom(overCut, best, 0.25, HIGHEST).orElseThrow();
        return new ShareOfBenches(share(best), share(low), share(high), effort, k);
    }

    private static double crossing(DoubleUnaryOperator monotone) {
        return Roots.between(monotone, LOWEST, HIGHEST);
    }

    private static double share(double logOfMinusLogEmpty) {
        return -Math.expm1(-Math.exp(logOfMinusLogEmpty));
    }
}
