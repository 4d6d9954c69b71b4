package jarwise.stats.regression;

/**
 * Where the likelihood of a design is highest.
 *
 * @param coefficients most likely coefficients
 * @param k most likely dispersion; infinite where no finite k is better than Poisson
 * @param sums slopes and curvatures there
 * @param converged whether the slopes vanish there
 */
@SuppressWarnings("ArrayRecordComponent") // made once, read in the innermost loops
record Maximum(double[] coefficients, double k, LikelihoodPass.Sums sums, boolean converged) {

    double logLikelihood() {
        return sums.logLikelihood();
    }
}
