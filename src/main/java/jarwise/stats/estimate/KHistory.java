package jarwise.stats.estimate;

import jarwise.stats.count.CountData;
import jarwise.stats.count.CountLikelihood;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What earlier samples of a site say about k: for the next group of samples of the same pest, stage
 * and method.
 */
final class KHistory {

    private static final int LEAST_SAMPLES = 30;
    private static final double STEP = 0.125;
    private static final double[] LOG_K = steps(Math.log(1e-3), Math.log(1e3), STEP);
    private static final double[] CENTRE = steps(Math.log(0.5) - 6, Math.log(0.5) + 6, 0.2);
    private static final double[] BETWEEN = steps(0.125, 2, 0.125);
    private static final double BETWEEN_SCALE = 0.5;

    private KHistory() {}

    private static double[] steps(double from, double to, double step) {
        int number = (int) Math.round((to - from) / step);
        return IntStream.rangeClosed(0, number).mapToDouble(i -> from + i * step).toArray();
    }

    static Optional<KPrior> prior(Collection<? extends Collection<Observation>> groups) {
        List<double[]> likelihoods = new ArrayList<>();
        int samples = 0;
        for (Collection<Observation> group : groups) {
            if (KPrior.tells(List.copyOf(group))) {
                likelihoods.add(likelihood(new CountLikelihood(CountData.of(group))));
                samples += group.size();
            }
        }
        return samples < LEAST_SAMPLES ? Optional.empty() : Optional.of(predictive(likelihoods));
    }

    /** Likelihood of k with the density integrated out by Laplace's formula, highest point 1. */
    private static double[] likelihood(CountLikelihood counts) {
        double[] log = new double[LOG_K.length];
        double top = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < log.length; i++) {
            double k = Math.exp(LOG_K[i]);
            double t = counts.mostLikelyLogDensity(k);
            log[i] =
                    counts.at(t, k)
                            - 0.5 * Math.log(counts.informationOnLogDensity(t, k))
                            + 0.25 * t;
            top = Math.max(top, log[i]);
        }
        for (int i = 0; i < log.length; i++) {
            log[i] = Math.exp(log[i] - top);
        }
        return log;
    }

    private static KPrior predictive(List<double[]> likelihoods) {
        double[][] log = new double[CENTRE.length][BETWEEN.length];
        double top = Double.NEGATIVE_INFINITY;
        for (int m = 0; m < CENTRE.length; m++) {
            for (int b = 0; b < BETWEEN.length; b++) {
                log[m][b] = logWeight(CENTRE[m], BETWEEN[b], likelihoods);
                top = Math.max(top, log[m][b]);
            }
        }
        double mass = 0;
        double first = 0;
        double second = 0;
        for (int m = 0; m < CENTRE.length; m++) {
            for (int b = 0; b < BETWEEN.length; b++) {
                double weight = Math.exp(log[m][b] - top);
                mass += weight;
                first += weight * CENTRE[m];
                second += weight * (CENTRE[m] * CENTRE[m] + BETWEEN[b] * BETWEEN[b]);
            }
        }
        double mean = first / mass;
        return new KPrior(Math.exp(mean), Math.sqrt(second / mass - mean * mean));
    }

    private static double logWeight(double centre, double between, List<double[]> likelihoods) {
        double scaled = between / BETWEEN_SCALE;
        double sum = KPrior.standard().logWeight(centre) - 0.5 * scaled * scaled;
        double[] ofGroup = new double[LOG_K.length];
        for (int i = 0; i < ofGroup.length; i++) {
            double z = (LOG_K[i] - centre) / between;
            ofGroup[i] = Math.exp(-0.5 * z * z) * STEP / between;
        }
        for (double[] likelihood : likelihoods) {
            double group = 0;
            for (int i = 0; i < ofGroup.length; i++) {
                group += ofGroup[i] * likelihood[i];
            }
            sum += Math.log(Math.max(1e-300, group));
        }
        return sum;
    }
}
