package jarwise.stats.dispersion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How variance and crowding go with the mean over several groups of samples.
 *
 * @param taylor Taylor's power law; empty where there is none
 * @param iwao Iwao's regression; empty where there is none
 * @param warnings what a person should know, a sentence each
 */
public record MeanVarianceLines(
        Optional<TaylorRegression> taylor, Optional<IwaoRegression> iwao, List<String> warnings) {

    /** Up to so many samples a group Clark and Perry (1994) found the slope to be too low. */
    private static final int FEW_SAMPLES = 15;

    public MeanVarianceLines {
        warnings = List.copyOf(warnings);
    }

    /**
     * Draws both lines, and says what stands against them.
     *
     * @param groups means and variances of groups of samples of the same size
     * @return both lines
     */
    public static MeanVarianceLines of(List<MeanAndVariance> groups) {
        Optional<TaylorRegression> taylor = TaylorRegression.of(groups);
        Optional<IwaoRegression> iwao = IwaoRegression.of(groups);
        List<String> warnings = new ArrayList<>();
        List<MeanAndVariance> used = groups.stream().filter(TaylorRegression::canUse).toList();
        if (used.size() < groups.size()) {
            List<MeanAndVariance> unused = new ArrayList<>(groups);
            unused.removeAll(used);
            warnings.add(
                    ("Taylor's regression leaves out groups with mean or variance 0: %s. That makes"
                                    + " its slope too low.")
                            .formatted(names(unused)));
        }
        if (taylor.isEmpty()) {
            warnings.add(none("Taylor's", used.size()));
        }
        if (iwao.isEmpty()) {
            warnings.add(none("Iwao's", groups.stream().filter(g -> g.mean() > 0).count()));
        }
        boolean few = groups.stream().anyMatch(group -> group.sampleSize() <= FEW_SAMPLES);
        if (few && (taylor.isPresent() || iwao.isPresent())) {
            warnings.add(
                    "Some groups have 15 samples or fewer: slope and intercept of such a"
                            + " regression come out too low. Do not plan with them alone.");
        }
        return new MeanVarianceLines(taylor, iwao, warnings);
    }

    private static String names(List<MeanAndVariance> groups) {
        return String.join("; ", groups.stream().map(MeanAndVariance::group).toList());
    }

    private static String none(String whose, long used) {
        return used < TaylorRegression.LEAST_GROUPS
                ? "%s regression is not given: %d groups can be used, and at least %d are needed."
                        .formatted(whose, used, TaylorRegression.LEAST_GROUPS)
                : whose + " regression is not given: the groups all have the same mean.";
    }
}
