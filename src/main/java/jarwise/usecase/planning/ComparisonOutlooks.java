package jarwise.usecase.planning;

import jarwise.plan.ComparisonOutlook;
import jarwise.plan.ComparisonPlan;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.usecase.planning.PlanAnswer.Drawn;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Simulated trials, drawn aside while a page waits no longer than a second. The same plan is drawn
 * once; who asks again sees how far it is, or the result.
 */
public final class ComparisonOutlooks {

    /** Trials drawn for each plan. */
    public static final int TRIALS = 1000;

    /** Seed of the trials: the same plan has the same chances, here and on the command line. */
    static final long SEED = 1;

    private static final long PATIENCE_MILLIS = 1_000;
    private static final long FORGOTTEN_NANOS = TimeUnit.SECONDS.toNanos(20);
    private static final int REMEMBERED = 200;

    private final Map<Question, Running> known =
            new LinkedHashMap<>(64, 0.75f, true) {
                private static final long serialVersionUID = 1L;

                @Override
                protected boolean removeEldestEntry(Map.Entry<Question, Running> eldest) {
                    return size() > REMEMBERED;
                }
            };

    private record Question(ComparisonPlan plan, EfficacyEstimator estimator) {}

    private record Running(
            FutureTask<ComparisonOutlook> task, AtomicInteger done, AtomicLong asked) {}

    /** {@return the chances, or how far the drawing is} */
    Drawn ask(ComparisonPlan plan, EfficacyEstimator estimator) {
        Question question = new Question(plan, estimator);
        Running running = running(question);
        try {
            ComparisonOutlook outlook = running.task.get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
            return new Drawn(TRIALS, TRIALS, Optional.of(outlook));
        } catch (TimeoutException e) {
            return new Drawn(running.done.get(), TRIALS, Optional.empty());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Drawn(running.done.get(), TRIALS, Optional.empty());
        } catch (ExecutionException e) {
            forget(question);
            throw e.getCause() instanceof RuntimeException fault
                    ? fault
                    : new IllegalStateException(e.getCause());
        }
    }

    private synchronized void forget(Question question) {
        known.remove(question);
    }

    private synchronized Running running(Question question) {
        Running running = known.computeIfAbsent(question, this::started);
        running.asked.set(System.nanoTime());
        return running;
    }

    private Running started(Question question) {
        AtomicInteger done = new AtomicInteger();
        AtomicLong asked = new AtomicLong(System.nanoTime());
        FutureTask<ComparisonOutlook> task =
                new FutureTask<>(
                        () ->
                                question.plan.outlook(
                                        question.estimator,
                                        TRIALS,
                                        SEED,
                                        trials -> drawn(question, trials, done, asked)));
        Thread drawing = new Thread(task, "trials");
        drawing.setDaemon(true);
        drawing.start();
        return new Running(task, done, asked);
    }

    /** Numbers that somebody typed over are not worked out to the end. */
    private void drawn(Question question, int trials, AtomicInteger done, AtomicLong asked) {
        done.set(trials);
        if (trials < TRIALS && System.nanoTime() - asked.get() > FORGOTTEN_NANOS) {
            forget(question);
            throw new CancellationException("Nobody asks any more");
        }
    }
}
