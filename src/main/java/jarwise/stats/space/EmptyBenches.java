package jarwise.stats.space;

import java.util.List;

/**
 * How likely the benches with and without a find are, along x = ln(−ln P(empty)) of a bench sampled
 * with the standard effort. Written so that neither tiny k nor full benches overflow.
 *
 * @param benches counts and efforts
 * @param k dispersion of bench totals; may be infinite
 * @param effort the standard effort
 */
record EmptyBenches(List<BenchCount> benches, double k, double effort) {

    double logLikelihood(double x) {
        double sum = 0;
        for (BenchCount bench : benches) {
            double g = minusLogEmpty(bench, Math.exp(x));
            sum += bench.isPositive() ? Math.log(-Math.expm1(-g)) : -g;
        }
        return sum;
    }

    double slope(double x) {
        double standard = Math.exp(x);
        double sum = 0;
        for (BenchCount bench : benches) {
            double rise = rise(bench, standard);
            double g = minusLogEmpty(bench, standard);
            sum += bench.isPositive() ? rise / Math.expm1(g) : -rise;
        }
        return sum;
    }

    private double minusLogEmpty(BenchCount bench, double standard) {
        double relative = bench.effort() / effort;
        return Double.isInfinite(k)
                ? standard * relative
                : k * logOnePlusExp(logMeanOverK(standard) + Math.log(relative));
    }

    private double rise(BenchCount bench, double standard) {
        double relative = bench.effort() / effort;
        if (Double.isInfinite(k)) {
            return standard * relative;
        }
        double logit = logMeanOverK(standard) + Math.log(relative);
        return standard / (1 + Math.exp(-logit)) / -Math.expm1(-standard / k);
    }

    /** ln(mean / k) of a bench with the standard effort, from k ln(1 + mean / k). */
    private double logMeanOverK(double standard) {
        double t = standard / k;
        return t + Math.log(-Math.expm1(-t));
    }

    private static double logOnePlusExp(double x) {
        return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x));
    }
}
