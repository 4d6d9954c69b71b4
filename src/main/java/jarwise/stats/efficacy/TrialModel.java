package jarwise.stats.efficacy;

import jarwise.stats.count.CountLikelihood;
import jarwise.stats.count.KSearch;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * Negative binomial counts whose ln density is a sum of columns, one k for all: fitted by Fisher's
 * scoring at each k, k by search over all its values.
 */
final class TrialModel {

    private static final int MOST_STEPS = 100;
    private static final double CLOSE_ENOUGH = 1e-10;
    private static final double WIDEST_STEP = 4;

    private final List<TrialCell> cells;
    private final TrialColumns design;
    private final double interaction;

    /** Where the last fit ended: a start for the next, as k moves in small steps. */
    private double[] warm = new double[0];

    /** A model with all columns of the design. */
    TrialModel(List<TrialCell> cells, TrialColumns design) {
        this(cells, design, 0);
    }

    private TrialModel(List<TrialCell> cells, TrialColumns design, double interaction) {
        this.cells = cells;
        this.design = design;
        this.interaction = interaction;
    }

    /** {@return the same with the interaction held at a value} */
    TrialModel withInteraction(double value) {
        return new TrialModel(cells, design.withoutInteraction(), value);
    }

    /** The most likely coefficients and k, which is infinite for Poisson counts. */
    static final class Fit {

        private final double[] coefficients;
        private final double k;
        private final double logLikelihood;

        private Fit(double[] coefficients, double k, double logLikelihood) {
            this.coefficients = coefficients;
            this.k = k;
            this.logLikelihood = logLikelihood;
        }

        double lastCoefficient() {
            return coefficients[coefficients.length - 1];
        }

        OptionalDouble finiteK() {
            return Double.isInfinite(k) ? OptionalDouble.empty() : OptionalDouble.of(k);
        }

        double logLikelihood() {
            return logLikelihood;
        }
    }

    /** {@return the most likely fit over all k} */
    Fit fit() {
        return at(KSearch.best(new KSearch.Profile(k -> at(k).logLikelihood(), this::slope)));
    }

    private double slope(double k) {
        double[] coefficients = at(k).coefficients;
        double sum = 0;
        for (int c = 0; c < cells.size(); c++) {
            sum += likelihood(c).slopeInLogK(logDensity(c, coefficients), k);
        }
        return sum;
    }

    private CountLikelihood likelihood(int cell) {
        return cells.get(cell).likelihood();
    }

    private double logDensity(int cell, double[] coefficients) {
        double sum = cells.get(cell).isTreatedAfter() ? interaction : 0;
        for (int j = 0; j < coefficients.length; j++) {
            sum += design.value(cell, j) * coefficients[j];
        }
        return sum;
    }

    /** {@return the most likely fit at this k} */
    Fit at(double k) {
        double[] now = warm.length == design.width() ? warm : start();
        double height = height(now, k);
        for (int i = 0; i < MOST_STEPS; i++) {
            double[] step = step(now, k);
            double size = shorten(step);
            double[] next = moved(now, step);
            double nextHeight = height(next, k);
            for (int h = 0; h < 40 && !(nextHeight >= height); h++) {
                step = new ArrayRealVector(step).mapMultiply(0.5).toArray();
                next = moved(now, step);
                nextHeight = height(next, k);
            }
            boolean rounding = !(nextHeight > height);
            if (nextHeight >= height) {
                now = next;
                height = nextHeight;
            }
            if (rounding || size < CLOSE_ENOUGH) {
                break;
            }
        }
        warm = now;
        return new Fit(now, k, height);
    }

    private double height(double[] coefficients, double k) {
        double sum = 0;
        for (int c = 0; c < cells.size(); c++) {
            sum += likelihood(c).at(logDensity(c, coefficients), k);
        }
        return sum;
    }

    private static double shorten(double[] step) {
        double size = new ArrayRealVector(step).getLInfNorm();
        if (size > WIDEST_STEP) {
            for (int j = 0; j < step.length; j++) {
                step[j] *= WIDEST_STEP / size;
            }
        }
        return size;
    }

    private static double[] moved(double[] from, double[] step) {
        return new ArrayRealVector(from).add(new ArrayRealVector(step)).toArray();
    }

    private double[] step(double[] at, double k) {
        double[] score = new double[at.length];
        for (int c = 0; c < cells.size(); c++) {
            double slope = likelihood(c).slopeInLogDensity(logDensity(c, at), k);
            for (int j = 0; j < score.length; j++) {
                score[j] += design.value(c, j) * slope;
            }
        }
        return solve(information(at, k), score);
    }

    private RealMatrix information(double[] at, double k) {
        double[] weights = new double[cells.size()];
        for (int c = 0; c < weights.length; c++) {
            weights[c] = likelihood(c).informationOnLogDensity(logDensity(c, at), k);
        }
        return crossProduct(weights);
    }

    private RealMatrix crossProduct(double[] weights) {
        int n = design.width();
        double[][] sums = new double[n][n];
        for (int c = 0; c < weights.length; c++) {
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    sums[i][j] += weights[c] * design.value(c, i) * design.value(c, j);
                }
            }
        }
        return new Array2DRowRealMatrix(sums, false);
    }

    private static double[] solve(RealMatrix matrix, double[] right) {
        return new LUDecomposition(matrix, 0)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray();
    }

    /** Weighted least squares on the logarithms of the cells' own densities. */
    private double[] start() {
        double[] weights = new double[cells.size()];
        double[] right = new double[design.width()];
        for (int c = 0; c < weights.length; c++) {
            double individuals = cells.get(c).individuals() + 0.5;
            double own = Math.log(individuals / likelihood(c).data().totalExposure());
            weights[c] = individuals;
            for (int j = 0; j < right.length; j++) {
                right[j] += individuals * design.value(c, j) * (own - logDensity(c, new double[0]));
            }
        }
        return solve(crossProduct(weights), right);
    }

    /** {@return standard error of the last coefficient at a fit, expected information} */
    double standardErrorOfLast(Fit fit) {
        double[] last = new double[design.width()];
        last[last.length - 1] = 1;
        double[] row = solve(information(fit.coefficients, fit.k), last);
        return Math.sqrt(row[row.length - 1]);
    }
}
