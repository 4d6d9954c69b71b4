package jarwise.stats.estimate;

import jarwise.stats.count.CountFit;
import jarwise.stats.count.CountLikelihood;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The values of k that a likelihood is summed over, evenly spaced in ln k, with the logarithm of
 * what each weighs: prior times step.
 */
final class KNodes {

    private final double[] k;
    private final double[] logWeight;

    private KNodes(double[] k, double[] logWeight) {
        this.k = k;
        this.logWeight = logWeight;
    }

    /** {@return how many values of k there are} */
    int size() {
        return k.length;
    }

    /** {@return one value of k} */
    double k(int j) {
        return k[j];
    }

    /** {@return logarithm of what it weighs} */
    double logWeight(int j) {
        return logWeight[j];
    }

    private static final double NEGLIGIBLE = -21; // logarithm, against the highest point
    private static final double BELOW_TAIL = -16; // logarithm, against the tail
    private static final double PLAIN_TAIL = -12; // logarithm; below it features are narrower
    private static final double WIDEST_STEP = 0.45;
    private static final double PRIOR_SPREADS = 7;
    private static final double COARSE_STEP = 0.8;

    /** {@return the one value that was given} */
    static KNodes given(double k) {
        return new KNodes(new double[] {k}, new double[1]);
    }

    /** {@return values over the whole prior, for samples without a find} */
    static KNodes ofPrior(KPrior prior, double tail) {
        double step = Math.min(0.25, 0.5 * prior.logSpread()) / finer(tail);
        double centre = Math.log(prior.medianK());
        int half = (int) Math.ceil(spreads(tail) * prior.logSpread() / step);
        double[] logK =
                IntStream.rangeClosed(-half, half).mapToDouble(i -> centre + i * step).toArray();
        return of(logK, prior, step);
    }

    /** {@return values where prior times likelihood is not negligible at any density} */
    static KNodes where(
            CountLikelihood likelihood,
            KPrior prior,
            CountFit fit,
            double logLargest,
            double tail) {
        double width = Math.min(prior.logSpread(), width(likelihood, fit));
        double step = Math.min(WIDEST_STEP, 0.5 * width) / finer(tail);
        double centre = Math.log(prior.medianK());
        double reach = spreads(tail) * prior.logSpread();
        double[] coarse = steps(centre - reach, centre + reach, Math.max(step, COARSE_STEP));
        double[] height = heights(likelihood, prior, coarse, densities(fit, logLargest));
        double floor = Arrays.stream(height).max().orElse(0) + negligible(tail);
        int first = 0;
        while (height[first] < floor) {
            first++;
        }
        int last = height.length - 1;
        while (height[last] < floor) {
            last--;
        }
        double from = coarse[Math.max(0, first - 1)];
        double to = coarse[Math.min(height.length - 1, last + 1)];
        return of(steps(from, to, step), prior, step);
    }

    private static double negligible(double tail) {
        return Math.min(NEGLIGIBLE, Math.log(tail) + BELOW_TAIL);
    }

    private static double finer(double tail) {
        return Math.max(1, Math.log(tail) / PLAIN_TAIL);
    }

    /** How many spreads of the prior away the normal density is small beside the tail. */
    private static double spreads(double tail) {
        return Math.max(PRIOR_SPREADS, Math.sqrt(-2 * negligible(tail)));
    }

    private static double[] steps(double from, double to, double step) {
        int number = (int) Math.ceil((to - from) / step);
        return IntStream.rangeClosed(0, number).mapToDouble(i -> from + i * step).toArray();
    }

    private static KNodes of(double[] logK, KPrior prior, double step) {
        double scale = Math.log(step / (prior.logSpread() * Math.sqrt(2 * Math.PI)));
        return new KNodes(
                Arrays.stream(logK).map(Math::exp).toArray(),
                Arrays.stream(logK).map(x -> prior.logWeight(x) + scale).toArray());
    }

    /** Standard deviation of ln k where the likelihood is highest; wide where that is Poisson. */
    private static double width(CountLikelihood likelihood, CountFit fit) {
        if (fit.isPoisson()) {
            return Double.POSITIVE_INFINITY;
        }
        double k = fit.kOrInfinity();
        double h = 1e-3;
        double logDensity = Math.log(fit.density());
        double bend =
                (likelihood.slopeInLogK(logDensity, k * Math.exp(h))
                                - likelihood.slopeInLogK(logDensity, k * Math.exp(-h)))
                        / (2 * h);
        return bend < 0 ? 1 / Math.sqrt(-bend) : Double.POSITIVE_INFINITY;
    }

    private static double[] densities(CountFit fit, double logLargest) {
        double top = Math.log(fit.density());
        double up = logLargest - top;
        return new double[] {top - 30, top - 3, top, top + 0.3 * up, top + up};
    }

    private static double[] heights(
            CountLikelihood likelihood, KPrior prior, double[] logK, double[] logDensities) {
        double[] heights = new double[logK.length];
        for (int i = 0; i < logK.length; i++) {
            double k = Math.exp(logK[i]);
            double best = Double.NEGATIVE_INFINITY;
            for (double x : logDensities) {
                best = Math.max(best, likelihood.apartFromClumping(x, k) + 0.25 * x);
            }
            heights[i] = best + likelihood.clumping(k) + prior.logWeight(logK[i]);
        }
        return heights;
    }
}
