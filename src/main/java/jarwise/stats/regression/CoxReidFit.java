package jarwise.stats.regression;

import jarwise.base.InvalidInput;
import jarwise.numeric.Quantiles;
import java.util.OptionalDouble;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/**
 * A regression whose k is adjusted for the coefficients that were fitted with it, and the plain
 * intervals around its coefficients: what the intervals of an efficacy are measured beside.
 */
public final class CoxReidFit {

    private static final double LEAST_LOG_K = -12;
    private static final double MOST_LOG_K = 20; // beyond it counts of any size are Poisson
    private static final double STEP = 1;

    private final Climb climb;
    private final LikelihoodPass pass;
    private final double freedom;
    private Maximum top;
    private double adjusted;

    private CoxReidFit(ModelFrame frame) {
        Design design = frame.design();
        climb = new Climb(design);
        pass = new LikelihoodPass(design);
        freedom = design.allSamples() - design.columns();
        top = climb.poisson();
        adjusted = adjusted(top);
    }

    /**
     * How do counts depend on factors and covariates, k not being flattered by the fit?
     *
     * <pre>
     *   k makes largest   log-likelihood(k) − ½ ln det(information on the coefficients at k)
     *   limits            coefficient ± t(n − p) · standard error at that k
     * </pre>
     *
     * <p>Both at the most likely coefficients for each k; the information is the expected one.
     *
     * <p><b>Assumes</b> what {@link NegativeBinomialRegression} assumes, and a find at every level.
     *
     * <p><b>Source.</b> Cox and Reid (1987), <i>JRSS B</i> 49:1-39 (from memory). Reference values:
     * {@code reference/regression/small-sample.csv}.
     *
     * @param frame counts with their design; no coefficient follows from the others
     * @return the fit
     * @throws InvalidInput if there are no more samples than coefficients
     */
    public static CoxReidFit of(ModelFrame frame) {
        CoxReidFit fit = new CoxReidFit(frame);
        if (!(fit.freedom > 0)) {
            throw new InvalidInput(
                    "There are %.0f samples for %d coefficients; more samples are needed."
                            .formatted(frame.design().allSamples(), frame.design().columns()));
        }
        fit.climbAlongK();
        return fit;
    }

    /** Looks from place to place along ln k, then closes in on the best of them. */
    private void climbAlongK() {
        double best = Double.NaN;
        double height = adjusted;
        for (double logK = LEAST_LOG_K; logK <= MOST_LOG_K; logK += STEP) {
            double here = adjusted(at(logK));
            if (here > height) {
                height = here;
                best = logK;
            }
        }
        if (Double.isNaN(best)) {
            return;
        }
        double logK =
                new BrentOptimizer(1e-11, 1e-11)
                        .optimize(
                                new MaxEval(500),
                                new UnivariateObjectiveFunction(x -> adjusted(at(x))),
                                GoalType.MAXIMIZE,
                                new SearchInterval(best - STEP, best + STEP, best))
                        .getPoint();
        top = at(logK);
        adjusted = adjusted(top);
    }

    private Maximum at(double logK) {
        return climb.atK(top.coefficients(), Math.exp(logK));
    }

    private double adjusted(Maximum at) {
        return at.logLikelihood() - 0.5 * information(at).logDeterminant();
    }

    private SymmetricSystem information(Maximum at) {
        return new SymmetricSystem(pass.expectedInformation(at.coefficients(), at.k(), c -> true));
    }

    /** {@return adjusted k; empty where no finite k is better than Poisson} */
    public OptionalDouble k() {
        return Double.isInfinite(top.k()) ? OptionalDouble.empty() : OptionalDouble.of(top.k());
    }

    /** {@return the log-likelihood less half the logarithm of the information, at that k} */
    public double adjustedLogLikelihood() {
        return adjusted;
    }

    /** {@return samples less coefficients} */
    public double degreesOfFreedom() {
        return freedom;
    }

    /**
     * The most likely value of a coefficient at the adjusted k.
     *
     * @param coefficient its place
     * @return the value
     */
    public double estimate(int coefficient) {
        return top.coefficients()[coefficient];
    }

    /**
     * Its standard error from the expected information, k taken as known.
     *
     * @param coefficient its place
     * @return the standard error
     */
    public double standardError(int coefficient) {
        double[] only = new double[top.coefficients().length];
        only[coefficient] = 1;
        return Math.sqrt(information(top).variance(only));
    }

    /**
     * Its limits by Student's t.
     *
     * @param coefficient its place
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return both limits
     */
    public ProfileLimits waldLimits(int coefficient, double confidenceLevel) {
        double reach = Quantiles.student(confidenceLevel, freedom) * standardError(coefficient);
        return new ProfileLimits(
                OptionalDouble.of(estimate(coefficient) - reach),
                OptionalDouble.of(estimate(coefficient) + reach));
    }
}
