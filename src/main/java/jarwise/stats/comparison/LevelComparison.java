package jarwise.stats.comparison;

import jarwise.base.CodePointOrder;
import jarwise.base.InvalidInput;
import jarwise.stats.regression.LikelihoodRatio;
import jarwise.stats.regression.ModelRow;
import jarwise.stats.regression.NegativeBinomialRegression;
import jarwise.stats.regression.ProfileLimits;
import jarwise.stats.regression.RegressionFit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where are there more? Densities of the levels of one column, their ratios, and a test that they
 * are all one.
 *
 * @param fit the regression with a mean for each level, and an effect for each block
 * @param levels densities, by Unicode code point of the level
 * @param pairs every two levels, in that order
 * @param test against one density for all levels
 * @param emptyBlocks blocks in which nothing was found, as "column value": they say nothing of the
 *     ratios and are left out
 */
public record LevelComparison(
        RegressionFit fit,
        List<LevelDensity> levels,
        List<PairRatio> pairs,
        LikelihoodRatio test,
        List<String> emptyBlocks) {

    /**
     * The density of a level; with blocks, their effects averaged on the log scale, each block with
     * the same weight.
     *
     * @param level value of the column
     * @param estimate individuals per sampling unit; 0 where nothing was found
     * @param lower profile limit; 0 where nothing was found
     * @param upper profile limit; empty where there is none
     */
    public record LevelDensity(
            String level, double estimate, OptionalDouble lower, OptionalDouble upper) {}

    /**
     * Compares.
     *
     * <p>One mean for each level (and one effect for each level of a block but the first), one k
     * for all; ratios with profile limits and likelihood-ratio tests, k fitted anew under each
     * restriction; p adjusted by Holm over all pairs.
     *
     * <p><b>Assumes</b> independent samples and the same k everywhere; with blocks, that the ratio
     * of two levels is the same in each. With few samples the tests find differences a little too
     * often.
     *
     * <p><b>Source.</b> As for {@link NegativeBinomialRegression#fit} and {@link HolmAdjustment}.
     * Reference values: {@code reference/regression/pairs-*.csv}.
     *
     * @param rows counts with a value for each column named
     * @param column whose levels are compared; at least two
     * @param blocks columns whose effect is allowed for
     * @param cut height of the profile cut, say 3.841459 for 95 %
     * @return the comparison
     * @throws InvalidInput if there is one level only, or a block cannot be told from the levels
     */
    public static LevelComparison of(
            List<ModelRow> rows, String column, List<String> blocks, double cut) {
        List<String> empty = new ArrayList<>();
        List<ModelRow> telling = rows;
        for (String block : blocks) {
            telling = withoutEmpty(telling, block, empty);
        }
        LevelFrame frame = new LevelFrame(telling, column, blocks);
        if (frame.levels().size() < 2) {
            throw new InvalidInput(
                    ("Column \"%s\" has the value \"%s\" in every row that tells something;"
                                    + " at least 2 values are needed. Maybe another column was"
                                    + " meant.")
                            .formatted(column, String.join("", frame.levels())));
        }
        RegressionFit fit = NegativeBinomialRegression.fit(frame.full());
        LikelihoodRatio test =
                LikelihoodRatio.between(fit, NegativeBinomialRegression.fit(frame.withoutLevels()));
        return new LevelComparison(
                fit, densities(fit, frame, cut), PairRatio.all(fit, frame, cut), test, empty);
    }

    /** Blocks without a find go, unless nothing was found in any. */
    private static List<ModelRow> withoutEmpty(
            List<ModelRow> rows, String block, List<String> empty) {
        Map<String, Long> found = new LinkedHashMap<>();
        for (ModelRow row : rows) {
            found.merge(valueOf(row, block), row.individuals(), Long::sum);
        }
        if (found.values().stream().allMatch(sum -> sum == 0)) {
            return rows;
        }
        found.entrySet().stream()
                .filter(entry -> entry.getValue() == 0)
                .map(Map.Entry::getKey)
                .sorted(CodePointOrder.OF_TEXT)
                .forEach(value -> empty.add(block + " " + value));
        return rows.stream()
                .filter(row -> !Objects.equals(found.get(valueOf(row, block)), 0L))
                .toList();
    }

    private static String valueOf(ModelRow row, String column) {
        return Optional.ofNullable(row.values().get(column)).orElseThrow();
    }

    private static List<LevelDensity> densities(RegressionFit fit, LevelFrame frame, double cut) {
        List<LevelDensity> densities = new ArrayList<>();
        for (String level : frame.levels()) {
            double[] contrast = frame.mean(level);
            OptionalDouble log = fit.estimate(contrast);
            ProfileLimits limits = fit.limits(contrast, cut).exponential();
            densities.add(
                    new LevelDensity(
                            level,
                            log.isPresent() ? Math.exp(log.getAsDouble()) : 0,
                            log.isPresent() ? limits.lower() : OptionalDouble.of(0),
                            limits.upper()));
        }
        return densities;
    }
}
