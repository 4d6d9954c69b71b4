package jarwise.stats.regression;

import jarwise.numeric.Roots;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** A fitted regression: its coefficients, its k, and what can be asked of it. */
public final class RegressionFit {

    /** Beyond ln k of this no count tells k from infinity. */
    private static final double FARTHEST = 20;

    private final ModelFrame frame;
    private final Maximum top;
    private final SymmetricSystem information;

    /** Squares and products of the cells that hold coefficients in place; empty if all do. */
    private final Optional<double[][]> products;

    RegressionFit(ModelFrame frame, Maximum top, boolean[] telling) {
        this.frame = frame;
        this.top = top;
        boolean all = IntStream.range(0, telling.length).allMatch(cell -> telling[cell]);
        this.products =
                all
                        ? Optional.empty()
                        : Optional.of(frame.design().products(cell -> telling[cell]));
        this.information =
                new SymmetricSystem(
                        new LikelihoodPass(frame.design())
                                .expectedInformation(
                                        top.coefficients(), top.k(), cell -> telling[cell]));
    }

    /** {@return the counts with their design} */
    public ModelFrame frame() {
        return frame;
    }

    /** {@return what each coefficient stands for} */
    public List<Coefficient> coefficients() {
        return frame.coefficients();
    }

    /** {@return most likely k; empty where no finite k is better than Poisson} */
    public OptionalDouble k() {
        return Double.isInfinite(top.k()) ? OptionalDouble.empty() : OptionalDouble.of(top.k());
    }

    /** {@return standard error of k: observed information, k alone; empty without k} */
    public OptionalDouble kStandardError() {
        double bend = -top.sums().curvatureInLogK();
        return k().isPresent() && bend > 0
                ? OptionalDouble.of(top.k() / Math.sqrt(bend))
                : OptionalDouble.empty();
    }

    /** {@return natural logarithm of the likelihood, all constants included} */
    public double logLikelihood() {
        return top.logLikelihood();
    }

    /** {@return coefficients and k, as many as were fitted} */
    public int parameters() {
        return frame.coefficients().size() + (k().isPresent() ? 1 : 0);
    }

    /** {@return Akaike's criterion: 2·parameters − 2·log-likelihood} */
    public double aic() {
        return 2 * parameters() - 2 * logLikelihood();
    }

    /** {@return whether the slopes vanish at the estimates} */
    public boolean converged() {
        return top.converged();
    }

    /** {@return the combination that is one coefficient alone} */
    public double[] only(int coefficient) {
        double[] contrast = new double[frame.coefficients().size()];
        contrast[coefficient] = 1;
        return contrast;
    }

    /**
     * The most likely value of a linear combination of the coefficients.
     *
     * @param contrast factor of each coefficient
     * @return the value; empty where it runs off to infinity because a level has no find
     */
    public OptionalDouble estimate(double[] contrast) {
        return isHeld(contrast)
                ? OptionalDouble.of(product(contrast, top.coefficients()))
                : OptionalDouble.empty();
    }

    /**
     * Its standard error from the expected information, k taken as known.
     *
     * @param contrast factor of each coefficient
     * @return the standard error; empty where there is no estimate
     */
    public OptionalDouble standardError(double[] contrast) {
        return isHeld(contrast)
                ? OptionalDouble.of(Math.sqrt(information.variance(contrast)))
                : OptionalDouble.empty();
    }

    /** Whether a combination is made of rows of the design that hold it in place. */
    private boolean isHeld(double[] contrast) {
        if (products.isEmpty()) {
            return true;
        }
        double[] x = new SymmetricSystem(products.get()).solve(contrast);
        return IntStream.range(0, x.length)
                .allMatch(i -> Math.abs(product(products.get()[i], x) - contrast[i]) <= 1e-6);
    }

    /**
     * Profile limits of a linear combination: where twice the log-likelihood, the other
     * coefficients and k being at their best, lies {@code cut} under its top.
     *
     * @param contrast factor of each coefficient
     * @param cut height of the cut, say 3.841459 for 95 %; above 0
     * @return the limits; one of them is absent where a level has no find
     */
    public ProfileLimits limits(double[] contrast, double cut) {
        if (frame.design().allIndividuals() == 0) {
            return new ProfileLimits(OptionalDouble.empty(), OptionalDouble.empty());
        }
        return new ContrastProfile(frame.design(), top, contrast, standardError(contrast).orElse(1))
                .limits(cut);
    }

    /**
     * Profile limits of k: where twice the log-likelihood, the coefficients being at their best,
     * lies {@code cut} under its top.
     *
     * @param cut height of the cut, say 3.841459 for 95 %; above 0
     * @return the limits; none above where Poisson counts are not contradicted
     */
    public ProfileLimits limitsOfK(double cut) {
        if (k().isEmpty()) {
            return new ProfileLimits(OptionalDouble.empty(), OptionalDouble.empty());
        }
        Climb climb = new Climb(frame.design());
        DoubleUnaryOperator overCut =
                logK ->
                        2
                                        * (logLikelihood()
                                                - climb.atK(top.coefficients(), Math.exp(logK))
                                                        .logLikelihood())
                                - cut;
        double at = Math.log(top.k());
        return new ProfileLimits(
                        Roots.walkingFrom(overCut, at, -0.5, at - FARTHEST),
                        Roots.walkingFrom(overCut, at, 0.5, Math.max(at + 0.5, FARTHEST)))
                .exponential();
    }

    /**
     * Twice what the log-likelihood loses when a combination is held at a value.
     *
     * @param contrast factor of each coefficient
     * @param value the value it is held at
     * @return the deviance, 0 or more
     */
    public double deviance(double[] contrast, double value) {
        double held = new ContrastProfile(frame.design(), top, contrast, 1).logLikelihood(value);
        return Math.max(0, 2 * (logLikelihood() - held));
    }

    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
