package jarwise.usecase.findings;

import jarwise.decision.VerdictLimits;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.KPrior;
import jarwise.stats.estimate.SamplesThatWouldTell;
import jarwise.stats.estimate.SamplesThatWouldTell.TellingLimits;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * The engine with a memory: the same question of the same counts has the same answer, so it is
 * worked out once. Nothing here can be out of date, since what is remembered is named by everything
 * it depends on.
 */
public final class Estimates {

    /** Nobody cuts more than this for one bench. */
    private static final int MOST_SAMPLES = 200;

    private static final int MOST_ANSWERS = 4_000;

    private final Map<Object, FutureTask<Object>> answers =
            new LinkedHashMap<>(256, 0.75f, true) {
                private static final long serialVersionUID = 1L;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Object, FutureTask<Object>> eldest) {
                    return size() > MOST_ANSWERS;
                }
            };

    private record Density(DensityEstimator estimator, List<Observation> observations) {}

    private record Chance(DensityEstimator estimator, List<Observation> observations) {}

    private record More(
            DensityEstimator estimator, List<Observation> observations, VerdictLimits limits) {}

    private record Prior(List<List<Observation>> groups) {}

    /** {@return the density in these samples} */
    public DensityEstimate density(DensityEstimator estimator, List<Observation> observations) {
        return remembered(
                DensityEstimate.class,
                new Density(estimator, observations),
                () -> estimator.estimate(observations));
    }

    /** {@return the chance that the density in these samples is above the action threshold} */
    public OptionalDouble chanceAboveThreshold(
            DensityEstimator estimator, List<Observation> observations) {
        return remembered(
                OptionalDouble.class,
                new Chance(estimator, observations),
                () -> estimator.chanceAboveThreshold(observations));
    }

    /** {@return how many further samples would tell; empty where no number anybody cuts does} */
    public OptionalInt samplesThatWouldTell(
            DensityEstimator estimator, List<Observation> observations, VerdictLimits limits) {
        TellingLimits telling = new TellingLimits(limits.below(), limits.above(), MOST_SAMPLES);
        return remembered(
                        SamplesThatWouldTell.class,
                        new More(estimator, observations, limits),
                        () -> SamplesThatWouldTell.of(estimator, observations, telling))
                .furtherSamples();
    }

    /** {@return what these groups say of k; empty where there are too few samples} */
    public Optional<KPrior> prior(List<List<Observation>> groups) {
        return remembered(
                        KnownPrior.class,
                        new Prior(groups),
                        () -> new KnownPrior(KPrior.fromHistory(groups)))
                .prior();
    }

    private record KnownPrior(Optional<KPrior> prior) {}

    /** Two who ask the same at once wait for one answer: a page and the program's own greeting. */
    private <T> T remembered(Class<T> type, Object question, Supplier<T> work) {
        FutureTask<Object> mine = new FutureTask<>(work::get);
        FutureTask<Object> asked;
        synchronized (answers) {
            asked = answers.getOrDefault(question, mine);
            answers.putIfAbsent(question, mine);
        }
        if (asked == mine) {
            mine.run();
        }
        try {
            return type.cast(asked.get());
        } catch (ExecutionException e) {
            forget(question, asked);
            throw e.getCause() instanceof RuntimeException known
                    ? known
                    : new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Stopped while an estimate was worked out", e);
        }
    }

    private void forget(Object question, FutureTask<Object> failed) {
        synchronized (answers) {
            answers.remove(question, failed);
        }
    }
}
