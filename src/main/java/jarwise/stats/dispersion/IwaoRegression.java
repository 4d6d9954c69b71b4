package jarwise.stats.dispersion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Iwao's regression: mean crowding = alpha + beta mean, so that variance = (alpha + 1) mean + (beta
 * − 1) mean².
 *
 * @param alpha intercept: crowding of an individual at the lowest density; 0 if single individuals
 *     are what is spread
 * @param beta slope: 1 for counts at random, above 1 if clumped
 * @param rSquared share explained
 */
public record IwaoRegression(LineConstant alpha, LineConstant beta, OptionalDouble rSquared) {

    /**
     * How does the crowding go with the mean?
     *
     * <p>Least squares of Lloyd's mean crowding on the mean, every group the same weight.
     *
     * <p><b>Assumes</b> what {@link TaylorRegression#of} assumes, and besides that the crowding of
     * dense groups is no rougher than that of thin ones, which it mostly is: a few dense groups can
     * rule the line.
     *
     * <p><b>Source.</b> Iwao (1968), <i>Researches on Population Ecology</i> 10:1-20 (formula from
     * memory). Checked by our own arithmetic only: {@code reference/dispersion/iwao.csv}.
     *
     * @param groups means and variances; those with mean 0 are not used
     * @return the line; empty if fewer than five groups can be used or all have the same mean
     */
    public static Optional<IwaoRegression> of(List<MeanAndVariance> groups) {
        List<MeanAndVariance> used = groups.stream().filter(g -> g.mean() > 0).toList();
        if (used.size() < TaylorRegression.LEAST_GROUPS) {
            return Optional.empty();
        }
        return StraightLine.through(
                        used.stream().mapToDouble(MeanAndVariance::mean).toArray(),
                        used.stream().mapToDouble(IwaoRegression::crowding).toArray())
                .map(line -> new IwaoRegression(line.intercept(), line.slope(), line.rSquared()));
    }

    private static double crowding(MeanAndVariance group) {
        return group.mean() + group.variance() / group.mean() - 1;
    }
}
