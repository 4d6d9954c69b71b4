package jarwise.plan;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.count.GivenK;
import jarwise.stats.count.Observation;
import jarwise.stats.count.SimulatedCounts;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.efficacy.EfficacyLimits;
import jarwise.stats.efficacy.EfficacyTrial;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;

/**
 * Before spraying: what could this trial tell? Treated and check, before and after, as many jars in
 * each of the four groups.
 *
 * @param densityBefore individuals per sampling unit before, on both; above 0
 * @param efficacy true efficacy, below 1 or 1 itself; negative if it does harm
 * @param k dispersion of a jar, in the range of {@link GivenK}; may be infinite
 * @param jarsPerGroup jars in each group (an arm at one time), 1 to 1,000
 * @param samplingUnits sampling units in a jar, above 0
 * @param checkChange density on the check after over before, above 0
 */
public record ComparisonPlan(
        double densityBefore,
        double efficacy,
        double k,
        int jarsPerGroup,
        double samplingUnits,
        double checkChange) {

    private static final int MOST_JARS = 1000;
    private static final double MOST_PER_JAR = 1e6;

    /** Checks the numbers; throws {@link InvalidInput} naming the first one out of range. */
    public ComparisonPlan {
        Require.positive("densityBefore", densityBefore);
        GivenK.require(k);
        Require.positive("samplingUnits", samplingUnits);
        Require.positive("checkChange", checkChange);
        if (!(efficacy <= 1 && efficacy > -100)) {
            throw new InvalidInput(
                    "efficacy is %s; it must be above -100 and at most 1. Maybe 0.8"
                            .formatted(efficacy));
        }
        if (!(jarsPerGroup >= 1 && jarsPerGroup <= MOST_JARS)) {
            throw new InvalidInput(
                    "jarsPerGroup is %d; it must be 1 to %d.".formatted(jarsPerGroup, MOST_JARS));
        }
        double most = samplingUnits * densityBefore * Math.max(1, checkChange * (1 - efficacy));
        if (!(Math.max(most, samplingUnits * densityBefore * checkChange) <= MOST_PER_JAR)) {
            throw new InvalidInput(
                    "A jar would hold %s individuals; 1000000 at most. Maybe fewer sampling units."
                            .formatted(most));
        }
    }

    /**
     * Draws such trials and estimates each as it would be estimated.
     *
     * <p><b>Assumes</b> the model that it estimates by: negative binomial counts, the same k
     * everywhere, and no other difference between the benches.
     *
     * @param estimator how the efficacy will be estimated
     * @param trials how many trials to draw, 1 or more
     * @param seed the same seed, the same trials
     * @param progress told the number of trials done after each
     * @return chance of each verdict, and the limits in the middle
     */
    public ComparisonOutlook outlook(
            EfficacyEstimator estimator, int trials, long seed, IntConsumer progress) {
        Require.atLeast("trials", trials, 1);
        SimulatedCounts random = new SimulatedCounts(seed);
        List<EfficacyLimits> limits = new ArrayList<>();
        for (int i = 0; i < trials; i++) {
            limits.add(estimator.limits(drawn(random)));
            progress.accept(i + 1);
        }
        return ComparisonOutlook.of(limits, estimator.target());
    }

    private EfficacyTrial drawn(SimulatedCounts random) {
        double checkAfter = densityBefore * checkChange;
        return EfficacyTrial.of(
                jars(random, densityBefore),
                jars(random, checkAfter * (1 - efficacy)),
                jars(random, densityBefore),
                jars(random, checkAfter));
    }

    private List<Observation> jars(SimulatedCounts random, double density) {
        List<Observation> jars = new ArrayList<>();
        for (int i = 0; i < jarsPerGroup; i++) {
            long counted = random.negativeBinomial(density * samplingUnits, k);
            jars.add(Observation.of(counted, samplingUnits));
        }
        return jars;
    }
}
