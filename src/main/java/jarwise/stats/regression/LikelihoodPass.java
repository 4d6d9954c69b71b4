package jarwise.stats.regression;

import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * One pass over the cells: the log-likelihood with its slopes and curvatures in the coefficients
 * and in ln k. Sums are made in chunks of a fixed size and added in order, so that the result is
 * the same to the last bit on any number of threads.
 */
final class LikelihoodPass {

    private static final int CHUNK = 8192;
    private static final double LARGEST_LOG_MEAN = 300;
    private static final int SCALARS = 3;

    private final Design design;

    LikelihoodPass(Design design) {
        this.design = design;
    }

    /**
     * What a pass finds.
     *
     * @param logLikelihood with all constants
     * @param slope along each coefficient
     * @param slopeInLogK along ln k; 0 for Poisson
     * @param curvatureInLogK second derivative along ln k
     * @param cross mixed derivative of each coefficient and ln k
     * @param observed minus the second derivatives in the coefficients
     */
    @SuppressWarnings("ArrayRecordComponent") // made once, read in the innermost loops
    record Sums(
            double logLikelihood,
            double[] slope,
            double slopeInLogK,
            double curvatureInLogK,
            double[] cross,
            double[][] observed) {}

    Sums at(double[] coefficients, double k) {
        int p = design.columns();
        int size = SCALARS + 2 * p + p * (p + 1) / 2;
        int chunks = (design.cells() + CHUNK - 1) / CHUNK;
        double[][] parts = new double[chunks][size];
        IntStream each = IntStream.range(0, chunks);
        (chunks > 1 ? each.parallel() : each)
                .forEach(chunk -> add(chunk, coefficients, k, parts[chunk]));
        double[] sums = new double[size];
        for (double[] part : parts) {
            for (int i = 0; i < size; i++) {
                sums[i] += part[i];
            }
        }
        return unpacked(sums, k);
    }

    private void add(int chunk, double[] coefficients, double k, double[] sums) {
        int end = Math.min(design.cells(), (chunk + 1) * CHUNK);
        for (int cell = chunk * CHUNK; cell < end; cell++) {
            double logMean = Math.min(LARGEST_LOG_MEAN, design.logMean(cell, coefficients));
            if (k < Double.POSITIVE_INFINITY) {
                addClumped(cell, logMean, k, sums);
            } else {
                addPoisson(cell, logMean, sums);
            }
        }
    }

    private void addPoisson(int cell, double logMean, double[] sums) {
        double mean = design.samples()[cell] * Math.exp(logMean);
        double individuals = design.individuals()[cell];
        sums[0] += individuals == 0 ? -mean : individuals * logMean - mean;
        addRow(cell, sums, individuals - mean, 0, mean);
    }

    private void addClumped(int cell, double logMean, double k, double[] sums) {
        double individuals = design.individuals()[cell];
        double samples = design.samples()[cell];
        double z = Math.exp(logMean) / k;
        double q = 1 / (1 + z);
        double s = z * q;
        double log = z > 0.01 ? Math.log(1 + z) : Math.log1p(z);
        double kn = k * samples;
        double all = kn + individuals;
        sums[0] += individuals == 0 ? -kn * log : individuals * logMean - all * log;
        sums[1] += all * s - kn * log;
        sums[2] += 2 * kn * s - kn * log - all * s * q;
        double observed = all * s * q;
        addRow(cell, sums, (individuals - kn * z) * q, observed - kn * s, observed);
    }

    /** Slope, cross term and weight of a cell, times its row of the design. */
    private void addRow(int cell, double[] sums, double slope, double cross, double weight) {
        int p = design.columns();
        int at = SCALARS + 2 * p;
        int row = cell * p;
        double[] rows = design.rows();
        for (int i = 0; i < p; i++) {
            double x = rows[row + i];
            if (x == 0) {
                at += i + 1;
                continue;
            }
            sums[SCALARS + i] += x * slope;
            sums[SCALARS + p + i] += x * cross;
            double weighted = x * weight;
            for (int j = 0; j <= i; j++) {
                sums[at++] += weighted * rows[row + j];
            }
        }
    }

    private Sums unpacked(double[] sums, double k) {
        int p = design.columns();
        boolean clumped = k < Double.POSITIVE_INFINITY;
        double[] slope = new double[p];
        double[] cross = new double[p];
        System.arraycopy(sums, SCALARS, slope, 0, p);
        System.arraycopy(sums, SCALARS + p, cross, 0, p);
        double[][] observed = new double[p][p];
        int at = SCALARS + 2 * p;
        for (int i = 0; i < p; i++) {
            for (int j = 0; j <= i; j++) {
                observed[i][j] = observed[j][i] = sums[at++];
            }
        }
        CountHistogram counts = design.counts();
        return new Sums(
                counts.constant() + counts.clumping(k) + sums[0],
                slope,
                clumped ? sums[1] + counts.slope(k) : 0,
                clumped ? sums[2] + counts.curvature(k) : 0,
                cross,
                observed);
    }

    /** {@return the expected information of some cells on the coefficients, k taken as known} */
    double[][] expectedInformation(double[] coefficients, double k, IntPredicate kept) {
        int p = design.columns();
        double[][] information = new double[p][p];
        for (int cell = 0; cell < design.cells(); cell++) {
            double mean = Math.exp(design.logMean(cell, coefficients));
            double weight = design.samples()[cell] * mean / (1 + mean / k);
            for (int i = 0; kept.test(cell) && i < p; i++) {
                double weighted = weight * design.rows()[cell * p + i];
                for (int j = 0; weighted != 0 && j < p; j++) {
                    information[i][j] += weighted * design.rows()[cell * p + j];
                }
            }
        }
        return information;
    }

    /**
     * Slope of the log-likelihood along 1/k where 1/k is 0: positive where the counts scatter more
     * than Poisson counts would.
     */
    double slopeAtPoisson(double[] coefficients) {
        double sum = design.counts().pairs();
        for (int cell = 0; cell < design.cells(); cell++) {
            double mean = Math.exp(design.logMean(cell, coefficients));
            sum += mean * (design.samples()[cell] * mean - 2 * design.individuals()[cell]);
        }
        return 0.5 * sum;
    }
}
