package jarwise.stats.estimate;

import jarwise.stats.count.CountData;
import jarwise.stats.count.CountLikelihood;

/** Likelihood of a density, summed over values of k with their weights; its logarithm. */
final class MixedLikelihood {

    private static final double NEGLIGIBLE = -40;

    private final double[] k;
    private final double[] logWeight;
    private final double[] exposure;
    private final double[] samples;
    private final double[] individuals;
    private final double total;
    private final double totalExposure;
    private final double[] term;

    MixedLikelihood(CountLikelihood likelihood, KNodes nodes) {
        CountData data = likelihood.data();
        k = new double[nodes.size()];
        logWeight = new double[k.length];
        for (int j = 0; j < k.length; j++) {
            k[j] = nodes.k(j);
            logWeight[j] = nodes.logWeight(j) + likelihood.clumping(k[j]);
        }
        int groups = data.exposures();
        exposure = new double[groups];
        samples = new double[groups];
        individuals = new double[groups];
        for (int g = 0; g < groups; g++) {
            exposure[g] = data.exposure(g);
            samples[g] = data.samplesAt(g);
            individuals[g] = data.individualsAt(g);
        }
        total = data.individuals();
        totalExposure = data.totalExposure();
        term = new double[k.length];
    }

    /** {@return logarithm of the summed likelihood at ln density t, without its constants} */
    double log(double t) {
        double density = Math.exp(t);
        double highest = Double.NEGATIVE_INFINITY;
        for (int j = 0; j < k.length; j++) {
            term[j] = logWeight[j] + withK(density, k[j]);
            highest = Math.max(highest, term[j]);
        }
        double sum = 0;
        for (int j = 0; j < k.length; j++) {
            double below = term[j] - highest;
            if (below > NEGLIGIBLE) {
                sum += Math.exp(below);
            }
        }
        return total * t + highest + Math.log(sum);
    }

    private double withK(double density, double dispersion) {
        if (Double.isInfinite(dispersion)) {
            return -density * totalExposure;
        }
        double sum = 0;
        for (int g = 0; g < exposure.length; g++) {
            double z = exposure[g] * density / dispersion;
            // Math.log is the faster one; near 1 it would lose digits that k then multiplies
            double log = z < 1e-3 ? Math.log1p(z) : Math.log(1 + z);
            sum -= (dispersion * samples[g] + individuals[g]) * log;
        }
        return sum;
    }
}
