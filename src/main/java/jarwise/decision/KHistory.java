package jarwise.decision;

import jarwise.stats.count.CountData;
import jarwise.stats.count.CountFit;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.KPrior;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How clumped one pest and stage has been at one site, seen by one method: for every day, what was
 * known of k from the rounds before it. A figure of an old round therefore never changes because of
 * later rounds, and no count is used twice.
 *
 * <p>Every bench and day is at its own density; groups without a find say nothing about k. Over a
 * grid of ln k the adjusted profile likelihoods (Cox and Reid 1987, from memory: half the logarithm
 * of the information on the density is taken off, because small groups otherwise make k look too
 * great) are added up, from the standard prior on. The median is the mean of ln k under it; to its
 * spread {@value #BETWEEN} is added for the difference from group to group (our choice, no source).
 */
public final class KHistory {

    /** Fewer samples than this, in groups with a find, tell too little. */
    public static final int LEAST_SAMPLES = 30;

    static final double BETWEEN = 0.3;

    private static final double[] LOG_K = grid();

    private final NavigableMap<LocalDate, Known> upTo = new TreeMap<>();

    /**
     * The samples of one place and day.
     *
     * @param day day they were collected
     * @param observations as counted, at least one
     */
    public record Group(LocalDate day, List<Observation> observations) {}

    /** What all groups up to one day say: over the grid, the log-likelihood of k. */
    private static final class Known {
        private final int samples;
        private final double[] logLikelihood;

        Known(int samples, double[] logLikelihood) {
            this.samples = samples;
            this.logLikelihood = logLikelihood;
        }
    }

    private KHistory() {}

    /**
     * Reads a history.
     *
     * @param groups in any order
     * @return what it says of k, day by day
     */
    public static KHistory of(List<Group> groups) {
        NavigableMap<LocalDate, List<Group>> byDay = new TreeMap<>();
        for (Group group : groups) {
            byDay.computeIfAbsent(group.day(), day -> new ArrayList<>()).add(group);
        }
        KHistory history = new KHistory();
        int samples = 0;
        double[] sum = new double[LOG_K.length];
        for (var day : byDay.entrySet()) {
            for (Group group : day.getValue()) {
                CountData data = CountData.of(group.observations());
                if (data.individuals() > 0 && group.observations().size() > 1) {
                    samples += group.observations().size();
                    add(sum, data);
                }
            }
            history.upTo.put(day.getKey(), new Known(samples, sum.clone()));
        }
        return history;
    }

    /** {@return samples, in groups with a find, collected before this day} */
    public int samplesBefore(LocalDate day) {
        var known = upTo.lowerEntry(day);
        return known == null ? 0 : known.getValue().samples;
    }

    /**
     * What this site knew of k before a day.
     *
     * @param day the day of the samples to be estimated
     * @return the prior; empty where there were fewer than {@value #LEAST_SAMPLES} samples
     */
    public Optional<KPrior> priorBefore(LocalDate day) {
        return samplesBefore(day) < LEAST_SAMPLES
                ? Optional.empty()
                : Optional.of(prior(upTo.lowerEntry(day).getValue().logLikelihood));
    }

    private static void add(double[] sum, CountData data) {
        for (int i = 0; i < LOG_K.length; i++) {
            CountFit fit = CountFit.givenK(data, Math.exp(LOG_K[i]));
            sum[i] += fit.logLikelihood() + Math.log(fit.standardErrorOfLog().orElse(1));
        }
    }

    private static KPrior prior(double[] logLikelihood) {
        KPrior standard = KPrior.standard();
        double[] height = new double[LOG_K.length];
        for (int i = 0; i < LOG_K.length; i++) {
            double z = (LOG_K[i] - Math.log(standard.medianK())) / standard.logSpread();
            height[i] = logLikelihood[i] - 0.5 * z * z;
        }
        double top = Arrays.stream(height).max().orElse(0);
        double weight = 0;
        double first = 0;
        double second = 0;
        for (int i = 0; i < LOG_K.length; i++) {
            double w = Math.exp(height[i] - top);
            weight += w;
            first += w * LOG_K[i];
            second += w * LOG_K[i] * LOG_K[i];
        }
        double mean = first / weight;
        double variance = Math.max(0, second / weight - mean * mean);
        return new KPrior(Math.exp(mean), Math.sqrt(variance + BETWEEN * BETWEEN));
    }

    /** k from 0.01 to 148 in steps of 0.15 on the log scale. */
    private static double[] grid() {
        double[] logK = new double[65];
        for (int i = 0; i < logK.length; i++) {
            logK[i] = Math.log(0.01) + 0.15 * i;
        }
        return logK;
    }
}
