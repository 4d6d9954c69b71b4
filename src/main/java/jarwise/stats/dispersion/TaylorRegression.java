package jarwise.stats.dispersion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Taylor's power law: variance = a mean^b.
 *
 * @param log10A intercept on the scale of log10, with its error and limits
 * @param b slope, with its error and limits
 * @param rSquared share explained on the scale of log10
 */
public record TaylorRegression(LineConstant log10A, LineConstant b, OptionalDouble rSquared) {

    /** Fewer groups than this make no line. */
    static final int LEAST_GROUPS = 5;

    /**
     * How does the variance go with the mean?
     *
     * <p>Least squares of log10 variance on log10 mean, every group the same weight.
     *
     * <p><b>Assumes</b> groups of about as many samples, whose means are far apart compared to
     * their errors. The mean is not known without error and groups with variance 0 cannot be used,
     * so with few samples a group (under 15) b and a come out too low (Clark and Perry 1994).
     *
     * <p><b>Source.</b> Taylor (1961), <i>Nature</i> 189:732-735 (formula from memory); Clark and
     * Perry (1994), <i>Environmental and Ecological Statistics</i> 1:287-302 on the bias (its
     * abstract). Reference values: {@code reference/dispersion/taylor.csv}.
     *
     * @param groups means and variances; those with mean or variance 0 are not used
     * @return the law; empty if fewer than five groups can be used or all have the same mean
     */
    public static Optional<TaylorRegression> of(List<MeanAndVariance> groups) {
        List<MeanAndVariance> used = groups.stream().filter(TaylorRegression::canUse).toList();
        if (used.size() < LEAST_GROUPS) {
            return Optional.empty();
        }
        return StraightLine.through(
                        used.stream().mapToDouble(g -> Math.log10(g.mean())).toArray(),
                        used.stream().mapToDouble(g -> Math.log10(g.variance())).toArray())
                .map(line -> new TaylorRegression(line.intercept(), line.slope(), line.rSquared()));
    }

    static boolean canUse(MeanAndVariance group) {
        return group.mean() > 0 && group.variance() > 0;
    }

    /** {@return a: the variance at a mean of 1} */
    public double a() {
        return Math.pow(10, log10A.estimate());
    }
}
