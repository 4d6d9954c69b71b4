package jarwise.stats.detect;

import jarwise.base.Require;
import jarwise.numeric.Roots;
import jarwise.stats.count.ProportionPositive;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What share of the units is infested, if they were tested in pools?
 *
 * @param estimate share of infested units, in [0, 1]
 * @param standardError large-sample standard error; empty if no pool or every pool was positive, or
 *     if the test errs
 * @param lower lower limit, in [0, 1]
 * @param upper upper limit, in [0, 1]
 */
public record PooledPrevalence(
        double estimate, OptionalDouble standardError, double lower, double upper) {

    /**
     * Pools of one size and a test that may err.
     *
     * <pre>
     *   estimate = 1 − [(Se − x/n) / (Se + Sp − 1)]^(1/k)
     *   standardError² = [1 − (1 − p)^k] / [n k² (1 − p)^(k−2)]      for Se = Sp = 1
     * </pre>
     *
     * <p>x of n pools of k units positive. Limits are Clopper and Pearson's for x/n, carried
     * through the same formula; what falls outside [0, 1] is drawn in.
     *
     * <p><b>Assumes</b> units infested independently, pools formed at random. The estimate errs on
     * the high side for few pools; {@link #lessBiased} corrects that.
     *
     * <p><b>Source.</b> Cowling, Gardner and Johnson (1999), <i>Preventive Veterinary Medicine</i>
     * 39:211-225; Worlund and Taylor (1983) for the standard error (both from memory). Reference
     * values: {@code reference/detection/pooled-prevalence.csv} (own arithmetic).
     *
     * @param group the pools
     * @param sensitivity share of pools with an infested unit that test positive, in (0, 1]
     * @param specificity share of sound pools that test negative, in (0, 1]
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return share of infested units
     * @throws jarwise.base.InvalidInput if a number is out of range
     */
    public static PooledPrevalence of(
            PoolGroup group, double sensitivity, double specificity, double confidenceLevel) {
        PooledDetection test = new PooledDetection(0, group.poolSize(), sensitivity, specificity);
        ProportionPositive positive =
                ProportionPositive.of(group.positivePools(), group.pools(), confidenceLevel);
        double estimate = perUnit(test, positive.estimate());
        return new PooledPrevalence(
                estimate,
                sensitivity == 1 && specificity == 1
                        ? standardError(group, estimate)
                        : OptionalDouble.empty(),
                perUnit(test, positive.lower()),
                perUnit(test, positive.upper()));
    }

    private static double perUnit(PooledDetection test, double positive) {
        double power = test.sensitivity() + test.specificity() - 1;
        double sound = (test.sensitivity() - positive) / power;
        return 1 - Math.pow(Math.max(0, Math.min(1, sound)), 1.0 / test.poolSize());
    }

    private static OptionalDouble standardError(PoolGroup group, double p) {
        if (group.positivePools() == 0 || group.positivePools() == group.pools()) {
            return OptionalDouble.empty();
        }
        double k = group.poolSize();
        double variance =
                (1 - Math.pow(1 - p, k)) / (group.pools() * k * k * Math.pow(1 - p, k - 2));
        return OptionalDouble.of(Math.sqrt(variance));
    }

    /**
     * The share of infested units with less bias for few pools.
     *
     * <pre>
     *   1 − [(n − x + c) / (n + c)]^(1/k),   c = (k − 1) / (2k)
     * </pre>
     *
     * <p><b>Source.</b> Burrows (1987), <i>Phytopathology</i> 77:363-365 (from memory).
     *
     * @param group the pools, tested without error
     * @return share of infested units, in [0, 1]
     */
    public static double lessBiased(PoolGroup group) {
        double c = (group.poolSize() - 1) / (2.0 * group.poolSize());
        double negative = group.pools() - group.positivePools() + c;
        return 1 - Math.pow(negative / (group.pools() + c), 1.0 / group.poolSize());
    }

    /**
     * The likeliest share of infested units from pools of different size, tested without error.
     *
     * <pre>
     *   Σ x_i k_i / [1 − (1 − p)^k_i] = Σ n_i k_i
     * </pre>
     *
     * <p><b>Source.</b> Score equation of the binomial likelihood (own derivation). Reference
     * values: {@code reference/detection/pooled-prevalence-unequal.csv} (own arithmetic on printed
     * data).
     *
     * @param groups pools by size, at least 1
     * @return share of infested units; 0 if no pool, 1 if every pool was positive
     * @throws jarwise.base.InvalidInput if there is no group
     */
    public static double likeliest(List<PoolGroup> groups) {
        Require.atLeast("groups of pools", groups.size(), 1);
        if (groups.stream().allMatch(group -> group.positivePools() == 0)) {
            return 0;
        }
        if (groups.stream().allMatch(group -> group.positivePools() == group.pools())) {
            return 1;
        }
        // On the scale of −ln(1 − p) the score falls from +∞ to below 0.
        double logSound =
                Roots.walkingFrom(t -> score(groups, Math.exp(t)), -40, 1, 40).orElseThrow();
        return -Math.expm1(-Math.exp(logSound));
    }

    private static double score(List<PoolGroup> groups, double evidencePerUnit) {
        double score = 0;
        for (PoolGroup group : groups) {
            double k = group.poolSize();
            score += group.positivePools() * k / -Math.expm1(-k * evidencePerUnit);
            score -= group.pools() * k;
        }
        return score;
    }
}
