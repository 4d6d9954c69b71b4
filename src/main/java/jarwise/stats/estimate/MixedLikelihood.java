package jarwise.stats.estimate;

import jarwise.stats.count.CountData;
import jarwise.stats.count.CountLikelihood;
import java.util.Arrays;

/**
 * Likelihood of a density, summed over values of k with their weights; its logarithm.
 *
 * <p>Told against the most likely density: of a thousand million individuals the logarithm itself
 * has no digits left for how it bends.
 */
final class MixedLikelihood {

    private static final double NEGLIGIBLE = -40;

    private final double centre;
    private final double[] k;
    private final double[] atCentre;
    private final double[][] meanOverK;
    private final double[] samples;
    private final double[] individuals;
    private final double total;
    private final double expectedTotal;
    private final double[] term;

    /** Takes the samples, the values of k, and a ln density that all others are told against. */
    MixedLikelihood(CountLikelihood likelihood, KNodes nodes, double centre) {
        this.centre = centre;
        CountData data = likelihood.data();
        int groups = data.exposures();
        samples = new double[groups];
        individuals = new double[groups];
        for (int g = 0; g < groups; g++) {
            samples[g] = data.samplesAt(g);
            individuals[g] = data.individualsAt(g);
        }
        total = data.individuals();
        double density = Math.exp(centre);
        expectedTotal = data.totalExposure() * density;
        k = new double[nodes.size()];
        atCentre = new double[k.length];
        meanOverK = new double[k.length][groups];
        for (int j = 0; j < k.length; j++) {
            k[j] = nodes.k(j);
            atCentre[j] =
                    nodes.logWeight(j)
                            + likelihood.clumping(k[j])
                            + likelihood.apartFromClumping(centre, k[j]);
            for (int g = 0; g < groups; g++) {
                meanOverK[j][g] = data.exposure(g) * density / k[j];
            }
        }
        double highest = Arrays.stream(atCentre).max().orElseThrow();
        Arrays.setAll(atCentre, j -> atCentre[j] - highest);
        term = new double[k.length];
    }

    /** {@return logarithm of the summed likelihood at ln density t, without its constants} */
    double log(double t) {
        double away = t - centre;
        double grown = Math.expm1(away);
        double shrunk = Math.expm1(-away);
        double highest = Double.NEGATIVE_INFINITY;
        for (int j = 0; j < k.length; j++) {
            double change =
                    Double.isInfinite(k[j])
                            ? total * away - expectedTotal * grown
                            : change(j, away, grown, shrunk);
            term[j] = atCentre[j] + change;
            highest = Math.max(highest, term[j]);
        }
        double sum = 0;
        for (int j = 0; j < k.length; j++) {
            double below = term[j] - highest;
            if (below > NEGLIGIBLE) {
                sum += Math.exp(below);
            }
        }
        return highest + Math.log(sum);
    }

    /**
     * Against the centre, y ln m − (k n + y) ln(1 + m/k). What ln(1 + m/k) grows by, and what it
     * lags behind ln m, are each taken from the smaller of the two, which keeps the digits of both.
     */
    private double change(int j, double away, double grown, double shrunk) {
        double sum = 0;
        for (int g = 0; g < samples.length; g++) {
            double ratio = meanOverK[j][g];
            double growth;
            double lag;
            if (ratio < 1) {
                growth = logOnePlus(grown * ratio / (1 + ratio));
                lag = growth - away;
            } else {
                lag = logOnePlus(shrunk / (1 + ratio));
                growth = away + lag;
            }
            sum -= k[j] * samples[g] * growth + individuals[g] * lag;
        }
        return sum;
    }

    /** The plain logarithm is the faster one; near 1 it loses digits that k then multiplies. */
    private static double logOnePlus(double x) {
        return Math.abs(x) < 1e-3 ? Math.log1p(x) : Math.log(1 + x);
    }
}
