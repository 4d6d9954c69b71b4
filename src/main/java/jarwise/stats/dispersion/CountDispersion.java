package jarwise.stats.dispersion;

import jarwise.base.InvalidInput;
import jarwise.numeric.Roots;
import jarwise.stats.count.CountData;
import jarwise.stats.count.CountFit;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How clumped the samples of one group are, in the indices in use. All are those of the sample (the
 * jar), not of the sampling unit.
 *
 * @param sampleSize number of samples
 * @param mean individuals per sample
 * @param variance variance of the counts, divisor n − 1; empty for one sample
 * @param varianceToMeanRatio 1 for counts at random, more if clumped; empty without a find
 * @param test (n − 1) variance / mean against chi-squared, upper tail: are they clumped?
 * @param kMoments mean² / (variance − mean); empty where the variance is not above the mean
 * @param kZeroClass the k at which so many empty samples are expected; empty where they are none,
 *     all, or no more than Poisson counts would leave
 * @param kMaximumLikelihood most likely k; empty where no finite k is better than Poisson
 * @param meanCrowding mean + variance / mean − 1: other individuals in the sample of an individual
 * @param patchiness mean crowding / mean
 * @param morisita Morisita's index with its test; empty under two individuals or two samples
 */
public record CountDispersion(
        long sampleSize,
        double mean,
        OptionalDouble variance,
        OptionalDouble varianceToMeanRatio,
        Optional<ChiSquaredTest> test,
        OptionalDouble kMoments,
        OptionalDouble kZeroClass,
        OptionalDouble kMaximumLikelihood,
        OptionalDouble meanCrowding,
        OptionalDouble patchiness,
        Optional<MorisitaIndex> morisita) {

    /** Under so many samples the indices are said to be rough; our choice. */
    private static final int FEW_SAMPLES = 15;

    private static final double LOWEST_LOG_K = -50;
    private static final double HIGHEST_LOG_K = 25;

    /**
     * Are the samples clumped, and how much?
     *
     * <p>The test asks one question, whether the counts vary more than by chance, so its p is the
     * upper tail; a p near 1 means that they vary less. k by the zero class solves {@code ln(n /
     * n0) = k ln(1 + mean / k)} with n0 the empty samples.
     *
     * <p><b>Assumes</b> random samples of the same size. With few samples the variance is rough and
     * so is all that is made from it; k by moments and by maximum likelihood tend to be too large.
     *
     * <p><b>Source.</b> Index of dispersion and k by moments and zero class: Bliss and Fisher
     * (1953), <i>Biometrics</i> 9:176-200; mean crowding and patchiness: Lloyd (1967), <i>Journal
     * of Animal Ecology</i> 36:1-30; Morisita (1959) (all formulas from memory). Reference values:
     * {@code reference/dispersion}.
     *
     * @param observations samples of one group in any order, 1 or more, all with the same sampling
     *     units and share read
     * @return the indices; those that do not exist are empty
     * @throws InvalidInput if there is no sample or their sizes differ
     */
    public static CountDispersion of(Collection<Observation> observations) {
        CountMoments moments = CountMoments.of(observations);
        double mean = moments.mean();
        long n = moments.sampleSize();
        OptionalDouble variance = only(n > 1, moments.squaresAboutMean() / (n - 1));
        double s2 = variance.orElse(0);
        boolean judged = n > 1 && mean > 0;
        double crowding = mean + s2 / mean - 1;
        CountFit fit = CountFit.of(CountData.of(observations));
        return new CountDispersion(
                n,
                mean,
                variance,
                only(judged, s2 / mean),
                judged ? Optional.of(test(moments)) : Optional.empty(),
                only(s2 > mean, mean * mean / (s2 - mean)),
                zeroClass(moments),
                fit.k(),
                only(judged, crowding),
                only(judged, crowding / mean),
                morisita(moments));
    }

    private static OptionalDouble only(boolean exists, double value) {
        return exists ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static ChiSquaredTest test(CountMoments moments) {
        return ChiSquaredTest.of(
                moments.squaresAboutMean() / moments.mean(), moments.sampleSize() - 1);
    }

    private static OptionalDouble zeroClass(CountMoments moments) {
        double mean = moments.mean();
        double target = Math.log((double) moments.sampleSize() / moments.emptySamples());
        if (moments.emptySamples() == 0 || mean == 0 || target >= mean) {
            return OptionalDouble.empty();
        }
        OptionalDouble logK =
                Roots.walkingFrom(
                        x -> Math.exp(x) * Math.log1p(mean * Math.exp(-x)) - target,
                        LOWEST_LOG_K,
                        1,
                        HIGHEST_LOG_K);
        return logK.isPresent()
                ? OptionalDouble.of(Math.exp(logK.getAsDouble()))
                : OptionalDouble.empty();
    }

    private static Optional<MorisitaIndex> morisita(CountMoments moments) {
        double individuals = moments.individuals();
        if (individuals < 2 || moments.sampleSize() < 2) {
            return Optional.empty();
        }
        double share = moments.pairs() / individuals / (individuals - 1);
        return Optional.of(new MorisitaIndex(moments.sampleSize() * share, test(moments)));
    }

    /** {@return what a person should know about these indices, a sentence each} */
    public List<String> warnings() {
        if (mean == 0) {
            return List.of("No find in any sample, so nothing can be said about clumping.");
        }
        if (sampleSize == 1) {
            return List.of("One sample has no variance; at least 2 are needed.");
        }
        List<String> warnings = new ArrayList<>();
        if (sampleSize < FEW_SAMPLES) {
            warnings.add(
                    "Fewer than 15 samples: the variance and all that is made from it are rough,"
                            + " and k by moments and by maximum likelihood tend to be too large.");
        }
        if (kMoments.isEmpty()) {
            warnings.add("No k by moments: the variance is not above the mean.");
        }
        if (kZeroClass.isEmpty()) {
            warnings.add(
                    "No k by the zero class: no sample is empty, or no more than would be by"
                            + " chance.");
        }
        if (kMaximumLikelihood.isEmpty()) {
            warnings.add(
                    "No k by maximum likelihood: the counts vary no more than counts at random.");
        }
        if (morisita.isEmpty()) {
            warnings.add("No Morisita index: it needs 2 individuals.");
        }
        return warnings;
    }
}
