package jarwise.stats.regression;

import java.util.OptionalInt;

/**
 * A system of linear equations with a symmetric matrix, by Cholesky's decomposition without roots.
 * Ours, because a fit needs to know which pivot vanishes: that names the coefficient that cannot be
 * told from the others.
 */
final class SymmetricSystem {

    /** A pivot under this share of its diagonal is what rounding left of 0. */
    private static final double VANISHED = 1e-11;

    /** A pivot under this share is not divided by: nothing moves along it. */
    private static final double NOISE = 1e-14;

    private final double[][] lower;
    private final double[] pivots;
    private final OptionalInt vanished;

    SymmetricSystem(double[][] matrix) {
        int n = matrix.length;
        lower = new double[n][n];
        pivots = new double[n];
        int first = -1;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int m = 0; m < j; m++) {
                    sum -= lower[i][m] * lower[j][m] * pivots[m];
                }
                if (i == j) {
                    pivots[i] = sum;
                } else {
                    lower[i][j] = pivots[j] == 0 ? 0 : sum / pivots[j];
                }
            }
            if (!(pivots[i] > NOISE * Math.abs(matrix[i][i]))) {
                pivots[i] = 0;
            }
            if (first < 0 && !(pivots[i] > VANISHED * Math.abs(matrix[i][i]))) {
                first = i;
            }
        }
        vanished = first < 0 ? OptionalInt.empty() : OptionalInt.of(first);
    }

    /** {@return the first row that is no more than a combination of those before it} */
    OptionalInt vanished() {
        return vanished;
    }

    /** {@return x of matrix · x = right side} */
    double[] solve(double[] right) {
        int n = right.length;
        double[] x = right.clone();
        for (int i = 0; i < n; i++) {
            for (int m = 0; m < i; m++) {
                x[i] -= lower[i][m] * x[m];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            x[i] = pivots[i] == 0 ? 0 : x[i] / pivots[i];
            for (int m = i + 1; m < n; m++) {
                x[i] -= lower[m][i] * x[m];
            }
        }
        return x;
    }

    /** {@return logarithm of the determinant; minus infinity where a row vanishes} */
    double logDeterminant() {
        double sum = 0;
        for (double pivot : pivots) {
            sum += Math.log(pivot);
        }
        return sum;
    }

    /** {@return contrast' · inverse · contrast} */
    double variance(double[] contrast) {
        double[] x = solve(contrast);
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += contrast[i] * x[i];
        }
        return sum;
    }
}
